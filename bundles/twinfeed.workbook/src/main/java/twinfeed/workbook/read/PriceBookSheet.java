// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import twinfeed.model.rows.Row;
import twinfeed.workbook.text.WorkbookException;

/** Reads a price list from the first sheet of a workbook. */
public final class PriceBookSheet {
    /** No price list of a firm is longer; a longer sheet is refused before it fills the memory. */
    public static final int MOST_ROWS = 50_000;

    private PriceBookSheet() {}

    /**
     * Reads its rows; empty ones are left out.
     *
     * @param file an .xlsx workbook
     * @throws WorkbookException if it is none, is damaged, is out of proportion, or holds what a list cannot hold, such as merged
     *     cells or a formula without a value; the message names file and cell
     * @throws IOException if the file cannot be read
     */
    public static List<Row> read(Path file) throws IOException {
        List<Row> rows = new ArrayList<>();
        SheetReader.read(file, MOST_ROWS, rows::add);
        return rows;
    }
}
