// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Stream;

/**
 * Numbers as ECMAScript prints them (ECMA-262, Number::toString), which RFC 8785 asks for: the fewest digits that read back as
 * the same number, of those the nearest. The JDK's own method does not always give the fewest before Java 19.
 */
final class EcmaNumber {
    /** A number of up to 15 digits survives the way into a double and back. */
    private static final int SURE_DIGITS = 15;

    private static final int MOST_DIGITS = 17;

    private EcmaNumber() {}

    /** @throws IllegalArgumentException if the value is not finite */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(value + " has no form in JSON");
        }
        if (value == 0) {
            return "0";
        }
        String sign = value < 0 ? "-" : "";
        return sign + positive(fewestDigits(Math.abs(value)));
    }

    private static BigDecimal fewestDigits(double value) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal sure = exact.round(new MathContext(SURE_DIGITS, RoundingMode.HALF_EVEN));
        boolean normal = value >= Double.MIN_NORMAL;
        if (normal && sure.doubleValue() == value) {
            return sure.stripTrailingZeros();
        }
        for (int digits = normal ? SURE_DIGITS + 1 : 1; digits < MOST_DIGITS; digits++) {
            BigDecimal found = nearest(exact, value, digits);
            if (found != null) {
                return found.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    }

    /** Of the two neighbours with so many digits the nearer one that reads back as the value. */
    private static @org.jspecify.annotations.Nullable BigDecimal nearest(BigDecimal exact, double value, int digits) {
        return Stream.of(RoundingMode.DOWN, RoundingMode.UP)
                .map(mode -> exact.round(new MathContext(digits, mode)))
                .filter(one -> one.doubleValue() == value)
                .min(java.util.Comparator.comparing(one -> one.subtract(exact).abs()))
                .orElse(null);
    }

    /** Digits d1 d2 ... dk and the place n of the point behind them, laid out as the standard says. */
    private static String positive(BigDecimal number) {
        String digits = number.unscaledValue().toString();
        int k = digits.length();
        int n = k - number.scale();
        if (k <= n && n <= 21) {
            return digits + "0".repeat(n - k);
        }
        if (0 < n && n <= 21) {
            return digits.substring(0, n) + "." + digits.substring(n);
        }
        if (-6 < n && n <= 0) {
            return "0." + "0".repeat(-n) + digits;
        }
        String exponent = (n > 0 ? "e+" : "e-") + Math.abs(n - 1);
        return k == 1 ? digits + exponent : digits.charAt(0) + "." + digits.substring(1) + exponent;
    }
}
