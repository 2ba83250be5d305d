// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.DocumentTexts;
import twinfeed.document.OfferedFindings;
import twinfeed.document.QuoteDocument;
import twinfeed.document.QuoteLetterWriter;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;
import twinfeed.pdf.QuotePdf;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteException;
import twinfeed.pricing.QuoteRequest;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobPhotos;
import twinfeed.usecase.OutputFiles;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.choices.AppliedChoices;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;
import twinfeed.usecase.interchange.UblQuotation;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.QuoteWorkbook;

/** Prices assessed jobs and writes their quotes. */
public final class QuotingService {
    private QuotingService() {}

    private static Survey survey(AssessedJob judged) {
        return judged.opened().job().getSurvey();
    }

    /**
     * Prices what was assessed.
     *
     * @param judged the assessed job
     * @param book the price book
     * @param date day of the quote
     * @param firm who quotes, perhaps with its own wording of the standing texts
     * @param locale language of the texts; that of the assessment
     * @return a draft
     * @throws UnusableException if the book lacks something that the work needs
     */
    public static Quote draft(AssessedJob judged, PriceBook book, LocalDate date, FirmFile firm, Locale locale) {
        return draft(judged, book, date, firm, locale, List.of());
    }

    /**
     * Prices named heaters of what was assessed, in this order and whatever their verdicts.
     *
     * @param heaters ids out of the assessment, at most four, or {@link QuoteRequest#PRESENT}; none lets the verdicts decide
     * @throws UnusableException if a heater was not assessed, or the book lacks something that the work needs
     */
    public static Quote draft(
            AssessedJob judged, PriceBook book, LocalDate date, FirmFile firm, Locale locale, List<String> heaters) {
        QuoteChoices choices = ChoicesInJob.of(judged.opened().job());
        AppliedChoices applied = new AppliedChoices(choices, judged.record(), book);
        try {
            QuoteRequest request = QuoteRequest.of(survey(judged), applied.assessment(), applied.book(), date)
                    .reporting(AssessedFaults.report(judged, book, date, locale))
                    .in(locale, firm.texts(locale));
            Quote quote = QuoteBuilder.draft(applied.apply(request, heaters));
            applied.explain(quote);
            return quote;
        } catch (QuoteException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }

    /**
     * What the customer would read of a quote, in the words of its PDF.
     *
     * @throws UnusableException if the quote cannot be printed
     */
    public static CustomerPage page(AssessedJob judged, Quote quote, FirmFile firm, Locale locale) {
        QuoteDocument document = document(judged, quote, null, firm, locale);
        return CustomerPage.of(new QuoteLetterWriter(document, new DocumentTexts(locale)).write());
    }

    /**
     * Writes a quote as a workbook, as a PDF or as both; all of it appears, or nothing.
     *
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public static void write(AssessedJob judged, Quote quote, FirmFile firm, Locale locale, OutputPaths out) {
        write(judged, quote, null, firm, locale, out);
    }

    /** The same for an issued quote, its digest on it. */
    public static void write(AssessedJob judged, IssuedQuote issued, FirmFile firm, Locale locale, OutputPaths out) {
        write(judged, issued.quote(), issued.digest(), firm, locale, out);
    }

    private static void write(
            AssessedJob judged, Quote quote, @Nullable String digest, FirmFile firm, Locale locale, OutputPaths out) {
        out.check();
        files(judged, quote, digest, firm, locale, out).write();
    }

    /**
     * Makes ready to write the workbook and PDF of a quote that is issued next: room is taken for them, and what can fail fails here.
     *
     * @throws twinfeed.model.io.InputException or UnusableException if they cannot be made or written
     */
    public static IssuedQuoteWriting prepare(
            AssessedJob judged, Quote draft, FirmFile firm, Locale locale, OutputPaths out) {
        return new IssuedQuoteWriting(judged, draft, firm, locale, out);
    }

    static OutputFiles files(
            AssessedJob judged, Quote quote, @Nullable String digest, FirmFile firm, Locale locale, OutputPaths out) {
        QuoteDocument document = document(judged, quote, digest, firm, locale);
        return new OutputFiles()
                .add(out.workbook(), bytes -> QuoteWorkbook.write(document, bytes))
                .add(out.pdf(), bytes -> QuotePdf.write(document, bytes))
                .add(out.ubl(), bytes -> quotation(quote, survey(judged), firm, locale)
                        .write(bytes));
    }

    /** The quote as a document that other programs read. */
    static UblQuotation quotation(Quote quote, Survey survey, FirmFile firm, Locale locale) {
        return UblQuotation.of(quote, survey, firm.firm(), locale)
                .orElseThrow(
                        () -> new UnusableException(Refusals.text("quotation.lines"), new IllegalStateException()));
    }

    /** The supplies of the house with the work of the quote's first option done; null where it needs none. */
    static @Nullable WorkDone withWork(AssessedJob judged, Quote quote) {
        return quote.getOptions().stream()
                .findFirst()
                .flatMap(option -> OfferedFindings.assessed(judged.record(), option))
                .filter(option -> !option.getAfterWork().isEmpty())
                .map(judged::withWork)
                .map(changed -> WorkDone.of(judged.opened().job().getSurvey(), changed))
                .orElse(null);
    }

    private static QuoteDocument document(
            AssessedJob judged, Quote quote, @Nullable String digest, FirmFile firm, Locale locale) {
        try {
            QuoteDocument document = QuoteDocument.of(
                            survey(judged), judged.record(), quote, firm.firm(), TwinfeedService.VERSION, locale)
                    .withPhotos(new JobPhotos(judged.opened().file()))
                    .withWork(withWork(judged, quote));
            return digest == null ? document : document.withFingerprint(digest);
        } catch (DocumentException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }
}
