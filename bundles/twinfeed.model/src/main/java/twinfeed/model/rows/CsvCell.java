// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.util.regex.Pattern;

/**
 * Cells that a spreadsheet program would take for a formula: it runs what begins with an equals sign, plus, minus or at sign when the
 * file is opened. They are written with an apostrophe before them, by which such programs know a text, and read without it.
 */
public final class CsvCell {
    private static final Pattern FORMULA = Pattern.compile("'*[=+@\\-\\t\\r].*", Pattern.DOTALL);

    private CsvCell() {}

    /** The cell as it is written. */
    public static String safe(String text) {
        return FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    /** The cell as it was meant. */
    static String plain(String text) {
        return text.startsWith("'") && FORMULA.matcher(text).matches() ? text.substring(1) : text;
    }
}
