// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import twinfeed.model.io.InputException;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;

/**
 * A data file: rows by column name, and the head lines that say where the values are from. Head lines begin with {@code #}
 * and read {@code # source: ...}, {@code # status: ...}, {@code # units: ...}.
 *
 * @param name file name without ending
 * @param source citation from the head
 * @param status how far the values are verified, and where, from the head
 * @param units units of the columns, from the head
 * @param rows the rows
 */
public record Table(String name, String source, String status, String units, List<Map<String, String>> rows) {
    private static final int MOST_ROWS = 100_000;

    public Table {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table that comes with a class, from the file beside it.
     *
     * @param name what to call it, for messages
     * @throws IllegalStateException if the file is not there
     * @throws IllegalArgumentException as {@link #read}
     */
    public static Table beside(Class<?> owner, String file, String name) {
        InputStream stream = owner.getResourceAsStream(file);
        if (stream == null) {
            throw new IllegalStateException(file + " is missing");
        }
        return read(name, stream);
    }

    /**
     * Reads a table.
     *
     * @param name what to call it, for messages
     * @param stream UTF-8 text
     * @throws IllegalArgumentException if the head lacks source, status or units, or the text is no table
     */
    public static Table read(String name, InputStream stream) {
        List<String> remarks = new ArrayList<>();
        List<String> head = new ArrayList<>();
        List<Map<String, String>> rows = new ArrayList<>();
        try (stream) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.lines().filter(line -> line.startsWith("#")).toList()) {
                remarks.add(line.substring(1));
            }
            String table =
                    text.lines().map(line -> line.startsWith("#") ? "" : line).collect(Collectors.joining("\n"));
            CsvRows.read(name, table, MOST_ROWS, row -> {
                if (head.isEmpty()) {
                    head.addAll(row.cells());
                } else {
                    rows.add(cells(head, row));
                }
            });
        } catch (IOException unreadable) {
            throw new UncheckedIOException("table " + name, unreadable);
        } catch (InputException broken) {
            throw RuleRefusal.of(broken, "table.broken", String.valueOf(broken.getMessage()));
        }
        String above = String.join("\n", remarks);
        return new Table(
                name, entry(name, above, "source"), entry(name, above, "status"), entry(name, above, "units"), rows);
    }

    private static Map<String, String> cells(List<String> head, Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(head.size(), row.cells().size()); i++) {
            cells.put(head.get(i), row.cells().get(i));
        }
        return cells;
    }

    private static String entry(String name, String head, String key) {
        return head.lines()
                .map(String::strip)
                .filter(line -> line.startsWith(key + ":"))
                .map(line -> line.substring(key.length() + 1).strip())
                .findFirst()
                .orElseThrow(() -> RuleRefusal.of("table.head", name, key));
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
