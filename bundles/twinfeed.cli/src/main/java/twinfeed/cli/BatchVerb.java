// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputCheck;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;
import twinfeed.usecase.batch.ResultForm;

/** Many dwellings at once. */
@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        description = {
            "Judge and price every dwelling of a list.",
            "Its first row names the columns: \"dwelling\", and fields of the survey such as",
            "water.test.staticPressure or electricity.circuit.segments[1].length; an empty cell keeps what the job"
                    + " says, \"-\" takes",
            "the value away, a plain number is in the unit that help dwellings names first, a column whose name begins"
                    + " with # is a remark; a column \"symptoms\" takes complaints. The results come most urgent first,",
            "with totals, visits by street, repair beside replacement where there is a complaint, and for each"
                    + " reading whether it is the",
            "dwelling's own, from the job or missing. Rows that cannot be used are rejected, in a sheet of their own,"
                    + " with the reason."
        })
final class BatchVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "DWELLINGS", description = "The list, *.csv or *.xlsx.")
    private Path list = Path.of("");

    @Option(
            names = "--template",
            required = true,
            paramLabel = "JOB",
            description = "The job whose survey stands for everything that a row does not say.")
    private Path template = Path.of("");

    @Option(names = "--catalogue", paramLabel = "FILE", description = "Heater catalogue instead of the job's own.")
    private @Nullable Path catalogue;

    @Option(names = "--book", required = true, paramLabel = "BOOK", description = "Price book, *.csv or *.xlsx.")
    private Path book = Path.of("");

    @Option(
            names = "--out",
            required = true,
            paramLabel = "RESULT",
            description = {
                "The file to write: a workbook (*.xlsx), or a line a dwelling in the order of the list (*.csv, or",
                "*.jsonl for a JSON object a line). Work that was stopped goes on where it was when the same command is given again."
            })
    private Path out = Path.of("");

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the prices; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--language", paramLabel = "CODE", description = "Language of the results: en or de.")
    private @Nullable String language;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    BatchVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
        OutputCheck.check(
                out,
                ResultForm.endings(),
                Stream.of(list, template, catalogue, book)
                        .filter(Objects::nonNull)
                        .toList());
        OpenedJob pattern = context.service().open(template, catalogue, context.today());
        pattern.warnings().forEach(context.err()::println);
        BatchTask task = new BatchTask(
                pattern,
                context.service().book(book),
                FirmFile.beside(book),
                date == null ? context.today() : date,
                locale,
                context.today());
        CliContext spoken = context.in(locale);
        BatchReport report;
        try (Progress progress = new Progress(spoken)) {
            report = new BatchWriting(context.service(), task).write(list, out, progress::done);
        }
        if (report.before() > 0) {
            spoken.err().println(spoken.text("batch.before") + " " + report.before());
        }
        if (json) {
            spoken.json().batch(report, out);
        } else {
            print(spoken, report);
        }
        return report.unanswered() > 0 ? Verbs.INCOMPLETE : Verbs.DONE;
    }

    private void print(CliContext spoken, BatchReport report) {
        spoken.out().println(spoken.text("batch.judged") + " " + report.judged());
        spoken.out().println(spoken.text("batch.offered") + " " + report.offered());
        if (report.estimates() > 0) {
            spoken.out().println(spoken.text("batch.estimates") + " " + report.estimates());
        }
        spoken.out().println(spoken.text("batch.unsafe") + " " + report.unsafe());
        if (report.complaints() > 0) {
            spoken.out().println(spoken.text("batch.complaints") + " " + report.complaints());
        }
        if (report.unanswered() > 0) {
            spoken.out().println(spoken.text("batch.unanswered") + " " + report.unanswered());
        }
        spoken.out().println(spoken.text("batch.refused") + " " + report.rejected());
        report.refused().forEach(one -> spoken.err()
                .println(list + ", line " + one.row() + ", " + one.dwelling() + ": "
                        + one.reason().replace("\n", "\n  ")));
        int more = report.rejected() - report.refused().size();
        if (more > 0) {
            spoken.err().println(spoken.text("batch.more") + " " + more);
        }
        spoken.out().println(spoken.cautions());
        spoken.out().println(spoken.text("written") + " " + out);
    }
}
