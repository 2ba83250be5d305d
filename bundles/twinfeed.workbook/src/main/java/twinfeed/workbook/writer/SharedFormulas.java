// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.jspecify.annotations.Nullable;

/**
 * Formulas of a sheet that follow from one another by moving them (ECMA-376 part 1, 18.3.1.40): the first is written with the cells at
 * which the others stand, each of the others with its number only. What lies near, in the same or the next column, moves with a formula;
 * everything else keeps its place.
 */
final class SharedFormulas {
    /** Rows that are near. A block of lines that comes again is not longer; farther up stand the figures that all blocks share. */
    private static final int NEAR = 60;

    /** Formulas shorter than this are written out: a number would save nothing. */
    private static final int SHORTEST = 6;

    /** A formula, and the cells to which it was moved. */
    private static final class Group {
        private final int row;
        private final int column;
        private final int place;
        private int lastRow;
        private int lastColumn;
        private int number = -1;

        Group(MovedFormula first, int place) {
            this.row = first.row();
            this.column = first.column();
            this.place = place;
            lastRow = row;
            lastColumn = column;
        }

        String attributes() {
            return " t=\"shared\" ref=\"" + address(row, column) + ":" + address(lastRow, lastColumn) + "\" si=\""
                    + number + "\"";
        }

        private static String address(int row, int column) {
            return CellReference.convertNumToColString(column) + row;
        }
    }

    private final Map<String, Group> groups = new HashMap<>();
    private final Map<Integer, Group> moved = new TreeMap<>();
    private int count;

    /**
     * Reads a formula at its cell.
     *
     * @param row number of the row, from 1
     * @param column index of the column, from 0
     */
    static MovedFormula at(int row, int column, String formula) {
        return new MovedFormula(formula, row, column, NEAR);
    }

    /**
     * The element of a formula that an earlier one gives when it is moved to this cell.
     *
     * @return absent if there is none
     */
    @Nullable
    String known(MovedFormula formula) {
        Group group = formula.length() < SHORTEST ? null : groups.get(formula.relative());
        if (group == null || formula.column() < group.column) {
            return null;
        }
        if (group.number < 0) {
            group.number = count++;
            moved.put(group.place, group);
        }
        group.lastRow = Math.max(group.lastRow, formula.row());
        group.lastColumn = Math.max(group.lastColumn, formula.column());
        return "<f t=\"shared\" si=\"" + group.number + "\"/>";
    }

    /**
     * Notes a formula that no earlier one gives.
     *
     * @param place where in the rows' bytes its attributes would stand
     */
    void first(MovedFormula formula, int place) {
        groups.put(formula.relative(), new Group(formula, place));
    }

    /** The rows' bytes with the attributes of the formulas that were moved. */
    byte[] complete(byte[] rows) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(rows.length + moved.size() * 48);
        int done = 0;
        for (Map.Entry<Integer, Group> entry : moved.entrySet()) {
            int place = entry.getKey();
            out.write(rows, done, place - done);
            out.writeBytes(entry.getValue().attributes().getBytes(StandardCharsets.US_ASCII));
            done = place;
        }
        out.write(rows, done, rows.length - done);
        return out.toByteArray();
    }
}
