// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * How numbers are written by a locale. The digits are always 0 to 9. The decimal point is understood beside the
 * locale's own decimal separator unless the locale groups thousands with it, for then "1.500" could be either.
 *
 * @param decimal the decimal separator
 * @param point whether a point is a decimal separator too
 */
record NumberStyle(char decimal, boolean point) {
    private static final NumberStyle ROOT = new NumberStyle('.', true);

    /** The root locale is answered without asking the JDK, whose locale data cost tens of milliseconds at first use. */
    static NumberStyle of(Locale locale) {
        if (locale.equals(Locale.ROOT)) {
            return ROOT;
        }
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
        return new NumberStyle(symbols.getDecimalSeparator(), symbols.getGroupingSeparator() != '.');
    }

    boolean isDecimal(char c) {
        return c == decimal || (c == '.' && point);
    }

    /** No unit has a comma or a point in its spelling, so the whole text of a reading can be turned at once. */
    String toPoint(String reading) {
        return decimal == '.' ? reading : reading.replace(decimal, '.');
    }

    String fromPoint(String reading) {
        return decimal == '.' ? reading : reading.replace('.', decimal);
    }
}
