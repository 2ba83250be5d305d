// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.List;
import java.util.Locale;
import twinfeed.model.io.OneLine;
import twinfeed.units.text.Texts;

/**
 * What is to be said about one place of a price book: why a row is refused, or what is odd about it.
 *
 * @param file name of the file
 * @param row row as the file shows it; 0 for the file as a whole
 * @param column name of the column or head line; empty for the row as a whole
 * @param key key of the message, without its ending {@code .wrong} or {@code .right}
 * @param arguments values that the message names
 */
public record RowRemark(String file, int row, String column, String key, List<String> arguments) {
    static final Texts MESSAGES = new Texts(RowRemark.class, "messages");

    public RowRemark {
        arguments = List.copyOf(arguments);
    }

    /** What is wrong, in the language of the program. */
    public String wrong() {
        return wrong(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** What is wrong. */
    public String wrong(Locale locale) {
        return MESSAGES.inOrder(locale, key + ".wrong", arguments.toArray());
    }

    /** What would be right; empty for a notice that asks for nothing. */
    public String right(Locale locale) {
        return MESSAGES.has(key + ".right") ? MESSAGES.inOrder(locale, key + ".right", arguments.toArray()) : "";
    }

    /** File, row, column, what is wrong and what would be right, in the language of the program. */
    public String message() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** File, row, column, what is wrong and what would be right, in one line. */
    public String message(Locale locale) {
        StringBuilder text = new StringBuilder(file);
        if (row > 0) {
            text.append(", ").append(MESSAGES.inOrder(locale, "row", row));
        }
        if (!column.isEmpty()) {
            text.append(", ").append(column);
        }
        text.append(": ").append(wrong(locale));
        String right = right(locale);
        return OneLine.of(text.append(right.isEmpty() ? "" : "; ").append(right).toString());
    }
}
