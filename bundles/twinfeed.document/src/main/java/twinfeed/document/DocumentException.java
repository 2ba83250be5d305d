// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/**
 * A document that cannot be made or read as asked, whatever it is printed on; the message names what is wrong and what would be right. Its
 * text is {@code trouble.KEY} of a bundle's messages.
 */
public class DocumentException extends IOException {
    private static final long serialVersionUID = 1L;
    private static final Texts SHARED = new Texts(DocumentTexts.class, "Document");

    private final transient Texts texts;
    private final String key;
    private final transient Map<String, ?> values;

    /**
     * Says what is wrong.
     *
     * @param key key of the message, without {@code trouble.}
     * @param values what its placeholders stand for
     */
    public DocumentException(String key, Map<String, ?> values) {
        this(SHARED, key, values, null);
    }

    /** Says what is wrong, and what was thrown. */
    public DocumentException(String key, Map<String, ?> values, Throwable cause) {
        this(SHARED, key, values, cause);
    }

    /** Says what is wrong with one kind of paper, by its own texts. */
    protected DocumentException(Texts texts, String key, Map<String, ?> values, @Nullable Throwable cause) {
        super(texts.format(Locale.ROOT, "trouble." + key, values), cause);
        this.texts = texts;
        this.key = key;
        this.values = values;
    }

    /** Key of the message. */
    public final String key() {
        return key;
    }

    /** The message in a language. */
    public final String message(Locale locale) {
        return values == null ? String.valueOf(getMessage()) : texts.format(locale, "trouble." + key, values);
    }
}
