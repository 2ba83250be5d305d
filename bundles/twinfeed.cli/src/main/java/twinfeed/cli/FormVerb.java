// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputCheck;
import twinfeed.usecase.form.SurveyForms;

/** A survey to be filled in on site. */
@Command(
        name = "form",
        mixinStandardHelpOptions = true,
        description = {
            "A survey to be filled in on site: as a workbook with checked cells, which the verb read reads back.",
            "Blank without a job; with one, what is known already stands in it. The draft of a quote and the readings after the work are no part of it."
        })
final class FormVerb implements Callable<Integer> {
    private final CliContext face;

    @Parameters(index = "0", arity = "0..1", paramLabel = "JOB", description = "The job in hand, *.job.")
    private @Nullable Path file;

    @Option(
            names = "--catalogue",
            paramLabel = "FILE",
            description = "Heater catalogue to use instead of the one that the job names.")
    private @Nullable Path catalogue;

    @Option(names = "--out", required = true, paramLabel = "FORM.xlsx", description = "The workbook to write.")
    private Path out = Path.of("");

    @Option(names = "--language", paramLabel = "CODE", description = "Language of the form: en or de.")
    private @Nullable String language;

    FormVerb(CliContext face) {
        this.face = face;
    }

    @Override
    public Integer call() {
        Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
        OutputCheck.check(
                out,
                ".xlsx",
                Stream.of(file, catalogue).filter(java.util.Objects::nonNull).toList());
        OpenedJob known = null;
        if (file != null) {
            known = face.office().open(file, catalogue);
            known.warnings().forEach(face.err()::println);
            OutputCheck.check(out, ".xlsx", known.companions());
        }
        new SurveyForms(face.office()).write(known, locale, out);
        face.out().println(face.text("written") + " " + out);
        return Verbs.DONE;
    }
}
