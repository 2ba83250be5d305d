// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.check.FailedSafety;
import twinfeed.model.survey.Survey;

/** Which dwellings come first, most urgent first, by what holds there now. */
enum Urgency {
    /** A safety check fails now, for example a cable can overheat behind its device. Whatever is missing besides makes it no safer. */
    SAFETY("safety"),
    /** What is complained of can be a danger: heat, smell, water at live parts, current to earth, water that scalds. */
    SIGN("sign"),
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

    /** Of a dwelling; one without a unit is open unless the house itself is unsafe with every heater. */
    static Urgency of(Assessment assessment, Survey survey) {
        if (!dangers(assessment).isEmpty()) {
            return SAFETY;
        }
        if (survey.getSymptoms().stream().anyMatch(DangerSigns::is)) {
            return SIGN;
        }
        OptionAssessment present = present(assessment);
        if (present == null
                || present.getVerdict() == Verdict.NOT_CHECKED
                || present.getVerdict() == Verdict.CANNOT_TELL) {
            return OPEN;
        }
        return present.getVerdict() == Verdict.SUITS ? SOUND : UNSUITED;
    }

    /** The safety checks that fail now: at the unit that is there, else those that fail with every heater. */
    static List<Finding> dangers(Assessment assessment) {
        OptionAssessment present = present(assessment);
        if (present != null) {
            return FailedSafety.of(present);
        }
        if (assessment.getOptions().isEmpty()) {
            return List.of();
        }
        return FailedSafety.of(assessment.getOptions().get(0)).stream()
                .filter(finding -> assessment.getOptions().stream().allMatch(option -> FailedSafety.of(option).stream()
                        .anyMatch(other -> other.getKey().equals(finding.getKey()))))
                .toList();
    }

    /** The unit that is there; absent if there is none. */
    static @Nullable OptionAssessment present(Assessment assessment) {
        return assessment.getOptions().stream()
                .filter(option -> Boolean.TRUE.equals(option.getPresent()))
                .findFirst()
                .orElse(null);
    }
}
