// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import twinfeed.units.text.NumberText;

/** Exact decimals as a person types them: the locale's separator, or a point; no thousands separators. */
public final class Decimals {
    private Decimals() {}

    /** The number that was typed; empty if it is none. */
    public static Optional<BigDecimal> read(String typed, Locale locale) {
        char separator = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        String text = typed.strip().replace(separator, '.').replace('\u2212', '-');
        return text.matches("-?\\d{1,12}(\\.\\d{1,6})?") ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }

    /** A number as it would be typed. */
    public static String write(BigDecimal value, Locale locale) {
        return new NumberText(locale).exact(value);
    }
}
