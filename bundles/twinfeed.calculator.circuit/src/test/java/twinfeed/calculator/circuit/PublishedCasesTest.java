// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.Answer;
import twinfeed.calculator.Arguments;
import twinfeed.calculator.Formula;
import twinfeed.calculator.Step;
import twinfeed.calculator.rules.Table;
import twinfeed.units.Quantities;

/** The formulas against published examples; the source of each stands in cases.csv and in the message. */
class PublishedCasesTest {
    private static List<Map<String, String>> rows() throws IOException {
        try (InputStream stream = PublishedCasesTest.class.getResourceAsStream("cases.csv")) {
            return Table.read("cases", Objects.requireNonNull(stream)).rows();
        }
    }

    static Formula formula(String name) {
        return new CircuitCalculator()
                .statement().formulas().stream()
                        .filter(formula -> formula.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no formula " + name));
    }

    static Answer answer(String name, String typed) {
        Map<String, String> arguments = new LinkedHashMap<>();
        for (String part : typed.split(" ", -1)) {
            int equals = part.indexOf('=');
            arguments.put(part.substring(0, equals), part.substring(equals + 1));
        }
        Formula formula = formula(name);
        return formula.apply(Arguments.parse(formula.parameters(), arguments));
    }

    static Answer.Result result(Answer answer, String key) {
        return answer.results().stream()
                .filter(result -> result.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no result " + key + ": " + answer.trouble()));
    }

    @TestFactory
    Stream<DynamicTest> published() throws IOException {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.get("id") + " " + row.get("formula") + " " + row.get("arguments"), () -> check(row)));
    }

    private static void check(Map<String, String> row) {
        Answer answer = answer(text(row, "formula"), text(row, "arguments"));
        Answer.Result result = result(answer, text(row, "result"));
        double found = Quantities.toUnit(result.kind(), result.si(), text(row, "unit"));
        double expected = Double.parseDouble(text(row, "expected"));
        double tolerance = Double.parseDouble(text(row, "tolerance").replace(" %", "")) / 100;
        assertEquals(
                expected,
                found,
                Math.max(1e-9, Math.abs(expected)) * tolerance,
                () -> row.get("id") + ": " + row.get("source") + " (" + row.get("sure") + ")");
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    /** The last line of each working is the answer, so that a person who follows it arrives there. */
    @TestFactory
    Stream<DynamicTest> workings() throws IOException {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest("working of " + row.get("id"), () -> {
                    Answer answer = answer(text(row, "formula"), text(row, "arguments"));
                    List<Step> steps = answer.working().steps();
                    assertTrue(!steps.isEmpty());
                    Step last = steps.get(steps.size() - 1);
                    boolean reached = answer.results().stream()
                            .anyMatch(result -> Math.abs(Quantities.toUnit(
                                                    result.kind(),
                                                    result.si(),
                                                    last.unit().isEmpty() ? "1" : last.unit())
                                            - last.value())
                                    <= 1e-9 * Math.abs(last.value()));
                    assertTrue(reached, "the working ends in " + last);
                }));
    }

    @Test
    void aZeroSpareIsCarried() {
        assertTrue(answer("capacity", "size=10mm2 method=100 rating=45A")
                .warnings()
                .isEmpty());
        assertTrue(answer("capacity", "size=10mm2 method=100 rating=50A")
                .warnings()
                .contains("deviceAboveCapacity"));
    }
}
