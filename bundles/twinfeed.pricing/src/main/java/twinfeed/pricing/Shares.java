// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Ratio;

/** Ratios of a price book as exact decimals: 17.5 % is 0.175 and not the nearest binary fraction. */
public final class Shares {
    private static final Pattern TYPED = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?)\\s*(%?)");

    private Shares() {}

    /** The exact value of a ratio as typed; a tolerance is left aside. */
    public static BigDecimal exact(Ratio ratio) {
        Matcher typed = TYPED.matcher(ratio.toString());
        if (!typed.matches()) {
            // Computed, or in a rarer unit: the shortest decimal that stands for the value.
            return plain(BigDecimal.valueOf(ratio.si()));
        }
        BigDecimal number = new BigDecimal(typed.group(1));
        return plain(typed.group(2).isEmpty() ? number : number.movePointLeft(2));
    }

    /** The exact value, or 0 if the ratio is unset. */
    public static BigDecimal orZero(@Nullable Ratio ratio) {
        return ratio == null ? BigDecimal.ZERO : exact(ratio);
    }

    /** A share as a percentage for a reader, for example {@code 17.5 %}. */
    public static String percent(BigDecimal share) {
        return plain(share.movePointRight(2)).toPlainString() + " %";
    }

    /** Without trailing zeros and never in exponent form. */
    public static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
