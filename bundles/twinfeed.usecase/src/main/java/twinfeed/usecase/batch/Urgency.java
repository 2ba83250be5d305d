// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;

/** Which dwellings come first, by what holds at the unit that is there. */
enum Urgency {
    /** A safety check fails now. */
    SAFETY("safety"),
    /** The unit does not suit the house. */
    UNSUITED("unsuited"),
    /** Readings are missing, or too coarse. */
    OPEN("open"),
    /** Nothing presses. */
    SOUND("sound");

    private final String key;

    Urgency(String key) {
        this.key = key;
    }

    /** Key of its words. */
    String key() {
        return key;
    }

    /** Of a dwelling; one without a unit is open. */
    static Urgency of(Assessment assessment) {
        return assessment.getOptions().stream()
                .filter(option -> Boolean.TRUE.equals(option.getPresent()))
                .findFirst()
                .map(Urgency::of)
                .orElse(OPEN);
    }

    private static Urgency of(OptionAssessment present) {
        if (present.getFindings().stream().anyMatch(Urgency::unsafe)) {
            return SAFETY;
        }
        if (present.getVerdict() == Verdict.NOT_CHECKED || present.getVerdict() == Verdict.CANNOT_TELL) {
            return OPEN;
        }
        return present.getVerdict() == Verdict.SUITS ? SOUND : UNSUITED;
    }

    private static boolean unsafe(Finding finding) {
        return finding.getOutcome() == Outcome.FAILS && finding.getKind() == FindingClass.SAFETY;
    }
}
