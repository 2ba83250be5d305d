// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.checks;

import java.util.IdentityHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** The answers of several heaters to one check. */
final class CheckRow {
    private final Finding first;
    private final Map<OptionAssessment, Finding> findings = new IdentityHashMap<>();

    CheckRow(Finding first) {
        this.first = first;
    }

    /** Keeps the first answer of a heater; a key that two calculators give is theirs to settle. */
    void add(OptionAssessment option, Finding finding) {
        findings.putIfAbsent(option, finding);
    }

    String title() {
        return first.getTitle() == null ? String.valueOf(first.getKey()) : first.getTitle();
    }

    FindingClass kind() {
        return first.getKind();
    }

    @Nullable
    Finding of(OptionAssessment option) {
        return findings.get(option);
    }

    /** Whether it arises and every heater for which it does passes. */
    boolean passes() {
        return arises()
                && findings.values().stream()
                        .map(Finding::getOutcome)
                        .allMatch(outcome -> outcome == Outcome.PASSES || outcome == Outcome.NOT_APPLICABLE);
    }

    /** Whether a heater fails it. */
    boolean fails() {
        return findings.values().stream()
                .anyMatch(finding -> finding.isSetOutcome() && finding.getOutcome() == Outcome.FAILS);
    }

    /** Whether the question arises for any of the heaters. */
    boolean arises() {
        return findings.values().stream()
                .anyMatch(finding -> !finding.isSetOutcome() || finding.getOutcome() != Outcome.NOT_APPLICABLE);
    }
}
