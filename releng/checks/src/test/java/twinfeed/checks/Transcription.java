// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A table written a second time, in the layout of the printed one; the head of {@code tables/bs7671.txt} says how.
 *
 * @param table ending of the path of the file that it is compared with
 * @param from where its values are from
 * @param keys columns that name a row of the file
 * @param columns columns of the values
 * @param values each value under its key and column, as {@link DataTable#values} has them
 */
record Transcription(String table, String from, List<String> keys, List<String> columns, Map<String, String> values) {
    private static final Path FOLDER = Project.ROOT.resolve("releng/checks/src/test/resources/twinfeed/checks/tables");

    static List<Transcription> all() {
        List<Transcription> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".txt"))
                    .sorted()
                    .toList()) {
                for (String block : Files.readString(file).split("\n\\s*\n")) {
                    List<String> lines = block.lines()
                            .filter(line -> !line.startsWith("#") && !line.isBlank())
                            .toList();
                    if (!lines.isEmpty()) {
                        all.add(parse(lines));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private static Transcription parse(List<String> lines) {
        String table = "";
        String from = "";
        List<String> withColumns = new ArrayList<>();
        List<String> withValues = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String[] words = lines.get(i).split("\\s+");
            switch (words[0]) {
                case "table" -> table = words[1];
                case "from" -> from = lines.get(i).substring(5).strip();
                case "with" -> {
                    withColumns.add(words[1]);
                    withValues.add(words[2]);
                }
                case "grid" -> {
                    return grid(table, from, withColumns, withValues, words, lines.subList(i + 1, lines.size()));
                }
                case "list" -> {
                    return list(table, from, withColumns, withValues, words, lines.subList(i + 1, lines.size()));
                }
                default -> throw new IllegalStateException("not understood: " + lines.get(i));
            }
        }
        throw new IllegalStateException("no grid and no list: " + lines);
    }

    private static Transcription grid(
            String table, String from, List<String> with, List<String> content, String[] head, List<String> lines) {
        List<String> keys = new ArrayList<>(with);
        keys.addAll(List.of(head[1].split(",")));
        keys.add(head[2]);
        String[] across = lines.get(0).split("\\s+");
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split("\\s+");
            for (int i = 1; i < cells.length; i++) {
                if (!cells[i].equals("-")) {
                    List<String> key = new ArrayList<>(content);
                    key.addAll(List.of(cells[0].split(",")));
                    key.add(across[i]);
                    put(values, key, head[3], cells[i]);
                }
            }
        }
        return new Transcription(table, from, keys, List.of(head[3]), values);
    }

    private static Transcription list(
            String table, String from, List<String> with, List<String> content, String[] head, List<String> lines) {
        List<String> names = List.of(head).subList(1, head.length);
        int colon = names.indexOf(":");
        List<String> keys = new ArrayList<>(with);
        keys.addAll(names.subList(0, colon));
        List<String> columns = names.subList(colon + 1, names.size());
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : lines) {
            List<String> cells = List.of(line.split("\\s+"));
            List<String> key = new ArrayList<>(content);
            key.addAll(cells.subList(0, colon));
            for (int i = 0; i < columns.size(); i++) {
                put(values, key, columns.get(i), cells.get(colon + i));
            }
        }
        return new Transcription(table, from, keys, columns, values);
    }

    private static void put(Map<String, String> values, List<String> key, String column, String value) {
        values.put(key.stream().map(DataTable::plain).toList() + " " + column, DataTable.plain(value));
    }

    /** The values in which a table differs from this one; empty if they agree. */
    List<String> differences(DataTable other) {
        Map<String, String> others = (turned(other) ? turn(other) : other).values(keys, columns);
        TreeSet<String> names = new TreeSet<>(values.keySet());
        names.addAll(others.keySet());
        return names.stream()
                .filter(name -> !Objects.equals(values.get(name), others.get(name)))
                .map(name -> name + ": the table has " + others.get(name) + ", the second writing " + values.get(name))
                .toList();
    }

    /** Whether the columns of the file are a key of this one: months across. */
    private boolean turned(DataTable other) {
        return !other.columns().contains(columns.get(0));
    }

    private DataTable turn(DataTable other) {
        List<List<String>> rows = new ArrayList<>();
        for (List<String> row : other.rows()) {
            for (int i = 1; i < row.size(); i++) {
                rows.add(List.of(other.columns().get(i), row.get(0), row.get(i)));
            }
        }
        return new DataTable(List.of(keys.get(0), keys.get(1), columns.get(0)), rows);
    }
}
