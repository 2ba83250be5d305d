// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.desktop.text.ProblemText;
import twinfeed.desktop.text.ReadingName;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.check.JobCheck;
import twinfeed.model.check.Problem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.completion.PartsToPack;
import twinfeed.usecase.faults.FaultFindingService;
import twinfeed.usecase.firm.FirmFolder;
import twinfeed.usecase.quote.CustomerPage;
import twinfeed.usecase.quote.Demonstration;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/** What all open jobs share: the use cases, the price book in force, the day, the language. */
public final class JobServices {
    /**
     * A price book and where it came from.
     *
     * @param file its file
     * @param book its content
     */
    public record Prices(Path file, PriceBook book) {}

    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final TwinfeedService service;
    private final Clock clock;
    private final Locale locale;
    private final ChangeNotifier changed = new ChangeNotifier();
    private final ChangeNotifier decided = new ChangeNotifier();
    private final AtomicReference<@Nullable Prices> prices = new AtomicReference<>();
    private final AtomicReference<@Nullable Prices> demonstration = new AtomicReference<>();
    private final AtomicReference<@Nullable FirmFolder> firm = new AtomicReference<>();
    private volatile Locale papers;

    /**
     * Services without a price book.
     *
     * @param service the use cases
     * @param clock the day that a draft bears, and the time that is recorded with answers
     * @param locale language and way of writing numbers
     */
    public JobServices(TwinfeedService service, Clock clock, Locale locale) {
        this.service = service;
        this.clock = clock;
        this.locale = locale;
        this.papers = locale;
    }

    /** Fires when other prices are in force. */
    public ChangeNotifier changed() {
        return changed;
    }

    /** Fires when somebody here has recorded what a customer decided, or has taken that back. */
    public ChangeNotifier decided() {
        return decided;
    }

    /** The use cases. */
    public TwinfeedService service() {
        return service;
    }

    /** Language and way of writing numbers of the window. */
    public Locale locale() {
        return locale;
    }

    /** Language and way of writing numbers of quotes and other papers; those of the window unless others are chosen. */
    public Locale papers() {
        return papers;
    }

    /** Papers are written in another language from now on. */
    public void papers(Locale other) {
        papers = other;
        changed.fire();
    }

    /** The firm's own files, where it has any; they go before those beside the price book. */
    public void useFirm(FirmFolder folder) {
        firm.set(folder);
        changed.fire();
    }

    /**
     * Who quotes at these prices: the firm of the settings, else the one that is described beside the price book. The demonstration
     * keeps its invented firm.
     *
     * @throws twinfeed.model.io.InputException if its files cannot be used
     */
    public FirmFile firm(@Nullable Prices inForce) {
        @Nullable FirmFolder own = firm.get();
        @Nullable Prices invented = demonstration.get();
        boolean demo = inForce != null && invented != null && inForce.file().equals(invented.file());
        if (!demo && own != null && own.filled()) {
            return own.firm();
        }
        return inForce == null ? FirmFile.none() : FirmFile.beside(inForce.file());
    }

    /** The day that a draft bears. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The time as it is recorded: {@code 2026-10-13 09:25}. */
    public String now() {
        return MINUTES.format(LocalDateTime.now(clock));
    }

    /** The price book that was chosen; null without one. */
    public @Nullable Prices prices() {
        return prices.get();
    }

    /**
     * The price book by which a survey is priced: the chosen one; without that the demonstration's, but for a survey of the demonstration
     * only. Invented prices never stand in for prices that nobody has chosen.
     */
    public @Nullable Prices prices(@Nullable Survey survey) {
        Prices chosen = prices.get();
        return chosen == null && Demonstration.survey(survey) ? demonstration.get() : chosen;
    }

    /**
     * By this price book surveys of the demonstration are priced as long as no other one is chosen.
     *
     * @throws twinfeed.model.io.InputException if it cannot be used
     */
    public void demonstrationPrices(Path file) {
        demonstrationPrices(new Prices(file, service.book(file)));
    }

    /** The same with a book that was read already. */
    public void demonstrationPrices(Prices read) {
        demonstration.set(read);
        changed.fire();
    }

    /**
     * From now on quotes use this price book.
     *
     * @throws twinfeed.model.io.InputException if it cannot be used; the one before stays in force then
     */
    public void usePrices(Path file) {
        prices.set(new Prices(file, service.book(file)));
        changed.fire();
    }

    /** From now on quotes use a price book that was read already. */
    public void usePrices(Prices read) {
        prices.set(read);
        changed.fire();
    }

    /** From now on there are no prices, but for the demonstration's own. */
    public void noPrices() {
        prices.set(null);
        changed.fire();
    }

    /**
     * Writes the parts to pack for an accepted quote.
     *
     * @param out a PDF if its name ends with .pdf, otherwise a workbook
     * @throws RuntimeException if the customer has not accepted the quote, or it cannot be written; its message says why
     */
    public void writeParts(IssuedQuote issued, Path out) {
        OutputPaths paths = out.toString().endsWith(".pdf") ? OutputPaths.pdf(out) : OutputPaths.workbook(out);
        OutputPaths sparing = paths.sparing(issued.file());
        sparing.check();
        PartsToPack.write(issued, firm(prices.get()), today(), papers(), sparing);
    }

    /**
     * Writes an issued quote again, from what was frozen with it.
     *
     * @param out a PDF if its name ends with .pdf, otherwise a workbook
     * @throws RuntimeException if it is not as it was issued, or cannot be written; its message says why
     */
    public void reprint(IssuedQuote issued, Path out) {
        OutputPaths paths = out.toString().endsWith(".pdf") ? OutputPaths.pdf(out) : OutputPaths.workbook(out);
        OutputPaths sparing = paths.sparing(issued.file());
        sparing.check();
        FirmFile firm = firm(prices(IssuedQuotes.survey(issued.file())));
        IssuedQuotes.reprint(service, issued.file(), firm, papers(), sparing);
    }

