// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;

/** Reads a price book from a CSV file. How its cells are separated is told at {@link CsvRows}, what they say at {@link PriceBookRows}. */
public final class PriceBookCsv {
    /** No price list of a firm is longer; a longer one is refused before it fills the memory. */
    public static final int MOST_ROWS = 50_000;

    private static final int MOST_MIB = 16;

    private PriceBookCsv() {}

    /**
     * Reads a file.
     *
     * @throws twinfeed.model.io.InputException if it is no such text at all; what is wrong in its rows is in the report
     */
    public static ImportReport read(Path file) {
        List<Row> rows = new ArrayList<>();
        CsvRows.read(file, MOST_ROWS, MOST_MIB, rows::add);
        return PriceBookRows.read(String.valueOf(file.getFileName()), rows);
    }

    /**
     * Reads text.
     *
     * @param reader the text; not closed
     * @param name name for messages
     * @throws IOException if the reader fails
     * @throws twinfeed.model.io.InputException if it is no CSV text
     */
    public static ImportReport read(Reader reader, String name) throws IOException {
        StringWriter text = new StringWriter();
        reader.transferTo(text);
        List<Row> rows = new ArrayList<>();
        CsvRows.read(name, text.toString(), MOST_ROWS, rows::add);
        return PriceBookRows.read(name, rows);
    }
}
