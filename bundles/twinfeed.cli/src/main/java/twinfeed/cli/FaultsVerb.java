// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.faults.FaultFindingService;

/** Ranked causes and the next test, as a job sheet. */
@Command(
        name = "faults",
        mixinStandardHelpOptions = true,
        description = {
            "The job sheet of the fault-finding: ranked causes and the next step.",
            "With its safe isolation, readings beside their bands and, with a price book, repair beside replacement."
                    + " Ticks and answers are entered into the job."
        })
final class FaultsVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the prices; today if not given.")
    private @Nullable LocalDate date;

    @Option(
            names = "--tick",
            paramLabel = "STEP",
            description = {
                "Enter a step of the safe isolation as done; may be repeated, in the order of the procedure:",
                "showerOff, breakerLocked, noticeUp, (isolatorSupplyDead,) isolatorOpen, waterShut;"
                        + " testerProvedBefore, deadAtTerminals, testerProvedAfter."
            })
    private List<String> ticks = new ArrayList<>();

    @Option(
            names = "--answer",
            paramLabel = "OBSERVATION=yes|no|unknown",
            description = {
                "Enter an answer; may be repeated. What is found under the cover waits for the whole isolation."
            })
    private Map<String, String> answers = new LinkedHashMap<>();

    @Option(names = "--by", paramLabel = "NAME", description = "Who ticks and answers.")
    private String by = "";

    @Option(names = "--at", paramLabel = "TIME", description = "When, as text, for example \"2026-10-06 09:40\".")
    private String at = "";

    @Option(names = "--out", paramLabel = "SHEET.xlsx", description = "Write the job sheet as a workbook.")
    private @Nullable Path out;

    @Option(
            names = "--pdf",
            paramLabel = "SHEET.pdf",
            description = "Write the job sheet as PDF, to be filled in by pen.")
    private @Nullable Path pdf;

    @Option(
            names = "--firm",
            paramLabel = "FILE",
            description = "Whose sheet it is: a property file; firm.properties beside the price book if not given.")
    private @Nullable Path firm;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    FaultsVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        OpenedJob opened = job.open(context);
        OutputPaths files = new OutputPaths(out, pdf)
                .sparing(job.bookFile(), firm)
                .sparing(job.file().inputs())
                .sparing(opened.companions());
        files.check();
        FaultFindingService faults = new FaultFindingService(context.service());
        if (!ticks.isEmpty() || !answers.isEmpty()) {
            new PastDay("--at", "it was done").check(at, context.today());
            opened = faults.record(job.file().file(), job.file().catalogue(), by, at, ticks, answers);
        }
        LocalDate day = date == null ? context.today() : date;
        FaultSheet sheet = faults.sheet(opened, job.book(context), day, job.locale());
        if (out != null || pdf != null) {
            FaultFindingService.write(opened, sheet, who(), day, job.locale(), files);
        }
        CliContext spoken = context.in(job.locale());
        if (json) {
            spoken.json().faults(sheet);
        } else {
            new FaultsReport(spoken).print(sheet);
            new TextReport(spoken).written(files);
        }
        return sheet.unanswered() > 0 ? Verbs.INCOMPLETE : Verbs.DONE;
    }

    private FirmFile who() {
        if (firm != null) {
            return FirmFile.load(firm);
        }
        Path book = job.bookFile();
        return book == null ? FirmFile.none() : FirmFile.beside(book);
    }
}
