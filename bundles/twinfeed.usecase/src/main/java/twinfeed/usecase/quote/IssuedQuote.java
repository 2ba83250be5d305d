// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.quotes.QuoteLife;
import twinfeed.quotes.Verification;

/**
 * An issued quote as it stands in its office's folder.
 *
 * @param file its file
 * @param quote the quote, with what was decided since
 * @param digest SHA-256 of the file as it is now
 * @param unchanged whether that is what was kept when it was issued
 * @param verification the same, or that it cannot be said
 * @param customer the customer's name in the frozen survey; empty if it has none
 * @param site the dwelling's name in it; empty if it has none
 */
public record IssuedQuote(
        Path file,
        Quote quote,
        String digest,
        boolean unchanged,
        Verification verification,
        String customer,
        String site) {
    /** Whether the file is what was kept when it was issued, in words. */
    public String verification(Locale locale) {
        return verification.text(locale);
    }

    /** Number and revision as they are printed: {@code 2026-0042-r1}. */
    public String name() {
        return QuoteLife.name(quote);
    }

    /** Where it stands on a day: an issued quote lapses by itself when its last day is over. */
    public QuoteState stateOn(LocalDate day) {
        return QuoteLife.stateOn(quote, day);
    }
}
