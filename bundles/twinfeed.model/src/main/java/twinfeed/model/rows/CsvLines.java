// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * Writes lines of CSV by RFC 4180 with a line feed at their end. Texts that a spreadsheet program would take for a formula are written as
 * {@link CsvCell#safe} has them, decimals without an exponent, and nothing stands for what is absent.
 */
public final class CsvLines {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator("\n").build();

    private final CSVPrinter printer;

    /**
     * To wherever text can be put.
     *
     * @throws IOException if it cannot be written to
     */
    public CsvLines(Appendable out) throws IOException {
        printer = new CSVPrinter(out, FORMAT);
    }

    /** One line as text, with its line feed. */
    public static String line(List<? extends @Nullable Object> cells) {
        try {
            StringBuilder text = new StringBuilder();
            new CsvLines(text).write(cells);
            return text.toString();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text does not fail", impossible);
        }
    }

    /**
     * Writes a line.
     *
     * @throws IOException if it cannot be written
     */
    public void write(List<? extends @Nullable Object> cells) throws IOException {
        printer.printRecord(cells.stream().map(CsvLines::text));
    }

    private static String text(@Nullable Object cell) {
        if (cell instanceof BigDecimal number) {
            return CsvCell.safe(number.toPlainString());
        }
        return cell == null ? "" : CsvCell.safe(cell.toString());
    }
}
