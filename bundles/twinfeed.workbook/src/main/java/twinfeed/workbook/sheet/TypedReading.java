// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Quantity;

/**
 * A reading in the unit in which it was typed.
 *
 * @param value the number
 * @param unit its unit, empty for a ratio
 * @param format number format with the decimals that were typed
 * @param spread the tolerance with its sign and unit, absent if none was stated
 * @param standard whether the tolerance is a standard uncertainty
 */
public record TypedReading(BigDecimal value, String unit, String format, @Nullable String spread, boolean standard) {
    /** Takes apart the text of a quantity: {@code 3.0 bar ± 0.05 bar} or {@code 3.0 bar u 0.02 bar}. */
    public static TypedReading of(Quantity quantity) {
        String text = quantity.toString().replace("+/-", "±");
        String separator = quantity.normal() ? " u " : "±";
        int cut = quantity.hasTolerance() ? text.indexOf(separator) : -1;
        String head = cut < 0 ? text : text.substring(0, cut).strip();
        String spread =
                cut < 0 ? null : "± " + text.substring(cut + separator.length()).strip();
        int end = 0;
        while (end < head.length() && isNumber(head, end)) {
            end++;
        }
        BigDecimal value = new BigDecimal(head.substring(0, end));
        return new TypedReading(value, head.substring(end).strip(), format(value), spread, quantity.normal());
    }

    /** Digits, sign, point, and an exponent only if digits follow it, for a unit may begin with an e. */
    private static boolean isNumber(String text, int at) {
        char letter = text.charAt(at);
        if (Character.isDigit(letter) || letter == '.') {
            return true;
        }
        if (letter == '-' || letter == '+') {
            return at == 0 || text.charAt(at - 1) == 'E' || text.charAt(at - 1) == 'e';
        }
        return (letter == 'E' || letter == 'e')
                && at > 0
                && at + 1 < text.length()
                && (Character.isDigit(text.charAt(at + 1)) || "+-".indexOf(text.charAt(at + 1)) >= 0);
    }

    private static String format(BigDecimal value) {
        int decimals = Math.max(0, value.scale());
        return decimals == 0 ? "0" : decimals > 9 ? "0.00E+00" : "0." + "0".repeat(decimals);
    }
}
