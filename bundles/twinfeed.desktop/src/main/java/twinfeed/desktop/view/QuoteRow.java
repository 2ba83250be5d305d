// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;

/**
 * One row of the quote as it stands.
 *
 * @param level what it is
 * @param text what a customer reads
 * @param quantity how much, with unit
 * @param unitPrice price of one unit
 * @param net net amount
 * @param note where the price comes from, or a remark
 * @param line the line of the quote; null for headings and sums
 * @param byHand whether somebody has added or changed it
 */
public record QuoteRow(
        Level level,
        String text,
        String quantity,
        String unitPrice,
        String net,
        String note,
        @Nullable QuoteLine line,
        boolean byHand) {
    /** A heading or a sum. */
    QuoteRow(Level level, String text, String net) {
        this(level, text, "", "", net, "", null, false);
    }

    /** What a row is. */
    public enum Level {
        /** Heading of a section. */
        SECTION,
        /** One thing that costs. */
        LINE,
        /** A sum. */
        SUM
    }
}
