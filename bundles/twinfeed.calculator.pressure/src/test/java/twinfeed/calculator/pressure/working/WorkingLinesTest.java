// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;

/** Parts of a working share lines: what stands there already is not written twice. */
class WorkingLinesTest {
    private static List<String> symbols(WorkingLines lines) {
        return lines.build().steps().stream().map(Step::symbol).toList();
    }

    @Test
    void aLineOfAPartThatWasTakenOverIsNotWrittenAgain() {
        Working part = new WorkingLines()
                .input("p", "staticPressure", 3, "bar", "")
                .step("q", "runningPressure", "p / 2", "bar", "")
                .build();
        WorkingLines lines = new WorkingLines().include(part, "_t");
        lines.input("p_t", "staticPressure", 3, "bar", "").step("q_t", "runningPressure", "p_t / 2", "bar", "");
        assertEquals(List.of("p_t", "q_t"), symbols(lines));
        assertEquals(1.5, lines.value("q_t"), 1e-12);
    }
}
