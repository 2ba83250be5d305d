// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** Checks of safety that are not passed: who uses the shower has to be warned of them. */
public final class FailedSafety {
    private FailedSafety() {}

    /** Whether a finding is such a check. */
    public static boolean is(Finding finding) {
        return finding.getKind() == FindingClass.SAFETY && finding.getOutcome() == Outcome.FAILS;
    }

    /** Those of one option, in their order. */
    public static List<Finding> of(OptionAssessment option) {
        return option.getFindings().stream().filter(FailedSafety::is).toList();
    }

    /** Those of the unit that is there; none without one. */
    public static List<Finding> ofPresent(Assessment assessment) {
        return assessment.getOptions().stream()
                .filter(option -> Boolean.TRUE.equals(option.getPresent()))
                .flatMap(option -> of(option).stream())
                .toList();
    }
}
