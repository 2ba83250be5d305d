// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** The answers in figures on the sheet of checks: a block for each option and each option with its work done. */
final class CheckRows {
    private static final int VALUE = 2;

    private CheckRows() {}

    /** Blocks by the number of their first row, and their rows by the title of the check. */
    static Map<String, Map<String, Row>> of(Sheet checks) {
        Map<String, Map<String, Row>> blocks = new LinkedHashMap<>();
        Map<String, Row> block = null;
        for (Row row : checks) {
            if (text(row, 0).equals("Check") && text(row, VALUE).equals("Value")) {
                block = new LinkedHashMap<>();
                blocks.put(String.valueOf(row.getRowNum()), block);
            } else if (block != null && !text(row, 0).isEmpty() && row.getCell(VALUE) != null) {
                block.put(text(row, 0), row);
            }
        }
        return blocks;
    }

    private static String text(Row row, int column) {
        Cell cell = row.getCell(column);
        return cell == null || cell.getCellType() != CellType.STRING ? "" : cell.getStringCellValue();
    }
}