    /** The findings as the house is, quickly; see {@link #result}. */
    JobResult quickAssess(long revision, OpenedJob opened) {
        return attempt(
                revision, opened, () -> new JobResult(revision, false, service.quickAssess(opened, locale), null, ""));
    }

    /**
     * Judges and prices a job that nobody else changes meanwhile. Never throws: whatever goes wrong behind the user interface
     * must be read there, or the window would go on showing an older answer as if it were this one.
     *
     * @param wanted whether the answer still counts; without a wish for it what is left of the work is not done
     * @param cache what calculators answered of this job before its last edits
     */
    JobResult result(long revision, OpenedJob opened, BooleanSupplier wanted, AnswerCache cache) {
        return result(revision, opened, locale, wanted, cache);
    }

    /** The same in the language of the papers. */
    JobResult paperResult(OpenedJob opened, AnswerCache cache) {
        return result(0, opened, papers(), () -> true, cache);
    }

    private JobResult result(
            long revision, OpenedJob opened, Locale language, BooleanSupplier wanted, AnswerCache cache) {
        @Nullable Prices inForce = prices(opened.job().getSurvey());
        return attempt(revision, opened, () -> {
            AssessedJob judged =
                    service.judge(opened, inForce == null ? null : inForce.book(), language, wanted, cache);
            return priced(revision, judged, inForce, language);
        });
    }

    /** The fault-finding without prices, quickly; never throws, see {@link #result}. */
    FaultResult faults(long revision, OpenedJob opened) {
        String errors = unusable(opened);
        return faults(
                revision, false, errors, () -> new FaultFindingService(service).sheet(opened, null, today(), locale));
    }

    /** The fault-finding of a judged job with repair and replacement priced; likewise. */
    FaultResult faults(long revision, AssessedJob judged, Prices inForce) {
        return faults(revision, true, "", () -> FaultFindingService.sheet(judged, inForce.book(), today(), locale));
    }

    /** The readings after the work, judged in the house as it should be finished; likewise. */
    CompletionResult completion(long revision, CompletionJudge judge, OpenedJob opened) {
        String errors = unusable(opened);
        if (!errors.isEmpty()) {
            return CompletionResult.none(revision, errors);
        }
        try {
            return judge.judge(revision, opened);
        } catch (RuntimeException | LinkageError refused) {
            return CompletionResult.none(revision, reason(refused));
        }
    }

    private FaultResult faults(long revision, boolean priced, String errors, Supplier<FaultSheet> work) {
        if (!errors.isEmpty()) {
            return new FaultResult(revision, priced, null, errors);
        }
        try {
            return new FaultResult(revision, priced, work.get(), "");
        } catch (RuntimeException | LinkageError refused) {
            return new FaultResult(revision, priced, null, reason(refused));
        }
    }

    private JobResult attempt(long revision, OpenedJob opened, Supplier<JobResult> work) {
        String errors = unusable(opened);
        if (!errors.isEmpty()) {
            return new JobResult(revision, true, null, null, errors);
        }
        try {
            return work.get();
        } catch (RuntimeException | LinkageError refused) {
            return new JobResult(revision, true, null, null, reason(refused));
        }
    }

    /** Without calculators nothing fails, and everything would seem to suit. */
    private String unusable(OpenedJob opened) {
        return service.calculators().isEmpty() ? new Words(locale).get("findings.noCalculators") : errors(opened);
    }

    /** What cannot be so in the survey: nothing must be computed, let alone sold, from it. */
    private String errors(OpenedJob opened) {
        return JobCheck.of(opened.job(), opened.catalogue()).stream()
                .filter(Problem::isError)
                .map(this::error)
                .collect(Collectors.joining("\n"));
    }

    private String error(Problem problem) {
        String name = ReadingName.of(problem.path(), new Words(locale));
        String reading = problem.reading().isEmpty() ? "" : " " + problem.reading();
        return name + reading + ": " + problem.wrong() + "; " + problem.right();
    }

    private JobResult priced(long revision, AssessedJob judged, @Nullable Prices inForce, Locale language) {
        if (inForce == null) {
            return new JobResult(revision, true, judged, null, "");
        }
        try {
            Quote quote = QuotingService.draft(judged, inForce.book(), today(), firm(inForce), language);
            return new JobResult(revision, true, judged, quote, "");
        } catch (RuntimeException | LinkageError refused) {
            return new JobResult(revision, true, judged, null, reason(refused));
        }
    }

    /**
     * What the customer would read of a result, in the language of the papers; empty where there is no quote.
     *
     * @param cache what calculators answered of this job
     */
    Optional<CustomerPage> page(JobResult result, AnswerCache cache) {
        Locale language = papers();
        JobResult shown = result;
        if (result.judged() != null && !language.equals(locale)) {
            shown = result(result.revision(), result.judged().opened(), language, () -> true, cache);
        }
        @Nullable AssessedJob judged = shown.judged();
        @Nullable Quote quote = shown.quote();
        if (judged == null || quote == null) {
            return Optional.empty();
        }
        FirmFile firm = firm(prices(judged.opened().job().getSurvey()));
        return Optional.of(QuotingService.page(judged, quote, firm, language));
    }

    private String reason(Throwable refused) {
        return refused.getMessage() == null ? refused.toString() : ProblemText.reason(refused, new Words(locale));
    }
}
