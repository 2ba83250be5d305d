// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;
import twinfeed.usecase.ListProblem;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.read.ListSheet;
import twinfeed.workbook.text.WorkbookException;

/** Reads a list of dwellings row by row, from CSV or from the first visible sheet of a workbook. Only one row is held. */
final class DwellingRows {
    private static final int MOST_MIB = 256;

    private final Path file;

    DwellingRows(Path file) {
        this.file = file;
    }

    /**
     * Reads it; blank rows are passed over.
     *
     * @param rows takes each row as it comes
     * @throws InputException or UnusableException if the file cannot be read to its end
     */
    void read(Consumer<Row> rows) {
        if (!ListSheet.isNamed(file)) {
            CsvRows.read(file, ListSheet.MOST_ROWS, MOST_MIB, rows);
            return;
        }
        InputBytes.check(file);
        try {
            ListSheet.read(file, rows);
        } catch (WorkbookException refused) {
            throw ListProblem.of(file, refused);
        } catch (IOException unreadable) {
            throw Refusals.exception(unreadable, file, "list.unreadable");
        }
    }
}
