// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.usecase.AssessedJob;

/** Candidate heaters by checks, with the least costly work. */
@Command(
        name = "options",
        mixinStandardHelpOptions = true,
        description = "Candidate heaters by checks, with the least costly work that makes each suit.")
final class OptionsVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Mixin
    private final StrictArgument strict = new StrictArgument();

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    OptionsVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        CliContext spoken = context.in(job.locale());
        AssessedJob judged = job.judge(spoken, null);
        if (json) {
            spoken.json().assessment(judged, false);
        } else {
            new TextReport(spoken).options(judged);
        }
        return strict.status(judged);
    }
}
