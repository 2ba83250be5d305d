// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.util.List;

/**
 * A row of a sheet as text: numbers with a decimal point and no grouping, days as YYYY-MM-DD, truth values as true or false.
 *
 * @param number its number as the spreadsheet program shows it, from 1
 * @param cells its cells from column A on; empty cells are empty texts; trailing ones are left out
 */
public record SheetRow(int number, List<String> cells) {
    public SheetRow {
        cells = List.copyOf(cells);
    }
}
