// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PluginsVerbTest {
    /** Each calculator with the quantities it takes and gives, its checks with the readings that they wait for, and what it can be asked. */
    @Test
    void whatEachCalculatorTakesGivesAndOffersIsListed() {
        Run run = Run.of("plugins");
        assertEquals(0, run.status(), run.err());
        List<String> lines = run.out().lines().toList();
        assertTrue(lines.get(0).startsWith("circuit ") && lines.get(0).endsWith("  Circuit"), lines.get(0));
        for (String line : List.of(
                "  provides voltage.terminal, power.delivered, current.design",
                "  consumes current.design",
                "  check circuit.oldCable: Old cable",
                "  check circuit.isolatorCondition: Condition of the isolator (needs survey.electricity.circuit.isolator.condition)",
                "  parameter ambient",
                "  formula drop")) {
            assertTrue(lines.contains(line), line);
        }
        assertTrue(
                lines.stream()
                        .noneMatch(line ->
                                line.strip().equals("consumes") || line.strip().equals("provides")),
                "a calculator that takes or gives nothing has no empty line");
    }
}
