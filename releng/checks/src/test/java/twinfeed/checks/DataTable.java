// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A table of the program as its CSV file has it.
 *
 * @param columns names, from the first line that is no comment
 * @param rows cells as written, without the quotes
 */
record DataTable(List<String> columns, List<List<String>> rows) {
    private static final BigDecimal FLIP = new BigDecimal("1.04");

    /** A number in a table: where it stands, for a copy in which it is wrong. */
    record Place(int row, int column, int token) {}

    static DataTable read(Path file) {
        try {
            List<List<String>> lines = Files.readAllLines(file).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(DataTable::cells)
                    .toList();
            return new DataTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All data tables that the bundles ship. */
    static List<Path> shipped() {
        List<Path> found = new ArrayList<>();
        for (String bundle : Project.bundles()) {
            Path resources = Project.bundle(bundle).resolve("src/main/resources");
            if (Files.isDirectory(resources)) {
                try (Stream<Path> files = Files.walk(resources)) {
                    files.filter(file -> file.toString().endsWith(".csv"))
                            .sorted()
                            .forEach(found::add);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return found;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char each : line.toCharArray()) {
            if (each == '"') {
                quoted = !quoted;
            } else if (each == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(each);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    /** The words of a cell joined by commas, numbers without needless zeros, so that 0.50 and 0.5 are the same. */
    static String plain(String cell) {
        List<String> words = new ArrayList<>();
        for (String word : words(cell)) {
            words.add(isNumber(word) ? new BigDecimal(word).stripTrailingZeros().toPlainString() : word);
        }
        return String.join(",", words);
    }

    private static List<String> words(String cell) {
        return Stream.of(cell.strip().split("[\\s,]+"))
                .filter(word -> !word.isEmpty() && !word.equals("-"))
                .toList();
    }

    static boolean isNumber(String word) {
        return word.matches("-?\\d+(\\.\\d+)?");
    }

    /** Whether a cell says a number, with or without a unit, or several: no sentence in which one happens to stand. */
    private static boolean numeric(String cell) {
        List<String> words = words(cell);
        return words.stream().anyMatch(DataTable::isNumber)
                && words.stream().filter(word -> !isNumber(word)).count() <= 1
                && words.stream().noneMatch(word -> word.matches("[a-z]{4,}.*"));
    }

    /** Every number of the table. */
    List<Place> numbers() {
        List<Place> found = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                String cell = rows.get(row).get(column);
                List<String> words = words(cell);
                for (int token = 0; token < words.size(); token++) {
                    if (numeric(cell) && isNumber(words.get(token)) && Double.parseDouble(words.get(token)) != 0) {
                        found.add(new Place(row, column, token));
                    }
                }
            }
        }
        return found;
    }

    /** A copy in which one number is 4 % greater. */
    DataTable flipped(Place place) {
        List<List<String>> copy =
                new ArrayList<>(rows.stream().map(List::copyOf).toList());
        List<String> row = new ArrayList<>(copy.get(place.row()));
        List<String> words = new ArrayList<>(words(row.get(place.column())));
        words.set(
                place.token(),
                new BigDecimal(words.get(place.token())).multiply(FLIP).toPlainString());
        row.set(place.column(), String.join(" ", words));
        copy.set(place.row(), row);
        return new DataTable(columns, copy);
    }

    /** Each value under its row's key and its own column's name: what a second writing of the table is compared with. */
    Map<String, String> values(List<String> keys, List<String> valueColumns) {
        Map<String, String> values = new LinkedHashMap<>();
        for (List<String> row : rows) {
            List<String> key = keys.stream().map(name -> cell(row, name)).toList();
            for (String column : valueColumns) {
                String cell = cell(row, column);
                if (valueColumns.size() == 1 && !cell.isEmpty() && !hasNumber(cell)) {
                    continue; // words among the values of a list of numbers
                }
                String before = values.put(key + " " + column, cell);
                if (before != null) {
                    values.put(key + " " + column, before + " and " + cell);
                }
            }
        }
        return values;
    }

    private static boolean hasNumber(String cell) {
        return Stream.of(cell.split(",")).anyMatch(DataTable::isNumber)
                && Stream.of(cell.split(",")).allMatch(DataTable::isNumber);
    }

    private String cell(List<String> row, String name) {
        int column = columns.indexOf(name);
        return column < 0 || column >= row.size() ? "?" + name : plain(row.get(column));
    }

    String describe(Place place) {
        return rows.get(place.row()) + ", " + columns.get(Math.min(place.column(), columns.size() - 1));
    }
}
