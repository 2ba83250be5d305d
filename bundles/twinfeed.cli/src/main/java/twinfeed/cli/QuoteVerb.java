// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.DangerSentences;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuoteWriting;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/** The itemised quote as a workbook. */
@Command(
        name = "quote",
        mixinStandardHelpOptions = true,
        description = "The itemised quote as a spreadsheet workbook, with checks and workings.")
final class QuoteVerb implements Callable<Integer> {
    private final CliContext context;

    @Mixin
    private final JobFileArguments job = new JobFileArguments();

    @Mixin
    private final StrictArgument strict = new StrictArgument();

    @Option(names = "--book", required = true, paramLabel = "BOOK", description = "Price book, *.csv or *.xlsx.")
    private Path book = Path.of("");

    @Option(names = "--out", required = true, paramLabel = "QUOTE.xlsx", description = "The workbook to write.")
    private Path out = Path.of("");

    @Option(names = "--pdf", paramLabel = "QUOTE.pdf", description = "The quote as PDF too, for the customer.")
    private @Nullable Path pdf;

    @Option(
            names = "--ubl",
            paramLabel = "QUOTE.xml",
            description =
                    "The first option as an OASIS UBL 2.1 Quotation too, for office programs; --heater chooses what is"
                            + " first.")
    private @Nullable Path ubl;

    @Option(
            names = "--firm",
            paramLabel = "FILE",
            description = "Who quotes: a property file; firm.properties beside the price book if not given.")
    private @Nullable Path firm;

    @Option(
            names = "--issue",
            paramLabel = "FOLDER",
            description = "Issue the quote: take the next number of this office's folder and freeze it there.")
    private @Nullable Path issue;

    @Option(
            names = "--revise",
            paramLabel = "QUOTE",
            description = "Issue the quote as the next revision of this one, *.quote, in its own folder.")
    private @Nullable Path revise;

    @Option(
            names = "--reason",
            paramLabel = "TEXT",
            description = "With --issue or --revise: why a quote is issued although an option is not known to suit, or"
                    + " readings are missing (an estimate); kept in the frozen quote, not printed.")
    private @Nullable String reason;

    @Option(
            names = "--heater",
            paramLabel = "ID",
            description = "Offer this heater of the catalogue, whatever its verdict; once for each, at most four."
                    + " \"present\" is the unit that is there.")
    private List<String> heaters = List.of();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Date of the quote; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--json", description = "Print the quote as one JSON document instead of text.")
    private boolean json;

    QuoteVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (issue != null && revise != null) {
            throw new UnusableException(
                    "--issue and --revise: a quote is new, or the next revision of one; give one of the two",
                    new IllegalArgumentException());
        }
        context.service().prepareWriting(pdf != null);
        OutputPaths outputs = new OutputPaths(out, pdf)
                .withUbl(ubl)
                .sparing(book, firm, revise)
                .sparing(job.inputs());
        outputs.check();
        PriceBook prices = context.service().book(book);
        OpenedJob opened = job.open(context);
        outputs = outputs.sparing(opened.companions());
        outputs.check();
        AssessedJob judged = context.service().judgeWith(opened, prices, heaters, job.locale());
        FirmFile who = firm == null ? FirmFile.beside(book) : FirmFile.load(firm);
        LocalDate day = date == null ? context.today() : date;
        Quote draft = QuotingService.draft(judged, prices, day, who, job.locale(), heaters);
        draft.setEstimateReason(reason);
        if (issue == null && revise == null) {
            QuotingService.write(judged, draft, who, job.locale(), outputs);
            answer(judged, draft, outputs, null);
        } else {
            issue(judged, draft, prices, who, outputs);
        }
        return strict.status(judged);
    }

    /** What was issued is told before its workbook is written: whatever happens then, its number is known. */
    private void issue(AssessedJob judged, Quote draft, PriceBook prices, FirmFile who, OutputPaths outputs) {
        try (IssuedQuoteWriting writing = QuotingService.prepare(judged, draft, who, job.locale(), outputs)) {
            IssuedQuote issued = issued(judged, draft, prices);
            CliContext spoken = context.in(job.locale());
            context.err()
                    .println(spoken.text("issued") + " " + issued.name() + " " + issued.file() + " SHA-256 "
                            + issued.digest());
            context.err().println(spoken.text("issued.notice"));
            context.err().flush();
            writing.write(issued);
            answer(judged, issued.quote(), outputs, issued);
        }
    }

    private IssuedQuote issued(AssessedJob judged, Quote draft, PriceBook prices) {
        return revise == null
                ? IssuedQuotes.issue(judged, draft, prices, Objects.requireNonNull(issue))
                : IssuedQuotes.revise(judged, draft, prices, revise);
    }

    private void answer(AssessedJob judged, Quote quote, OutputPaths written, @Nullable IssuedQuote issued) {
        CliContext spoken = context.in(job.locale());
        if (json) {
            spoken.json().quote(quote, DangerSentences.all(judged, job.locale()), written, issued);
        } else {
            new TextReport(spoken).quote(judged, quote, written);
        }
    }
}
