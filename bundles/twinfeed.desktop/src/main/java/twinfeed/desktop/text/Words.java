// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/**
 * The desktop's texts in one language.
 *
 * @param locale the person's language and way of writing numbers
 */
public record Words(Locale locale) {
    private static final Texts TEXTS = new Texts(Words.class, "Desktop");

    /** A text; its key in brackets where there is none, so that the lack is seen. */
    public String get(String key) {
        return TEXTS.get(locale, key);
    }

    /** A text, or null where there is none. */
    public @Nullable String find(String key) {
        return TEXTS.find(locale, key);
    }

    /** A text with its placeholders filled. */
    public String format(String key, Map<String, ?> arguments) {
        return TEXTS.format(locale, key, arguments);
    }

    /** All keys of the texts. */
    public static java.util.SortedSet<String> keys() {
        return TEXTS.keys();
    }
}
