// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.Texts;

/**
 * A spreadsheet that cannot be written or read as asked; the message names the place, what is wrong and what would be right. Its text
 * is {@code trouble.KEY} of the bundle's messages.
 */
public final class WorkbookException extends IOException {
    private static final Texts TEXTS = new Texts(QuoteWorkbook.class, "Workbook");

    private final String key;
    private final transient Map<String, ?> values;

    /**
     * Says what is wrong.
     *
     * @param key key of the message, without {@code trouble.}
     * @param values what its placeholders stand for
     */
    public WorkbookException(String key, Map<String, ?> values) {
        super(text(key, values, Locale.ROOT));
        this.key = key;
        this.values = values;
    }

    /** Says what is wrong, and what was thrown. */
    public WorkbookException(String key, Map<String, ?> values, Throwable cause) {
        super(text(key, values, Locale.ROOT), cause);
        this.key = key;
        this.values = values;
    }

    private static String text(String key, Map<String, ?> values, Locale locale) {
        return TEXTS.format(locale, "trouble." + key, values);
    }

    /** Key of the message. */
    public String key() {
        return key;
    }

    /** The message in a language. */
    public String message(Locale locale) {
        return values == null ? String.valueOf(getMessage()) : text(key, values, locale);
    }
}
