// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.rules.Table;

/** The formula against published examples; the source of each stands in cases.csv and in the message. */
class MaximumDemandTest {
    private static Answer answer(String typed) {
        return FormulaCall.answer(MaximumDemand.FORMULA, typed, " ");
    }

    private static double result(Answer answer, String key) {
        return answer.results().stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + ": " + answer.trouble()))
                .si();
    }

    @TestFactory
    Stream<DynamicTest> published() throws IOException {
        try (InputStream stream = MaximumDemandTest.class.getResourceAsStream("cases.csv")) {
            return Table.read("cases", Objects.requireNonNull(stream)).rows().stream()
                    .map(row -> DynamicTest.dynamicTest(row.get("id") + " " + row.get("arguments"), () -> check(row)));
        }
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static void check(Map<String, String> row) {
        Answer answer = answer(text(row, "arguments"));
        double expected = Double.parseDouble(text(row, "expected"));
        double tolerance = Double.parseDouble(text(row, "tolerance").replace(" %", "")) / 100;
        assertEquals(
                expected,
                result(answer, text(row, "result")),
                expected * tolerance,
                () -> row.get("id") + ": " + row.get("source") + " (" + row.get("status") + ")");
        List<Step> steps = answer.working().steps();
        assertEquals(result(answer, "demand"), steps.get(steps.size() - 1).value(), 1e-9, "the working ends in it");
    }

    @Test
    void nothingGivenIsSaid() {
        assertEquals("noLoads", answer("").trouble());
        assertTrue(answer("shower=70A fuse=60A").warnings().contains("overFuse"));
    }

    @Test
    void aSlipOfUnitIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> answer("shower=40kg"));
        assertThrows(IllegalArgumentException.class, () -> answer("shower=-4A"));
        assertEquals("unknownRules", answer("shower=40A rules=none").trouble());
    }
}
