// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Fills placeholders: {@code {name}} and, for numbers, {@code {name:decimals}}, or {@code {name:~decimals}} for at most so many. The one
 * form of placeholders in all messages; values that come in order are named {@code {0}}, {@code {1}} and so on.
 */
public final class TextPattern {
    /** What stands where a value was not given: a gap, never the placeholder itself. */
    private static final String UNKNOWN = "…";

    /** System property under which a value that is not there is an error rather than a gap: the tests of all bundles set it. */
    public static final String STRICT = "twinfeed.texts.strict";

    /** Decimals of a number whose placeholder does not say how many. */
    private static final int MOST_DECIMALS = 3;

    private TextPattern() {}

    /** Whether there is a value for each placeholder. */
    public static boolean complete(String pattern, Set<String> given) {
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

    /** A pattern with its placeholders filled; a value that is not given is a gap. */
    public static String fill(String pattern, Map<String, ?> arguments, Locale locale) {
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
            NumberText text = new NumberText(locale);
            if (decimals.isEmpty()) {
                return text.rounded(number.doubleValue(), 0, MOST_DECIMALS);
            }
            return decimals.startsWith("~")
                    ? text.rounded(number.doubleValue(), 0, Integer.parseInt(decimals.substring(1)))
                    : text.fixed(number.doubleValue(), Integer.parseInt(decimals));
        }
        return value.toString();
    }
}
