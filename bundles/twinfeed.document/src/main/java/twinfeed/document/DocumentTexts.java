// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.NumberText;
import twinfeed.units.text.Texts;

/** The texts of documents in one language: those that all documents share, and those of one kind of paper before them. */
public final class DocumentTexts {
    private static final Texts SHARED = new Texts(DocumentTexts.class, "Document");

    private final Locale locale;
    private final Texts own;
    private final NumberText numbers;

    /** The shared texts in a language. */
    public DocumentTexts(Locale locale) {
        this(locale, SHARED);
    }

    /**
     * Texts in a language.
     *
     * @param own texts of one kind of paper, which come before the shared ones
     */
    public DocumentTexts(Locale locale, Texts own) {
        this.locale = locale;
        this.own = own;
        this.numbers = new NumberText(locale);
    }

    /** The language. */
    public Locale locale() {
        return locale;
    }

    /** A text. */
    public String get(String key) {
        return texts(key).get(locale, key);
    }

    /** A text, or null if there is none. */
    public @Nullable String find(String key) {
        return texts(key).find(locale, key);
    }

    /** A text with one placeholder filled. */
    public String get(String key, String name, Object value) {
        return get(key, Map.of(name, value));
    }

    /** A text with its placeholders filled. */
    public String get(String key, Map<String, ?> values) {
        return texts(key).format(locale, key, values);
    }

    private Texts texts(String key) {
        return own.has(key) ? own : SHARED;
    }

    /** A number to three significant digits in the style of the language, for sentences. */
    public String number(double value) {
        return numbers.significant(value, 3);
    }

    /** A share of one as a percentage in the style of the language. */
    public String percent(BigDecimal share) {
        return exact(share.movePointRight(2)) + get("number.percent");
    }

    /** A decimal number with all its digits but no trailing zeros, in the style of the language. */
    public String exact(BigDecimal value) {
        return numbers.exact(value);
    }

    /** A number with one decimal in the style of the language. */
    public String tenths(double value) {
        return numbers.pointed(BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP));
    }
}
