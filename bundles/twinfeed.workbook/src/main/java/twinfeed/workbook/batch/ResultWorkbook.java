// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Palette;
import twinfeed.workbook.writer.WorkbookWriter;

/**
 * The workbook of a batch: one table a sheet, written row by row as the answers come, in memory that does not grow with the rows. The
 * same rows give the same bytes.
 */
public final class ResultWorkbook implements AutoCloseable {
    private final WorkbookWriter book;
    private final Locale locale;
    private @Nullable ResultTable open;

    /** What a column holds. */
    public enum Kind {
        /** Text; whatever it begins with, it stays text. A verdict among them shows as in a column of verdicts. */
        TEXT,
        /** A number. */
        NUMBER,
        /** A whole number. */
        COUNT,
        /** An amount of money in the table's currency. */
        MONEY,
        /** A day. */
        DATE,
        /** A share of one, shown as a percentage. */
        SHARE,
        /** A verdict of the assessment, in words, with sign and colour. */
        VERDICT
    }

    /**
     * A column.
     *
     * @param title its head
     * @param kind what it holds
     * @param width its width, in digits
     */
    public record Column(String title, Kind kind, double width) {}

    /**
     * Starts the book.
     *
     * @param title title of the book
     * @param creator who made it; may be empty
     * @param programVersion version of the program
     * @param accent colour, 0xRRGGBB
     * @param locale its language
     * @param time time of creation and change as its properties say it; never the clock's
     */
    public ResultWorkbook(
            String title, String creator, String programVersion, int accent, Locale locale, Instant time) {
        this.locale = locale;
        this.book = new WorkbookWriter(new Palette(accent), locale, false);
        book.describe(title, "", creator, "Twinfeed " + programVersion, time);
    }

    /**
     * Begins a sheet with one table; the one before is complete.
     *
     * @param name name of the sheet, at most 31 letters and none of {@code []:*?/\}
     * @param note a sentence above the table
     * @param currency currency of its amounts by ISO 4217, or null for none
     * @param columns its columns, at least one
     * @throws IOException if there is no room for temporary files
     */
    public void table(String name, String note, @Nullable String currency, List<Column> columns) throws IOException {
        end();
        open = new ResultTable(book.page(name), locale, note, currency, columns);
    }

    /**
     * Adds a row to the table: for each column a String, a Number, a LocalDate, a Verdict, or null for an empty cell.
     *
     * @throws IllegalArgumentException if there are more or fewer values than columns, or one does not fit its column
     */
    public void row(List<? extends @Nullable Object> values) {
        ResultTable table = open;
        if (table == null) {
            throw new IllegalStateException("a row needs a table");
        }
        table.row(values);
    }

    private void end() {
        if (open != null) {
            open.end();
        }
    }

    /** Writes the book once; the stream is flushed and left open. */
    public void write(OutputStream out) throws IOException {
        end();
        book.write(out);
    }

    /** Removes what lies in temporary files. */
    @Override
    public void close() throws IOException {
        book.close();
    }
}
