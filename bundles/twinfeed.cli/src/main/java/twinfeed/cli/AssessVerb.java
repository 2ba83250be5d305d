// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.calculator.Finding;
import twinfeed.calculator.OptionResult;
import twinfeed.usecase.Judged;

/** All findings for the present unit and each candidate, with their workings. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        description = "All findings for the present unit and each candidate heater, with workings.")
final class AssessVerb implements Callable<Integer> {
    private final Face face;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Option(names = "--heater", paramLabel = "ID", description = "Only the present unit and this heater.")
    private @Nullable String heater;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    @Option(names = "--brief", description = "Text without workings.")
    private boolean brief;

    @Option(names = "--strict", description = "Exit status 1 if a deciding check of a candidate does not pass.")
    private boolean strict;

    AssessVerb(Face face) {
        this.face = face;
    }

    @Override
    public Integer call() {
        Judged judged = job.judge(face, heater);
        if (json) {
            new JsonReport(face.out()).assessment(judged, true);
        } else {
            new TextReport(face).assessment(judged, !brief);
        }
        return strict && judged.assessed().options().stream().anyMatch(AssessVerb::doubtful)
                ? Verbs.STRICT
                : Verbs.DONE;
    }

    static boolean doubtful(OptionResult option) {
        return !option.candidate().present() && option.findings().stream().anyMatch(AssessVerb::doubtful);
    }

    private static boolean doubtful(Finding finding) {
        return finding.check().kind().deciding()
                && switch (finding.outcome()) {
                    case PASSES, NOT_APPLICABLE -> false;
                    default -> true;
                };
    }
}
