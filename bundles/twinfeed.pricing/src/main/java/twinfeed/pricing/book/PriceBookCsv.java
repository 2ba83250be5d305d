// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a price book from a CSV file: UTF-8, with or without byte-order mark, cells separated by commas and quoted by RFC 4180,
 * a decimal point in every locale. What the rows say is told at {@link PriceBookRows}.
 */
public final class PriceBookCsv {
    // A blank line is an empty record, so that row numbers stay those of the file.
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).build();

    /** No price list of a firm is longer; a longer one is refused before it fills the memory. */
    public static final int MOST_ROWS = 50_000;

    private static final int MOST_MIB = 16;

    private PriceBookCsv() {}

    /**
     * Reads a file.
     *
     * @throws IOException if it cannot be opened or read; what is wrong inside it is in the report
     */
    public static ImportReport read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.size(file) > (long) MOST_MIB << 20) {
            return PriceBookRows.refusal(name, 0, "tooLarge", String.valueOf(MOST_MIB));
        }
        byte[] bytes = Files.readAllBytes(file);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return read(new StringReader(text), name);
        } catch (CharacterCodingException foreign) {
            return PriceBookRows.refusal(name, rowOfFirstForeignByte(bytes), "notUtf8");
        }
    }

    /**
     * Reads text.
     *
     * @param reader the text; not closed
     * @param name name for messages
     * @throws IOException if the reader fails
     */
    public static ImportReport read(Reader reader, String name) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] buffer = new char[8192];
        for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
            text.append(buffer, 0, n);
        }
        boolean marked = text.length() > 0 && text.charAt(0) == '\ufeff';
        return parse(text.substring(marked ? 1 : 0), name);
    }

    private static ImportReport parse(String text, String name) throws IOException {
        List<BookRow> rows = new ArrayList<>();
        int row = 1;
        try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
            java.util.Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                if (rows.size() == MOST_ROWS) {
                    return PriceBookRows.refusal(name, row, "tooManyRows", String.valueOf(MOST_ROWS));
                }
                rows.add(new BookRow(row, records.next().toList()));
                row = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IllegalStateException broken) {
            return PriceBookRows.refusal(name, row, "brokenQuotes");
        }
        return PriceBookRows.read(name, rows);
    }

    private static int rowOfFirstForeignByte(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        java.nio.CharBuffer out = java.nio.CharBuffer.allocate(bytes.length + 1);
        StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        int row = 1;
        for (int i = 0; i < in.position(); i++) {
            row += bytes[i] == '\n' ? 1 : 0;
        }
        return row;
    }
}
