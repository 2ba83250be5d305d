// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import picocli.CommandLine.Option;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.usecase.AssessedJob;

/** Whether a check that does not pass is told by the exit status. */
final class StrictArgument {
    @Option(names = "--strict", description = "Exit status 1 if a deciding check of a candidate does not pass.")
    private boolean strict;

    int status(AssessedJob judged) {
        if (judged.unanswered()) {
            return Verbs.INCOMPLETE;
        }
        return strict && judged.record().getOptions().stream().anyMatch(StrictArgument::doubtful)
                ? Verbs.STRICT
                : Verbs.DONE;
    }

    private static boolean doubtful(OptionAssessment option) {
        return !Boolean.TRUE.equals(option.getPresent()) && option.getVerdict() != Verdict.SUITS;
    }
}
