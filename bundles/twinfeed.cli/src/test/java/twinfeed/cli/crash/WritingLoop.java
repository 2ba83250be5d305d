// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuoteWriting;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/**
 * A program of its own that does all that writes, over and over in a seeded order: save, save unsaved changes, quote, issue, revise,
 * accept, judge a list, import prices. It says "ready" when it begins and the name of each quote that it has issued. Arguments:
 * folder, seed, number of steps.
 */
public final class WritingLoop {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final TwinfeedService service = TwinfeedService.onClassPath();
    private final Office office;
    private final Random random;
    private final OpenedJob opened;
    private final PriceBook prices;
    private final FirmFile firm;
    private final AssessedJob judged;
    private final Quote draft;

    private WritingLoop(Path folder, long seed) {
        office = new Office(folder);
        random = new Random(seed);
        prices = service.book(office.prices());
        firm = FirmFile.none();
        opened = service.open(office.job(), null);
        judged = service.judge(opened, prices, null, Locale.ROOT);
        draft = QuotingService.draft(judged, prices, DAY, firm, Locale.ROOT);
    }

    /** Writes until it has taken all its steps or is killed. */
    public static void main(String[] arguments) {
        WritingLoop loop = new WritingLoop(Path.of(arguments[0]), Long.parseLong(arguments[1]));
        System.out.println("ready");
        for (int step = Integer.parseInt(arguments[2]); step > 0; step--) {
            try {
                loop.step();
            } catch (InputException | UnusableException refused) {
                // Another one was faster, or it was accepted already: nothing was written then.
                System.out.println("refused "
                        + String.valueOf(refused.getMessage())
                                .lines()
                                .findFirst()
                                .orElse(""));
            }
        }
    }

    private void step() {
        switch (random.nextInt(16)) {
            case 0, 1, 2 -> save(office.job());
            case 3, 4 -> save(office.unsaved());
            case 5, 6, 7, 8 -> issued(IssuedQuotes.issue(judged, draft, prices, office.quotes()));
            case 9, 10 -> withLatest(file -> issued(IssuedQuotes.revise(judged, draft, prices, file)));
            case 11 ->
                withLatest(file ->
                        IssuedQuotes.accept(file, draft.getOptions().get(0).getName(), DAY));
            case 12 -> withLatest(file -> IssuedQuotes.decline(file, DAY));
            case 13 -> AtomicFile.write(office.imported(), text());
            case 14 -> issueWithWorkbook();
            default -> judgeList();
        }
    }

    /** Every text that a job may hold here has the same length and one of ten figures. */
    private void save(Path file) {
        opened.job()
                .getSurvey()
                .setNotes("note " + String.valueOf(random.nextInt(10)).repeat(20_000));
        JobFile.save(opened.job(), file);
    }

    private byte[] text() {
        return String.valueOf(service.bookReport(office.prices(), null).text()).getBytes(StandardCharsets.UTF_8);
    }

    private void withLatest(java.util.function.Consumer<Path> step) {
        List<Path> files = IssuedQuotes.in(office.quotes());
        if (!files.isEmpty()) {
            step.accept(files.get(random.nextInt(files.size())));
        }
    }

    private void issueWithWorkbook() {
        OutputPaths out = new OutputPaths(office.workbook(), office.pdf());
        try (IssuedQuoteWriting writing = QuotingService.prepare(judged, draft, firm, Locale.ROOT, out)) {
            IssuedQuote issued = IssuedQuotes.issue(judged, draft, prices, office.quotes());
            issued(issued);
            writing.write(issued);
        }
    }

    private void judgeList() {
        BatchTask task = new BatchTask(opened, prices, firm, DAY, Locale.ROOT);
        try {
            new BatchWriting(service, task).write(office.dwellings(), office.results(), (done, all, before) -> {});
        } catch (InputException busy) {
            // Another writer judges the same list into the same file at this moment; it is told so and nothing is lost.
            if (!busy.getMessage().contains("by another program now")) {
                throw busy;
            }
        }
    }

    private static void issued(IssuedQuote quote) {
        System.out.println("issued " + quote.name());
        System.out.flush();
    }
}
