// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Currency;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Numbers as a reader of a language writes them: the digits 0 to 9, the language's decimal separator, no group separators (which mean
 * different things to different readers), and no sign before a rounded zero. The one place where numbers become text for people.
 * Immutable.
 */
public final class NumberText {
    /** A difference of equal figures leaves a last binary digit, which is no figure. */
    private static final double NOTHING = 1e-12;

    private final Locale locale;
    private final char point;

    /** Numbers of a language; of no language those with a point. */
    public NumberText(Locale locale) {
        this.locale = locale;
        // The JDK's locale data cost tens of milliseconds at first use.
        this.point = locale.getLanguage().isEmpty()
                ? '.'
                : DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    /** A number with so many decimals, rounded to even. */
    public String fixed(double value, int decimals) {
        return rounded(value, decimals, decimals);
    }

    /**
     * A number rounded to even, without zeros that its decimals do not need.
     *
     * @param least decimals that are written in any case
     * @param most decimals to which it is rounded
     */
    public String rounded(double value, int least, int most) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "?" : value < 0 ? "-\u221E" : "\u221E";
        }
        BigDecimal rounded = new BigDecimal(value).setScale(most, RoundingMode.HALF_EVEN);
        BigDecimal stripped = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return pointed(stripped.setScale(Math.max(least, stripped.scale())));
    }

    /** A number to so many significant digits, without trailing zeros. */
    public String significant(double value, int digits) {
        return exact(BigDecimal.valueOf(Math.abs(value) < NOTHING ? 0 : value)
                .round(new MathContext(digits, RoundingMode.HALF_UP)));
    }

    /** A number with all its digits but no trailing zeros. */
    public String exact(BigDecimal value) {
        return pointed(value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros());
    }

    /** A number as it is, trailing zeros too: those of an amount or of a reading carry meaning. */
    public String pointed(BigDecimal value) {
        return value.toPlainString().replace('.', point);
    }

    /** A share of one as a percentage, exact. */
    public String percent(BigDecimal share) {
        return exact(share.movePointRight(2)) + " %";
    }

    /** An amount of money with the sign of its currency, placed and grouped as the language does; without a currency the language's. */
    public String money(BigDecimal amount, @Nullable String currency) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        if (currency != null) {
            Currency known = Currency.getInstance(currency);
            format.setCurrency(known);
            format.setMinimumFractionDigits(known.getDefaultFractionDigits());
            format.setMaximumFractionDigits(known.getDefaultFractionDigits());
        }
        return format.format(amount);
    }

    /** A share of one as a percentage with at most one decimal, as the language writes it. */
    public String shortPercent(BigDecimal share) {
        NumberFormat format = NumberFormat.getPercentInstance(locale);
        format.setMaximumFractionDigits(1);
        return format.format(share);
    }
}
