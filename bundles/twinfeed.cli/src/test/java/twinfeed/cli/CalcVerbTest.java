// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalcVerbTest {
    @Test
    void theFlowOfAHeaterBelowItsRatedVoltage() throws IOException {
        Run run =
                Run.of("calc", "flow", "power=9.5kW", "rated=240V", "supply=230V", "intake=5C", "outlet=40C", "--json");
        assertEquals(0, run.status(), run.err());
        JsonNode first = new ObjectMapper().readTree(run.out()).get("results").get(0);
        // Closed form with IAPWS-IF97 enthalpies: 9.5 kW (230/240)^2 / (167.712 - 21.218 kJ/kg) = 3.573 kg/min.
        assertEquals(3.573 / 60, first.get("value").asDouble(), 0.002 * 3.573 / 60);
        assertEquals("kg/s", first.get("unit").asText());
    }

    @Test
    void textNamesValueUnitWorkingAndCautions() {
        Run run = Run.of("calc", "flow", "power=9.5kW", "intake=5C", "outlet=40C");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("kg/min"), run.out());
        assertTrue(run.out().contains("P / (h_out - h_in)"), run.out());
        assertTrue(run.out().contains("Caution: electricity and hot water can kill."), run.out());
    }

    @Test
    void noHeatingNeededIsANamedResult() {
        Run run = Run.of("calc", "flow", "power=9.5kW", "intake=40C", "outlet=38C", "--json");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("\"trouble\""), run.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "flow intake=5C outlet=40C|power",
                "flow power=9.5 intake=5C outlet=40C|unit",
                "flow power=9.5kW intake=5C outlet=40C colour=red|colour",
                "flow power=9.5kW power=8kW intake=5C outlet=40C|twice",
                "flow power|KEY=VALUE",
                "flow power=-9.5kW intake=5C outlet=40C|range",
                "flow power=9,5kW intake=5C outlet=40C|9,5",
                "flow power=9.5kA intake=5C outlet=40C|power",
                "flux power=9.5kW|flux"
            })
    void whatCannotBeUsedIsNamedInOneLine(String arguments, String named) {
        Run run = Run.of((Object[]) ("calc " + arguments).split(" "));
        assertEquals(2, run.status());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(named), run.err());
    }

    @Test
    void listNamesEveryFormulaWithItsKeys() {
        Run run = Run.of("calc", "--list");
        assertEquals(0, run.status(), run.err());
        for (String name : new String[] {
            "flow",
            "outlet",
            "head-loss",
            "supply-curve",
            "network",
            "drop",
            "capacity",
            "loop",
            "device-limit",
            "element",
            "max-run",
            "max-demand",
            "highest-power"
        }) {
            assertTrue(run.out().lines().anyMatch(line -> line.startsWith(name + "  ")), name);
        }
        assertTrue(!run.out().contains("["), "a text is missing: " + run.out());
    }
}
