// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import java.util.List;
import org.apache.poi.ss.util.CellReference;

/** Ranges of cells as formulas write them; rows are counted from 0. */
public final class CellRanges {
    private CellRanges() {}

    /** Some rows of a column. */
    public static String of(int column, int firstRow, int lastRow) {
        String letter = CellReference.convertNumToColString(column);
        return "$" + letter + "$" + (firstRow + 1) + ":$" + letter + "$" + (lastRow + 1);
    }

    /** The sum of cells of a column: of a range where the rows follow one another, otherwise one by one; of nothing 0. */
    public static String sum(int column, List<Integer> rows) {
        if (rows.isEmpty()) {
            return "0";
        }
        String letter = CellReference.convertNumToColString(column);
        int first = rows.get(0);
        int last = rows.get(rows.size() - 1);
        if (last - first == rows.size() - 1) {
            return "SUM(" + letter + (first + 1) + ":" + letter + (last + 1) + ")";
        }
        return String.join("+", rows.stream().map(row -> letter + (row + 1)).toList());
    }
}
