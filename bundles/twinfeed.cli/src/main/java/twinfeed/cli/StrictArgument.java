// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import picocli.CommandLine.Option;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.usecase.AssessedJob;

/** Whether a check that does not pass is told by the exit status. */
final class StrictArgument {
    @Option(names = "--strict", description = "Exit status 1 if a deciding check of a candidate does not pass.")
    private boolean strict;

    int status(AssessedJob judged) {
        if (unanswered(judged)) {
            return Verbs.INCOMPLETE;
        }
        return strict && judged.assessed().options().stream().anyMatch(StrictArgument::doubtful)
                ? Verbs.STRICT
                : Verbs.DONE;
    }

    /** Whether a calculator left a check without an answer, or broke. */
    static boolean unanswered(AssessedJob judged) {
        return judged.assessed().options().stream()
                .flatMap(option -> option.findings().stream())
                .anyMatch(finding -> finding.outcome() == Outcome.NOT_CHECKED
                        || finding.check().key().equals(Runner.BROKEN.key()));
    }

    private static boolean doubtful(OptionResult option) {
        return !option.candidate().present() && option.verdict() != Verdict.SUITS;
    }
}
