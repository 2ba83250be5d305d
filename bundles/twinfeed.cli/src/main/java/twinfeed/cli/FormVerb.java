// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputCheck;
import twinfeed.usecase.form.SurveyForms;

/** A survey to be filled in on site. */
@Command(
        name = "form",
        mixinStandardHelpOptions = true,
        description = {
            "A survey to be filled in on site: as a workbook with checked cells, which the verb read reads back, or as PDF for a clipboard.",
            "Blank without a job; with one, what is known already stands in the workbook, and the PDF asks what is missing (--missing).",
            "The draft of a quote and the readings after the work are no part of it."
        })
final class FormVerb implements Callable<Integer> {
    private final CliContext context;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "JOB", description = "The job in hand, *.job.")
    private @Nullable Path file;

    @Option(
            names = "--catalogue",
            paramLabel = "FILE",
            description = "Heater catalogue to use instead of the one that the job names.")
    private @Nullable Path catalogue;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FORM",
            description = "The workbook, *.xlsx, or the PDF, *.pdf, to write.")
    private Path out = Path.of("");

    @Option(names = "--missing", description = "As PDF: only what the job lacks, what a check waits for first.")
    private boolean missing;

    @Option(names = "--language", paramLabel = "CODE", description = "Language of the form: en or de.")
    private @Nullable String language;

    FormVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
        boolean paper = out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
        if (missing != (paper && file != null)) {
            throw new ParameterException(
                    Objects.requireNonNull(spec).commandLine(),
                    "a job is printed by --missing and --out FORM.pdf together; without a job the PDF is blank, and a workbook takes all that a job has");
        }
        String ending = paper ? ".pdf" : ".xlsx";
        OutputCheck.check(
                out, ending, Stream.of(file, catalogue).filter(Objects::nonNull).toList());
        OpenedJob known = null;
        if (file != null) {
            known = context.service().open(file, catalogue, context.today());
            known.warnings().forEach(context.err()::println);
            OutputCheck.check(out, ending, known.companions());
        }
        SurveyForms forms = new SurveyForms(context.service());
        if (paper) {
            forms.print(known, locale, context.today(), out);
        } else {
            forms.write(known, locale, out);
        }
        context.out().println(context.in(locale).text("written") + " " + out);
        return Verbs.DONE;
    }
}
