// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.OutputCheck;
import twinfeed.usecase.form.SurveyForms;

/** A survey form that was filled in, as a job. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description = {
            "Read a survey form that was filled in, cell by cell, and write it as a job.",
            "What is wrong names sheet, cell and reading; nothing is written then, and no file is ever replaced."
        })
final class ReadVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "FORM.xlsx", description = "The form, as the verb form wrote it.")
    private Path form = Path.of("");

    @Option(names = "--out", required = true, paramLabel = "JOB", description = "The job to write, *.job.")
    private Path out = Path.of("");

    @Option(
            names = "--catalogue",
            paramLabel = "NAME",
            description = "Heater catalogue beside the job, for a form that names none.")
    private @Nullable String catalogue;

    ReadVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        OutputCheck.check(out, ".job", List.of(form));
        new SurveyForms(context.service())
                .read(form, out, catalogue, context.today())
                .forEach(context.err()::println);
        context.out().println(context.text("written") + " " + out);
        return Verbs.DONE;
    }
}
