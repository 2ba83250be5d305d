// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/** Check values from outside the project, one CSV a subject: head lines with #, a line of names, then the cases. */
public final class CaseFile {
    private final String name;
    private final List<String> head = new ArrayList<>();
    private final List<Case> cases = new ArrayList<>();

    private CaseFile(String name) {
        this.name = name;
    }

    /** One line of the file. */
    public record Case(Map<String, String> cells) {
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), () -> "no column " + column + " in " + cells);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        String id() {
            return text("id");
        }

        /** Checks each actual value against the expected ones, which " / " separates. */
        void agrees(double... actual) {
            List<String> expected = List.of(text("expected").split(" / ", -1));
            assertEquals(expected.size(), actual.length, this::toString);
            for (int i = 0; i < actual.length; i++) {
                double value = Double.parseDouble(expected.get(i));
                assertEquals(value, actual[i], allowed(value), this::toString);
            }
        }

        private double allowed(double expected) {
            List<String> tolerance = List.of(text("tolerance").split(" ", -1));
            double number = Double.parseDouble(tolerance.get(0));
            return tolerance.get(1).equals("%") ? number / 100 * Math.abs(expected) : number;
        }

        /** Checks a verdict that the file gives in words. */
        void says(String actual) {
            assertEquals(text("expected"), actual, this::toString);
        }
    }

    public static CaseFile read(String name) {
        CaseFile file = new CaseFile(name);
        var stream = Objects.requireNonNull(CaseFile.class.getResourceAsStream(name), name);
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<String> columns = List.of();
            for (String line : reader.lines().toList()) {
                if (line.startsWith("#")) {
                    file.head.add(line);
                } else if (columns.isEmpty()) {
                    columns = cells(line);
                } else {
                    file.cases.add(file.newCase(columns, cells(line)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
        return file;
    }

    private Case newCase(List<String> columns, List<String> cells) {
        // A last column may be left out, which a trailing comma would have said.
        assertTrue(cells.size() <= columns.size(), () -> name + ": more cells than columns: " + cells);
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            named.put(columns.get(i), i < cells.size() ? cells.get(i) : "");
        }
        return new Case(named);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    public List<Case> cases() {
        return List.copyOf(cases);
    }

    List<String> head() {
        return List.copyOf(head);
    }

    /** One test a case, and one that says that cases and checks belong together one to one. */
    Stream<DynamicTest> tests(Map<String, Consumer<Case>> checks) {
        DynamicTest guard = dynamicTest(
                name + ": each case has its check",
                () -> assertEquals(
                        cases.stream().map(Case::id).sorted().toList(),
                        checks.keySet().stream().sorted().toList()));
        Stream<DynamicTest> each = cases.stream()
                .filter(row -> checks.containsKey(row.id()))
                .map(row -> dynamicTest(row.id() + ": " + row.text("inputs"), () -> checks.get(row.id())
                        .accept(row)));
        return Stream.concat(Stream.of(guard), each);
    }
}
