// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.completion.CompletionPaths;
import twinfeed.usecase.completion.CompletionService;

/** The readings after the work: entered, judged, printed. */
@Command(
        name = "complete",
        mixinStandardHelpOptions = true,
        description = {
            "Enter the readings after the work, judge each, and print record and customer's page.",
            "The record holds the data that a certificate asks for and is not the certificate. Exit status 1 with"
                    + " --strict unless every reading is there and as it should be."
        })
final class CompleteVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Mixin
    private final FirmArgument firm = new FirmArgument();

    @Option(
            names = "--reading",
            paramLabel = "FIELD=VALUE",
            description = {
                "Enter a reading or a remark; may be repeated. Fields: externalLoop, loop, line, cpcContinuous,"
                        + " bonding, insulation, polaritySupply,",
                "polarity, residualTime, residualButton, prospectiveFault, loadedVoltage, elements, runningPressure,"
                        + " flow, intake, outlet, tight, shutsDown;",
                "heaterId (the unit that was fitted), work, settings, instruments, departures, notes. VALUE - takes it"
                        + " away."
            })
    private Map<String, String> readings = new LinkedHashMap<>();

    @Option(names = "--by", paramLabel = "NAME", description = "Who tested, a competent person.")
    private String by = "";

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the tests; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--record", paramLabel = "RECORD.pdf", description = "Write the completion record as PDF.")
    private @Nullable Path record;

    @Option(names = "--out", paramLabel = "RECORD.xlsx", description = "Write the completion record as a workbook.")
    private @Nullable Path workbook;

    @Option(names = "--customer", paramLabel = "PAGE.pdf", description = "Write the page for the customer as PDF.")
    private @Nullable Path customer;

    @Option(names = "--strict", description = "End with status 1 unless every reading is there and as it should be.")
    private boolean strict;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    CompleteVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        OpenedJob opened = job.open(context);
        CompletionPaths files = new CompletionPaths(
                spared(new OutputPaths(workbook, record), opened), spared(new OutputPaths(null, customer), opened));
        files.check();
        LocalDate day = new PastDay("--date", "the work was tested").of(date, context.today());
        CompletionService completion = new CompletionService(context.service());
        if (!readings.isEmpty()) {
            opened = completion.record(job.file().file(), job.file().catalogue(), by, day, readings);
        }
        CompletionSheet sheet = completion.sheet(opened, job.book(context), job.locale());
        CompletionService.write(opened, sheet, firm.of(job), day, job.locale(), files);
        CliContext spoken = context.in(job.locale());
        if (json) {
            spoken.json().completion(sheet);
        } else {
            print(spoken, sheet);
            new TextReport(spoken).written(files.record());
            new TextReport(spoken).written(files.customer());
        }
        return strict && !sheet.complete() ? Verbs.STRICT : Verbs.DONE;
    }

    private OutputPaths spared(OutputPaths paths, OpenedJob opened) {
        return paths.sparing(job.bookFile(), firm.file())
                .sparing(job.file().inputs())
                .sparing(opened.companions());
    }

    private static void print(CliContext spoken, CompletionSheet sheet) {
        spoken.out().println(spoken.text("complete." + sheet.state()));
        sheet.readings().forEach(reading -> print(spoken, reading));
        list(spoken, "complete.works", sheet.works());
        spoken.out().println(spoken.text("complete.data"));
        spoken.out().println(spoken.cautions());
    }

    private static void list(CliContext spoken, String head, List<String> lines) {
        if (!lines.isEmpty()) {
            spoken.out().println(spoken.text(head));
            lines.forEach(line -> spoken.out().println("  - " + line));
        }
    }

    private static void print(CliContext spoken, CompletionReading reading) {
        String sign = reading.sound() != null ? reading.wrong() ? "[NO]" : "[ok]" : reading.needed() ? "[??]" : "[--]";
        String value = reading.entered() ? reading.value() : spoken.text("complete.notEntered");
        spoken.out()
                .println("  " + sign + " " + reading.title() + ": " + value
                        + (reading.expected().isEmpty()
                                ? ""
                                : "; " + spoken.text("complete.expected") + " " + reading.expected()));
    }
}
