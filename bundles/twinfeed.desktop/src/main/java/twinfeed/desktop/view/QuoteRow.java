// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

/**
 * One row of the quote as it stands.
 *
 * @param level what it is
 * @param text what a customer reads
 * @param quantity how much, with unit
 * @param unitPrice price of one unit
 * @param net net amount
 * @param note where the price comes from, or a remark
 */
public record QuoteRow(Level level, String text, String quantity, String unitPrice, String net, String note) {
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
