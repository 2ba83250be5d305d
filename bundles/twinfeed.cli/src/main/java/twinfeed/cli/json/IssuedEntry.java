// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import java.util.List;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.QuoteCorrection;

/**
 * An issued quote in a list.
 *
 * @param issued the quote
 * @param corrections what was corrected of its answers
 */
public record IssuedEntry(IssuedQuote issued, List<QuoteCorrection> corrections) {
    public IssuedEntry {
        corrections = List.copyOf(corrections);
    }
}
