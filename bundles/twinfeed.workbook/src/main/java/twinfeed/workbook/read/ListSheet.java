// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Consumer;
import twinfeed.model.rows.Row;
import twinfeed.workbook.text.WorkbookException;

/** Reads a long list from the first sheet of a workbook, a row at a time. */
public final class ListSheet {
    /** As many rows as a sheet can have. */
    public static final int MOST_ROWS = 1 << 20;

    private ListSheet() {}

    /** Whether a file calls itself a workbook; lists that do not are read as text. */
    public static boolean isNamed(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }

    /**
     * Reads its rows; empty ones are left out.
     *
     * @param file an .xlsx workbook
     * @param rows takes each row before the next one is read; what it throws ends the reading
     * @throws WorkbookException if the file is none, is damaged, is out of proportion, or holds what a list cannot hold, such as merged
     *     cells or a formula without a value; the message names file and cell
     * @throws IOException if the file cannot be read
     */
    public static void read(Path file, Consumer<Row> rows) throws IOException {
        SheetReader.read(file, MOST_ROWS, rows);
    }
}
