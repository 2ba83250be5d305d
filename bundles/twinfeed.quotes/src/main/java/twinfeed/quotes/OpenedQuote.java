// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.nio.file.Path;
import java.time.LocalDate;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;

/**
 * An issued quote as it stands in its office's folder.
 *
 * @param file its file
 * @param frozen what was frozen
 * @param digest SHA-256 of the file as it is now
 * @param verification whether it is what was issued
 * @param current the quote with what was decided since
 */
public record OpenedQuote(Path file, FrozenQuote frozen, String digest, Verification verification, Quote current) {
    /** Its state on a day. */
    public QuoteState stateOn(LocalDate day) {
        return QuoteLife.stateOn(current, day);
    }
}
