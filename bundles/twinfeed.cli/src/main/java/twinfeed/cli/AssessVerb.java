// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.usecase.AssessedJob;

/** All findings for the present unit and each candidate, with their workings. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        description = "All findings for the present unit and each candidate heater, with workings.")
final class AssessVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Mixin
    private final StrictArgument strict = new StrictArgument();

    @Option(names = "--heater", paramLabel = "ID", description = "Only the present unit and this heater.")
    private @Nullable String heater;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    @Option(names = "--brief", description = "Text without workings.")
    private boolean brief;

    AssessVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        CliContext spoken = context.in(job.locale());
        AssessedJob judged = job.judge(spoken, heater);
        if (json) {
            spoken.json().assessment(judged, true);
        } else {
            new TextReport(spoken).assessment(judged, !brief);
        }
        return strict.status(judged);
    }
}
