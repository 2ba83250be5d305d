// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;

/**
 * A document that cannot be made as asked, whatever it is printed on; the message names what is wrong and what would be right. Its text
 * is {@code trouble.KEY} of the bundle's messages.
 */
public final class DocumentException extends IOException {
    private final String key;
    private final transient Map<String, ?> values;

    /**
     * Says what is wrong.
     *
     * @param key key of the message, without {@code trouble.}
     * @param values what its placeholders stand for
     */
    public DocumentException(String key, Map<String, ?> values) {
        super(text(key, values, Locale.ROOT));
        this.key = key;
        this.values = values;
    }

    /** Says what is wrong, and what was thrown. */
    public DocumentException(String key, Map<String, ?> values, Throwable cause) {
        super(text(key, values, Locale.ROOT), cause);
        this.key = key;
        this.values = values;
    }

    private static String text(String key, Map<String, ?> values, Locale locale) {
        return new Words(locale).get("trouble." + key, values);
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
