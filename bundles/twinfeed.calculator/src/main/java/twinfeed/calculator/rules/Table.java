// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A data file: rows by column name, and the head lines that say where the values are from. Head lines begin with {@code #}
 * and read {@code # source: ...}, {@code # sure: ...}, {@code # units: ...}.
 *
 * @param name file name without ending
 * @param source citation from the head
 * @param sure how sure the values are, from the head
 * @param units units of the columns, from the head
 * @param rows the rows
 */
public record Table(String name, String source, String sure, String units, List<Map<String, String>> rows) {
    public Table {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table.
     *
     * @param name what to call it, for messages
     * @param stream UTF-8 text
     * @throws IllegalArgumentException if the head lacks source, sure or units, or the text is no table
     */
    public static Table read(String name, InputStream stream) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .build();
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
                CSVParser parser = format.parse(reader)) {
            List<CSVRecord> records = parser.getRecords();
            String head = head(parser, records);
            List<Map<String, String>> rows = new ArrayList<>();
            records.forEach(each -> rows.add(each.toMap()));
            return new Table(
                    name, entry(name, head, "source"), entry(name, head, "sure"), entry(name, head, "units"), rows);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("table " + name, unreadable);
        }
    }

    private static String head(CSVParser parser, List<CSVRecord> records) {
        String above = parser.getHeaderComment();
        return (above == null ? "" : above) + "\n"
                + (records.isEmpty() || records.get(0).getComment() == null
                        ? ""
                        : records.get(0).getComment());
    }

    private static String entry(String name, String head, String key) {
        return head.lines()
                .map(String::strip)
                .filter(line -> line.startsWith(key + ":"))
                .map(line -> line.substring(key.length() + 1).strip())
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("table " + name + " has no head line \"# " + key + ":\""));
    }

    /** The rows in a form that names table, row and column when something is wrong with a value. */
    List<TableRow> typed() {
        return IntStream.range(0, rows.size())
                .mapToObj(at -> new TableRow(name, at + 1, rows.get(at)))
                .toList();
    }

    /** A number of a row. */
    public static double number(Map<String, String> row, String column) {
        String text = row.get(column);
        if (text == null || text.isEmpty()) {
            throw new IllegalArgumentException("no " + column + " in " + row);
        }
        return Double.parseDouble(text);
    }
}
