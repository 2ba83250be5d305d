// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;

/**
 * Reads the rows of a CSV text one after the other; only one is held. Cells are quoted by RFC 4180 and separated by commas, semicolons
 * or tabs, whichever the first row that is no remark has most of. A list with semicolons or tabs may write its numbers with a decimal
 * comma, for its program does so; they are handed on with a point.
 */
public final class CsvRows {
    private static final int MOST_CELLS = 500;
    private static final int LONGEST_CELL = 32_767;

    private static final String NUMBER = "[-+]?\\d+(?:,\\d+)?";
    private static final String UNIT = "(?:\\s*[^\\d\\s,;±]{1,12})?";

    /** A number, perhaps with unit and tolerance, in a cell of its own or behind the key of a head line. */
    private static final Pattern DECIMAL =
            Pattern.compile("((?:#\\s*[\\p{L}-]+:\\s*)?)(" + NUMBER + UNIT + "(?:\\s*±\\s*" + NUMBER + UNIT + ")?)");

    /** In a list with tabs this may be a thousand; it is left for its reader to refuse. */
    private static final Pattern PERHAPS_GROUPED = Pattern.compile(".*\\d{1,3},\\d{3}(?!\\d).*");

    private final String name;
    private final int mostRows;
    private final char separator;

    private CsvRows(String name, int mostRows, char separator) {
        this.name = name;
        this.mostRows = mostRows;
        this.separator = separator;
    }

    /**
     * Reads a file in UTF-8, with or without its mark, or in Windows-1252.
     *
     * @param mostRows number of rows beyond which it is refused
     * @param mostMib largest size
     * @param rows takes each row that is not blank; what it throws ends the reading
     * @throws InputException if the file is missing, no regular file, too large or no such text
     */
    public static void read(Path file, int mostRows, int mostMib, Consumer<Row> rows) {
        InputBytes.check(file);
        String name = file.toString();
        try {
            if (Files.size(file) > (long) mostMib << 20) {
                throw RowRefusal.of(name, 0, "large", mostMib);
            }
            char separator;
            try (Reader reader = CsvFileText.open(file)) {
                separator = separator(reader);
            }
            try (Reader reader = CsvFileText.open(file)) {
                new CsvRows(name, mostRows, separator).rows(reader, rows);
            }
        } catch (IOException unreadable) {
            throw new InputException(RowRefusal.problem(name, 0, "unreadable"), unreadable);
        }
    }

    /**
     * Reads a text.
     *
     * @param name what messages call it
     * @param text the text, with or without a mark of the byte order
     * @throws InputException if it is too long or its quotes are broken
     */
    public static void read(String name, String text, int mostRows, Consumer<Row> rows) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        try {
            char separator = separator(new java.io.StringReader(plain));
            new CsvRows(name, mostRows, separator).rows(new java.io.StringReader(plain), rows);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text does not fail", impossible);
        }
    }

    /** The most frequent separator, outside quotes, of the first line that is neither blank nor a remark. */
    private static char separator(Reader reader) throws IOException {
        int[] counts = new int[3];
        boolean quoted = false;
        boolean remark = false;
        boolean blank = true;
        for (int c = reader.read(); c >= 0; c = reader.read()) {
            if (blank && !Character.isWhitespace(c)) {
                remark = c == '#' || c == '"' && peek(reader) == '#';
                blank = false;
            }
            quoted ^= c == '"';
            boolean end = (c == '\n' || c == '\r') && !quoted;
            if (end && !blank && !remark) {
                break;
            }
            blank |= end;
            int kind = ",;\t".indexOf(c);
            if (kind >= 0 && !quoted && !remark) {
                counts[kind]++;
            }
        }
        int most = counts[1] > counts[0] ? 1 : 0;
        return ",;\t".charAt(counts[2] > counts[most] ? 2 : most);
    }

    private static int peek(Reader reader) throws IOException {
        reader.mark(1);
        int next = reader.read();
        reader.reset();
        return next;
    }

    private void rows(Reader reader, Consumer<Row> rows) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(separator != '\t')
                .build();
        int line = 1;
        int count = 0;
        CSVParser parser = CSVParser.parse(reader, format);
        Iterator<CSVRecord> records = parser.iterator();
        while (true) {
            Row row;
            try {
                if (!records.hasNext()) {
                    return;
                }
                row = row(line, records.next());
            } catch (UncheckedIOException | IllegalStateException broken) {
                if (broken.getCause() instanceof CharacterCodingException) {
                    throw RowRefusal.of(name, line, "encoding");
                }
                throw RowRefusal.of(name, line, "quote");
            }
            if (++count > mostRows) {
                throw RowRefusal.of(name, line, "rows", mostRows);
            }
            if (!row.blank()) {
                rows.accept(row);
            }
            line = (int) parser.getCurrentLineNumber() + 1;
        }
    }

    private Row row(int line, CSVRecord record) {
        if (record.size() > MOST_CELLS) {
            throw RowRefusal.of(name, line, "cells", MOST_CELLS);
        }
        for (String cell : record) {
            if (cell.length() > LONGEST_CELL) {
                throw RowRefusal.of(name, line, "letters", LONGEST_CELL);
            }
        }
        return new Row(line, record.stream().map(this::cell).toList());
    }

    private String cell(String cell) {
        String text = cell.strip();
        if (separator != ',' && text.indexOf(',') >= 0) {
            Matcher number = DECIMAL.matcher(text);
            boolean grouped = separator == '\t' && PERHAPS_GROUPED.matcher(text).matches();
            if (number.matches() && !grouped) {
                return number.group(1) + number.group(2).replace(',', '.');
            }
        }
        return CsvCell.plain(text);
    }
}
