// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    /** Closed form: 3.573 kg/min; two readings of three digits and two of two carry three. */
    @Test
    void resultsShowTheDigitsThatTheirReadingsCarry() {
        Run rough = Run.of("calc", "flow", "power=9.5kW", "rated=240V", "supply=230V", "intake=5C", "outlet=40C");
        assertTrue(rough.out().contains("mass flow = 3.57 kg/min"), rough.out());
        Run exact = Run.of(
                "calc",
                "flow",
                "power=9.5000kW",
                "rated=240.00V",
                "supply=230.00V",
                "intake=5.0000C",
                "outlet=40.000C");
        assertTrue(exact.out().contains("mass flow = 3.5737 kg/min"), exact.out());
    }

    /** Definitions: 1 bar is 100 kPa, a metre of head 9.80665 kPa, a pound on the square inch 6.894757 kPa. */
    @Test
    void unitsTellsAQuantityInAllItsUnitsInOneLine() {
        Run run = Run.of("calc", "units", "value=0.3bar");
        assertEquals(0, run.status(), run.err());
        assertEquals(1, run.out().lines().count(), run.out());
        assertTrue(run.out().startsWith("pressure: 0.3 bar = "), run.out());
        assertTrue(run.out().contains(" = 30 kPa"), run.out());
        assertTrue(run.out().contains("3.05915 m"), run.out());
        assertTrue(run.out().contains("4.35113 psi"), run.out());
        Run refused = Run.of("calc", "units", "value=0.3frogs");
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("0.3frogs"), refused.err());
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

    /** One status in the same words as in an assessment: nobody reads what the table was taken down from. */
    @Test
    void sourcesHaveTheStatusWordsOfEveryOtherAnswer() {
        Run text = Run.of("calc", "capacity", "size=6mm2", "method=102", "rating=40A");
        assertTrue(text.out().contains("table 4D5; unverified (6 mm² C,"), text.out());
        assertTrue(text.out().contains("verified in a published article)"), text.out());
        Run json = Run.of("calc", "capacity", "size=6mm2", "method=102", "rating=40A", "--json");
        assertFalse(json.out().contains("memory"), json.out());
    }
}
