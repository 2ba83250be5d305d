// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.Collection;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many digits a result deserves: as many as the least exact reading that it comes from carries, within reason. */
final class TypedDigits {
    /** Two digits are typed for "9.5kW" by people who mean a rating; fewer than three would round flows and pressures visibly. */
    private static final int LEAST = 3;

    /** More than instruments show. */
    private static final int MOST = 6;

    /** Where nothing was typed, every figure is a default. */
    private static final int USUAL = 3;

    private static final Pattern NUMBER = Pattern.compile("^\\s*[-+]?0*(?<digits>[0-9]*\\.?[0-9]*)");

    private TypedDigits() {}

    /** Significant digits for what is computed from some typed values; names among them say nothing. */
    static int of(Collection<String> values) {
        return values.stream()
                .mapToInt(TypedDigits::digits)
                .filter(digits -> digits > 0)
                .map(digits -> Math.min(MOST, Math.max(LEAST, digits)))
                .min()
                .orElse(USUAL);
    }

    private static int digits(String value) {
        Matcher number = NUMBER.matcher(value);
        if (!number.find()) {
            return 0;
        }
        String digits = number.group("digits");
        return digits.startsWith(".")
                ? digits.substring(1).replaceFirst("^0+", "").length()
                : digits.replace(".", "").length();
    }
}
