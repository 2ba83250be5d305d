// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * Writes lines of CSV by RFC 4180, in UTF-8 and with a line feed at their end. Texts that a spreadsheet program would take for a formula are
 * written as {@link CsvCell#safe} has them, decimals without an exponent.
 */
public final class CsvLines {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator("\n").build();

    private final CSVPrinter printer;

    /**
     * To a stream.
     *
     * @throws IOException if it cannot be written to
     */
    public CsvLines(OutputStream out) throws IOException {
        printer = new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), FORMAT);
    }

    /**
     * Writes a line; nothing stands for what is absent.
     *
     * @throws IOException if it cannot be written
     */
    public void write(List<? extends @Nullable Object> cells) throws IOException {
        List<Object> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(text(cell));
        }
        printer.printRecord(texts);
    }

    private static String text(@Nullable Object cell) {
        if (cell instanceof BigDecimal number) {
            return number.toPlainString();
        }
        return cell instanceof String text ? CsvCell.safe(text) : cell == null ? "" : cell.toString();
    }

    /**
     * Hands on all that was written; the stream stays open.
     *
     * @throws IOException if it cannot be written
     */
    public void flush() throws IOException {
        printer.flush();
    }
}
