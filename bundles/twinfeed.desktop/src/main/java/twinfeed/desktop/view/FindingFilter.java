// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import twinfeed.calculator.Check;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;

/** Which findings are looked at. */
public enum FindingFilter {
    /** All of them. */
    ALL("all"),
    /** What keeps the heater from suiting, as the house is. */
    FAILING("failing"),
    /** What may turn either way within the tolerances. */
    TOO_CLOSE("tooClose"),
    /** What waits for a reading, or was not checked. */
    MISSING("missing"),
    /** What would be better otherwise, and decides nothing: performance that falls short, and advice. */
    ADVICE("advice");

    private final String key;

    FindingFilter(String key) {
        this.key = key;
    }

    /** End of the key of its name. */
    public String key() {
        return key;
    }

    /** Whether a finding is looked at. */
    public boolean accepts(Finding finding) {
        return switch (this) {
            case ALL -> true;
            case FAILING -> finding.getOutcome() == Outcome.FAILS && !minor(finding);
            case TOO_CLOSE -> finding.getOutcome() == Outcome.TOO_CLOSE;
            case MISSING -> finding.getOutcome() == Outcome.CANNOT_TELL || finding.getOutcome() == Outcome.NOT_CHECKED;
            case ADVICE -> minor(finding);
        };
    }

    /** Whether a check that rules nothing out is not met. */
    private static boolean minor(Finding finding) {
        return finding.getOutcome() == Outcome.FAILS && !Check.deciding(finding.getKind());
    }

    /** Whether a finding is advice: its check only advises, and is not met. */
    public static boolean advice(Finding finding) {
        return finding.getKind() == FindingClass.ADVICE && finding.getOutcome() == Outcome.FAILS;
    }

    /** How soon a finding is to be read: failures first, then what is too close, missing, falls short or is advised, then what passes. */
    static int rank(Finding finding) {
        if (minor(finding)) {
            return advice(finding) ? 4 : 3;
        }
        return switch (finding.getOutcome()) {
            case FAILS -> 0;
            case TOO_CLOSE -> 1;
            case CANNOT_TELL, NOT_CHECKED -> 2;
            case PASSES -> 5;
            case NOT_APPLICABLE -> 6;
        };
    }
}
