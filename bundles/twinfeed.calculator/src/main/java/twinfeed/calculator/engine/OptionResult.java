// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.List;
import java.util.Optional;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Outcome;

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
        return new OptionResult(candidate, findings, Verdict.of(findings));
    }

    /** The finding that decides: the failing, then the doubtful, then the passing one with the least margin by its limit. */
    public Optional<Finding> binding() {
        return findings.stream()
                .filter(finding -> finding.check().kind().deciding())
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
            case CANNOT_TELL, TOO_CLOSE -> 1;
            default -> 2;
        };
    }

    private static double relativeMargin(Finding finding) {
        Finding.Figures figures = finding.figures();
        if (figures == null || finding.check().sense() == LimitType.REPORT) {
            return Double.MAX_VALUE;
        }
        return figures.margin() / Math.max(Math.abs(figures.limit()), 1e-9);
    }
}
