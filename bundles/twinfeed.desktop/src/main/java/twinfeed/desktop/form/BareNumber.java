// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twinfeed.units.Kind;

/** A number that somebody typed without its unit, because the field says which one it is. */
public final class BareNumber {
    private static final Pattern BARE = Pattern.compile("([+-]?\\d+(?:[.,]\\d+)?)(?:\\s*±\\s*(\\d+(?:[.,]\\d+)?))?");

    private BareNumber() {}

    /**
     * The text with the unit that the trade writes this kind in, if it is a number without one, perhaps with a tolerance; otherwise the
     * text as it is.
     */
    public static String withUnit(Kind kind, String typed) {
        return withUnit(kind.mayBeBare() ? "" : kind.displayUnit(), typed);
    }

    /**
     * The same in the unit of a certain field.
     *
     * @param symbol the unit; empty leaves every text as it is
     */
    public static String withUnit(String symbol, String typed) {
        String text = typed.strip();
        Matcher bare = BARE.matcher(text);
        if (symbol.isEmpty() || !bare.matches()) {
            return text;
        }
        String unit = " " + symbol;
        String tolerance = bare.group(2);
        return bare.group(1) + unit + (tolerance == null ? "" : " ± " + tolerance + unit);
    }
}
