// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.List;
import java.util.Optional;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;

/**
 * One heater judged against one house.
 *
 * @param candidate the heater
 * @param findings findings in the order of calculators and checks
 * @param verdict the verdict without any work
 */
public record OptionResult(Candidate candidate, List<Finding> findings, Verdict verdict) {
    public OptionResult {
        findings = List.copyOf(findings);
    }

    /** The result of findings. */
    public static OptionResult of(Candidate candidate, List<Finding> findings) {
        return new OptionResult(candidate, findings, verdictOf(findings));
    }

    /**
     * The verdict from findings alone, without any work. A failure weighs more than a doubt: a unit that fails one check does
     * not suit, whatever else is unknown. Too close to call counts as cannot tell, and so does a heater of which no deciding
     * question was asked, because no calculator that asks one is there.
     */
    static Verdict verdictOf(List<Finding> findings) {
        List<Finding> deciding =
                findings.stream().filter(finding -> finding.check().deciding()).toList();
        if (deciding.stream().anyMatch(finding -> finding.outcome() == Outcome.FAILS)) {
            return Verdict.DOES_NOT_SUIT;
        }
        boolean sure = !deciding.isEmpty()
                && deciding.stream()
                        .allMatch(finding ->
                                finding.outcome() == Outcome.PASSES || finding.outcome() == Outcome.NOT_APPLICABLE);
        return sure ? Verdict.SUITS : Verdict.CANNOT_TELL;
    }

    /**
     * The finding that decides: the failing, then the doubtful, then the passing one with the least margin by its limit. A figure that
     * is only reported has no margin and comes last, and so does a yes or no.
     */
    public Optional<Finding> binding() {
        return findings.stream()
                .filter(finding -> finding.check().deciding())
                .filter(finding -> finding.outcome() != Outcome.NOT_APPLICABLE)
                .min(java.util.Comparator.<Finding>comparingInt(finding -> rank(finding.outcome()))
                        .thenComparingDouble(OptionResult::relativeMargin));
    }

    /** The finding of a check, if it was answered. */
    public Optional<Finding> finding(String check) {
        return findings.stream()
                .filter(finding -> finding.check().key().equals(check))
                .findFirst();
    }

    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case FAILS -> 0;
            case CANNOT_TELL, TOO_CLOSE, NOT_CHECKED -> 1;
            case PASSES, NOT_APPLICABLE -> 2;
        };
    }

    /** Margin by the limit; where the limit is 0, by the value. Nothing is said by a value of 0 at a limit of 0. */
    private static double relativeMargin(Finding finding) {
        Finding.Figures figures = finding.limited();
        if (figures == null) {
            return Double.MAX_VALUE;
        }
        double size = figures.limit() == 0 ? Math.abs(figures.value()) : Math.abs(figures.limit());
        return size == 0 ? Double.MAX_VALUE : figures.margin() / size;
    }
}
