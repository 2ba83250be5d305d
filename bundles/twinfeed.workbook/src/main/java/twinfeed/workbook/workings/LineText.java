// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import twinfeed.document.DocumentTexts;

/** How a line of a working follows, as a reader can take it in. */
final class LineText {
    /** Longer ones are formulas to be recomputed rather than read. */
    private static final int LONGEST = 110;

    private LineText() {}

    /** The expression, or where to look where it is too long to be read. */
    static String of(String expression, DocumentTexts words) {
        return expression.length() <= LONGEST ? expression : words.get("workings.long");
    }
}
