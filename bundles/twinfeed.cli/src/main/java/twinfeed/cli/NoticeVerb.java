// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.completion.UnsafeNotices;

/** The notice of an unsafe unit, to be signed on site. */
@Command(
        name = "notice",
        mixinStandardHelpOptions = true,
        description = {
            "The notice of an unsafe unit, with space for signatures.",
            "From the failed checks of safety of the unit that is there and the dangers that were reported or, where"
                    + " readings after the work were entered, from those that fail on safety. Exit status 2 if there is"
                    + " nothing of the kind."
        })
final class NoticeVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobArguments job = new JobArguments();

    @Mixin
    private final FirmArgument firm = new FirmArgument();

    @Option(
            names = "--finding",
            paramLabel = "KEY",
            description =
                    "Only for this finding, for example circuit.isolatorCondition; may be repeated. All if not given.")
    private List<String> findings = new ArrayList<>();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the notice; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--pdf", paramLabel = "NOTICE.pdf", description = "Write the notice as PDF.")
    private @Nullable Path pdf;

    @Option(names = "--out", paramLabel = "NOTICE.xlsx", description = "Write the notice as a workbook.")
    private @Nullable Path out;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    NoticeVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        OpenedJob opened = job.open(context);
        OutputPaths files = new OutputPaths(out, pdf)
                .sparing(job.bookFile(), firm.file())
                .sparing(job.file().inputs())
                .sparing(opened.companions());
        files.check();
        CliContext spoken = context.in(job.locale());
        PriceBook book = job.book(context);
        List<Reason> reasons = chosen(spoken, new UnsafeNotices(context.service()).reasons(opened, book, job.locale()));
        LocalDate day = date == null ? context.today() : date;
        UnsafeNotices.write(opened, reasons, book, firm.of(job), day, job.locale(), files);
        if (json) {
            spoken.json().notice(reasons);
        } else {
            spoken.out().println(spoken.text("notice.unsafe"));
            reasons.forEach(each -> spoken.out().println("  [NO] " + each.title() + ": " + each.text()));
            spoken.out().println(spoken.cautions());
            new TextReport(spoken).written(files);
        }
        return Verbs.DONE;
    }

    private List<Reason> chosen(CliContext spoken, List<Reason> all) {
        String known = all.isEmpty()
                ? spoken.text("notice.none")
                : all.stream().map(Reason::key).collect(Collectors.joining(", "));
        List<Reason> chosen = findings.isEmpty()
                ? all
                : all.stream().filter(each -> findings.contains(each.key())).toList();
        List<String> missing = findings.stream()
                .filter(key -> all.stream().noneMatch(each -> each.key().equals(key)))
                .toList();
        if (chosen.isEmpty() || !missing.isEmpty()) {
            throw new UnusableException(
                    job.file().file() + ": "
                            + (missing.isEmpty()
                                    ? spoken.text("notice.nothing")
                                    : String.join(", ", missing) + " " + spoken.text("notice.notFailed") + " " + known),
                    new IllegalArgumentException(String.join(", ", missing)));
        }
        return chosen;
    }
}
