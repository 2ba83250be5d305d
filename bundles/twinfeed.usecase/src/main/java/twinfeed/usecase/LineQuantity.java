// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Locale;
import twinfeed.document.DocumentTexts;
import twinfeed.document.QuantityText;
import twinfeed.model.quote.QuoteLine;

/** How much of a line of a quote, as a tradesperson writes it and as the quote prints it: 50 min, not 0.8333 h; 5 %, not 0.05 share. */
public final class LineQuantity {
    private LineQuantity() {}

    /** The quantity with its unit, in a language; empty where the line has none. */
    public static String of(QuoteLine line, Locale locale) {
        return new QuantityText(new DocumentTexts(locale)).of(line);
    }
}
