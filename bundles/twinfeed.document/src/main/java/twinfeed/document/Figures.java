// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.NumberText;

/** Numbers as screens show them: three significant digits, in the person's way of writing, without group separators. */
public final class Figures {
    private static final int MOST_DECIMALS = 4;
    private static final double LEAST_PLAIN = 0.001;

    private final NumberText numbers;

    /** For one way of writing numbers. */
    public Figures(Locale locale) {
        this.numbers = new NumberText(locale);
    }

    /** A number; empty if there is none. */
    public String number(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        return value != 0 && Math.abs(value) < LEAST_PLAIN ? power(value) : number(value, decimals(value));
    }

    /** A very small number, which decimals would show as none: {@code 1.52 x 10^-6}. */
    private String power(double value) {
        int exponent = (int) Math.floor(Math.log10(Math.abs(value)));
        StringBuilder raised = new StringBuilder();
        for (char digit : String.valueOf(-exponent).toCharArray()) {
            raised.append("\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079".charAt(digit - '0'));
        }
        return number(value * Math.pow(10, -exponent), 2) + " \u00D7 10\u207B" + raised;
    }

    /** A number with its unit. */
    public String withUnit(@Nullable Double value, @Nullable String unit) {
        String text = number(value);
        return text.isEmpty() || unit == null || unit.isEmpty() ? text : text + " " + unit;
    }

    /** A margin: always with its sign, as exact as the limit, and exact enough that it does not read as none. */
    public String margin(@Nullable Double margin, @Nullable Double limit, @Nullable String unit) {
        if (margin == null) {
            return "";
        }
        int least = decimals(limit == null ? margin : limit);
        int needed = margin == 0 ? 0 : (int) Math.ceil(-Math.log10(Math.abs(margin)));
        String text = needed > MOST_DECIMALS
                ? (margin < 0 ? "-" : "") + power(Math.abs(margin))
                : number(margin, Math.max(least, Math.min(MOST_DECIMALS, needed)));
        String signed = text.startsWith("-") ? text.replace('-', '\u2212') : "+" + text;
        return unit == null || unit.isEmpty() ? signed : signed + " " + unit;
    }

    /** A share as a percentage. */
    public String percent(@Nullable BigDecimal share) {
        if (share == null) {
            return "";
        }
        return numbers.shortPercent(share);
    }

    /** An amount of money; empty if there is none. */
    public String money(@Nullable BigDecimal amount, @Nullable String currency) {
        if (amount == null) {
            return "";
        }
        return numbers.money(amount, currency);
    }

    private String number(double value, int decimals) {
        return numbers.fixed(value, decimals);
    }

    private static int decimals(double value) {
        double size = Math.abs(value);
        if (size == 0 || !Double.isFinite(size)) {
            return 0;
        }
        int digits = (int) Math.floor(Math.log10(size));
        return Math.max(0, Math.min(MOST_DECIMALS, 2 - digits));
    }
}
