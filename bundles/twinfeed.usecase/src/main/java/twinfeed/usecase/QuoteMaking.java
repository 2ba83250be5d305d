// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteDocument;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteBuilder;
import twinfeed.pricing.QuoteException;
import twinfeed.pricing.QuoteRequest;
import twinfeed.workbook.QuoteWorkbook;

/** Prices an assessed job and writes the workbook. */
final class QuoteMaking {
    private final Judged judged;

    QuoteMaking(Judged judged) {
        this.judged = judged;
    }

    private Survey survey() {
        return judged.opened().job().getSurvey();
    }

    Quote draft(PriceBook book, LocalDate date) {
        try {
            return QuoteBuilder.draft(QuoteRequest.of(survey(), judged.record(), book, date));
        } catch (QuoteException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }

    void write(Quote quote, @Nullable String digest, FirmFile firm, Locale locale, Path out) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
        try {
            QuoteDocument document =
                    QuoteDocument.of(survey(), judged.record(), quote, firm.firm(), Office.VERSION, locale);
            QuoteWorkbook.write(digest == null ? document : document.withFingerprint(digest), bytes);
        } catch (IOException refused) {
            throw new UnusableException(out + ": " + refused.getMessage(), refused);
        }
        // The whole workbook is in memory before anything touches the disk: it appears whole or not at all.
        AtomicFile.write(out, bytes.toByteArray());
    }
}
