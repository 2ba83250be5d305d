// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import java.util.regex.Pattern;

/** The symbols that stand for quantities in expressions. */
public final class Symbol {
    private static final Pattern FORM = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    private Symbol() {}

    public static String checked(String symbol) {
        if (!FORM.matcher(symbol).matches()) {
            throw new IllegalArgumentException("not a symbol of an expression: " + symbol);
        }
        return symbol;
    }
}
