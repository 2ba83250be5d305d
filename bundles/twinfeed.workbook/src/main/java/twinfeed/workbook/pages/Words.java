// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Texts;
import twinfeed.workbook.QuoteWorkbook;

/** The texts of a workbook in one language. */
public final class Words {
    private static final Texts TEXTS = new Texts(QuoteWorkbook.class, "Workbook");

    private final Locale locale;

    /** Texts in a language. */
    public Words(Locale locale) {
        this.locale = locale;
    }

    /** A text. */
    public String get(String key) {
        return TEXTS.get(locale, key);
    }

    /** A text, or null if there is none. */
    public @Nullable String find(String key) {
        return TEXTS.find(locale, key);
    }

    /** A text with one placeholder filled. */
    public String get(String key, String name, Object value) {
        return TEXTS.format(locale, key, Map.of(name, value));
    }

    /** A text with its placeholders filled. */
    public String get(String key, Map<String, ?> values) {
        return TEXTS.format(locale, key, values);
    }

    /** A number to three significant digits in the style of the language, for sentences; cells carry numbers themselves. */
    public String number(double value) {
        java.math.BigDecimal rounded = java.math.BigDecimal.valueOf(value)
                .round(new java.math.MathContext(3, java.math.RoundingMode.HALF_UP))
                .stripTrailingZeros();
        return (rounded.signum() == 0 ? "0" : rounded.toPlainString()).replace(".", get("number.point"));
    }
}
