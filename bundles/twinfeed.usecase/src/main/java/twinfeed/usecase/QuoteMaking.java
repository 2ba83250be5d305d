// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.QuoteDocument;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.pdf.QuotePdf;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteException;
import twinfeed.pricing.QuoteRequest;
import twinfeed.usecase.choices.AppliedChoices;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;
import twinfeed.usecase.interchange.UblQuotation;
import twinfeed.workbook.QuoteWorkbook;

/** Prices an assessed job and writes its quote. */
final class QuoteMaking {
    private final AssessedJob judged;

    QuoteMaking(AssessedJob judged) {
        this.judged = judged;
    }

    private Survey survey() {
        return judged.opened().job().getSurvey();
    }

    Quote draft(PriceBook book, LocalDate date, FirmFile firm, Locale locale, List<String> heaters) {
        QuoteChoices choices = ChoicesInJob.of(judged.opened().job());
        AppliedChoices applied = new AppliedChoices(choices, judged.record(), book);
        QuoteRequest request = QuoteRequest.of(survey(), applied.assessment(), applied.book(), date)
                .reporting(FaultFindingService.report(judged, book, date, locale))
                .in(locale, firm.texts(locale));
        try {
            Quote quote = QuoteBuilder.draft(applied.apply(request, heaters));
            applied.explain(quote);
            return quote;
        } catch (QuoteException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }

    void write(Quote quote, @Nullable String digest, FirmFile firm, Locale locale, OutputPaths out) {
        out.check();
        files(quote, digest, firm, locale, out).write();
    }

    OutputFiles files(Quote quote, @Nullable String digest, FirmFile firm, Locale locale, OutputPaths out) {
        QuoteDocument document = document(quote, digest, firm, locale);
        return new OutputFiles()
                .add(out.workbook(), bytes -> QuoteWorkbook.write(document, bytes))
                .add(out.pdf(), bytes -> QuotePdf.write(document, bytes))
                .add(out.ubl(), bytes -> quotation(quote, survey(), firm).write(bytes));
    }

    /** The quote as a document that other programs read. */
    static UblQuotation quotation(Quote quote, Survey survey, FirmFile firm) {
        return UblQuotation.of(quote, survey, firm.firm())
                .orElseThrow(() -> new UnusableException(
                        "the quote offers nothing with a price, and a UBL Quotation needs a line; write it without --ubl",
                        new IllegalStateException()));
    }

    private QuoteDocument document(Quote quote, @Nullable String digest, FirmFile firm, Locale locale) {
        try {
            QuoteDocument document = QuoteDocument.of(
                            survey(), judged.record(), quote, firm.firm(), TwinfeedService.VERSION, locale)
                    .withPhotos(new JobPhotos(judged.opened().file()));
            return digest == null ? document : document.withFingerprint(digest);
        } catch (DocumentException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }
}
