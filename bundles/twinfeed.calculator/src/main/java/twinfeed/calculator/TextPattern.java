// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Fills placeholders: {@code {name}} and, for numbers, {@code {name:decimals}}. */
final class TextPattern {
    /** What stands where a value was not given: a gap, never the placeholder itself. */
    private static final String UNKNOWN = "…";

    /** System property under which a value that is not there is an error rather than a gap: the tests of all bundles set it. */
    static final String STRICT = "twinfeed.texts.strict";

    private TextPattern() {}

    /** Whether there is a value for each placeholder. */
    static boolean complete(String pattern, Set<String> given) {
        int open = pattern.indexOf('{');
        while (open >= 0) {
            int close = pattern.indexOf('}', open);
            if (close < 0) {
                return true;
            }
            String placeholder = pattern.substring(open + 1, close);
            int colon = placeholder.indexOf(':');
            if (!given.contains(colon < 0 ? placeholder : placeholder.substring(0, colon))) {
                return false;
            }
            open = pattern.indexOf('{', close);
        }
        return true;
    }

    static String fill(String pattern, Map<String, ?> arguments, Locale locale) {
        StringBuilder out = new StringBuilder(pattern.length() + 32);
        int at = 0;
        while (true) {
            int open = pattern.indexOf('{', at);
            int close = open < 0 ? -1 : pattern.indexOf('}', open);
            if (close < 0) {
                return out.append(pattern, at, pattern.length()).toString();
            }
            String value = value(pattern.substring(open + 1, close), arguments, locale);
            if (value == null) {
                value = gap(pattern, arguments);
            }
            out.append(pattern, at, open).append(value);
            at = close + 1;
        }
    }

    private static String gap(String pattern, Map<String, ?> arguments) {
        if (Boolean.getBoolean(STRICT)) {
            throw new IllegalStateException("\"" + pattern + "\" is filled by " + arguments.keySet() + " alone");
        }
        return UNKNOWN;
    }

    private static @Nullable String value(String placeholder, Map<String, ?> arguments, Locale locale) {
        int colon = placeholder.indexOf(':');
        Object value = arguments.get(colon < 0 ? placeholder : placeholder.substring(0, colon));
        if (value == null) {
            return null;
        }
        if (value instanceof Number number) {
            String decimals = colon < 0 ? "" : placeholder.substring(colon + 1);
            return decimals.startsWith("~")
                    ? number(number.doubleValue(), 0, Integer.parseInt(decimals.substring(1)), locale)
                    : number(number.doubleValue(), colon < 0 ? -1 : Integer.parseInt(decimals), locale);
        }
        return value.toString();
    }

    /** A number without group separators, which mean different things to different readers. */
    static String number(double value, int decimals, Locale locale) {
        return number(value, Math.max(0, decimals), decimals < 0 ? 3 : decimals, locale);
    }

    private static String number(double value, int least, int most, Locale locale) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(least);
        format.setMaximumFractionDigits(most);
        String text = format.format(value);
        // A rounded zero has no sign.
        return text.matches("-0([.,]0*)?") ? text.substring(1) : text;
    }
}
