// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.math.BigDecimal;

/**
 * The number at the head of a text: sign, digits, decimals, power of ten, and nothing else.
 *
 * @param typed the number as it stands there
 * @param rest what follows it, without spaces at its ends
 * @param style how its decimals are written
 */
record Numeral(String typed, String rest, NumberStyle style) {
    private static final int LONGEST_EXPONENT = 4;

    static Numeral headOf(String text, NumberStyle style) {
        int end = new Scan(text, style).end();
        return new Numeral(text.substring(0, end), text.substring(end).strip(), style);
    }

    boolean isEmpty() {
        return typed.isEmpty();
    }

    /** Whether digits go on behind a space, a comma or the like: the number was written in groups. */
    boolean isGrouped() {
        if (rest.isEmpty()) {
            return false;
        }
        int at = ".,'\u2019\u066c_".indexOf(rest.charAt(0)) >= 0 ? 1 : 0;
        String behind = rest.substring(at).stripLeading();
        return !behind.isEmpty() && isDigit(behind.charAt(0));
    }

    /** Whether the number lies so far outside what a double can hold that it is not even looked at. */
    boolean isBeyondDouble() {
        int e = Math.max(typed.indexOf('e'), typed.indexOf('E'));
        if (e >= 0 && typed.length() - e - 1 > LONGEST_EXPONENT) {
            return true;
        }
        BigDecimal exact = value();
        double nearest = exact.doubleValue();
        return Double.isInfinite(nearest) || (nearest == 0 && exact.signum() != 0);
    }

    BigDecimal value() {
        return new BigDecimal(style.toPoint(typed).replace('\u2212', '-'));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Goes through the text once. */
    private static final class Scan {
        private final String text;
        private final NumberStyle style;
        private int at;

        Scan(String text, NumberStyle style) {
            this.text = text;
            this.style = style;
        }

        int end() {
            skipSign();
            int whole = skipDigits();
            int decimals = 0;
            if (at < text.length() && style.isDecimal(text.charAt(at))) {
                at++;
                decimals = skipDigits();
            }
            if (whole + decimals == 0) {
                return 0;
            }
            skipExponent();
            return at;
        }

        private void skipExponent() {
            int before = at;
            if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
                at++;
                skipSign();
                if (skipDigits() > 0) {
                    return;
                }
            }
            at = before;
        }

        private void skipSign() {
            if (at < text.length() && "+-\u2212".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
        }

        private int skipDigits() {
            int from = at;
            while (at < text.length() && isDigit(text.charAt(at))) {
                at++;
            }
            return at - from;
        }
    }
}
