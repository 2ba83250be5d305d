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
                "flow power=9.5 intake=5C outlet=40C|power=9.5 is not understood: \"9.5\" has no unit; write power in kW",
                "flow power=9.5kW intake=5bar outlet=40C|intake=5bar is not understood",
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

    /** Whether a key must be given, what stands in its place otherwise, and between which values it may lie. */
    @Test
    void listSaysOfEachKeyWhatItTakes() {
        Run run = Run.of("calc", "--list", "capacity");
        assertEquals(0, run.status(), run.err());
        String out = run.out();
        assertTrue(out.startsWith("capacity  What a cable carries where it runs"), out);
        assertTrue(out.lines().skip(1).allMatch(line -> line.startsWith("  ")), "no other formula: " + out);
        assertTrue(out.contains("area, 0.5000 mm² to 1000 mm²; needed"), out);
        assertTrue(out.contains("by the rule set's name; a name; needed"), out);
        assertTrue(out.contains("temperature, 0 °C to 60.00 °C; 30.00 °C if not given"), out);
        assertTrue(out.contains("how they run; one of bunched, single-layer; bunched if not given"), out);
        assertTrue(out.contains("instead of the temperature; ratio, 0.1000 to 2.000\n"), out);
        assertTrue(out.contains("its first cable if left out; a name\n"), out);
        Run loop = Run.of("calc", "--list", "loop");
        assertTrue(loop.out().contains("instead of the sizes; gradient resistance, "), loop.out());
        Run json = Run.of("calc", "--list", "capacity", "--json");
        assertTrue(json.out().contains("\"capacity\"") && !json.out().contains("\"flow\""), json.out());
        Run unknown = Run.of("calc", "--list", "banana");
        assertEquals(2, unknown.status());
        assertTrue(unknown.err().startsWith("\"banana\" is no calculation; calc --list names them"), unknown.err());
        Run misspelt = Run.of("calc", "banana");
        assertTrue(misspelt.err().contains("known are ") && misspelt.err().contains(", flow, "), misspelt.err());
    }

    @Test
    void withoutANameItListsToo() {
        assertEquals(Run.of("calc", "--list").out(), Run.of("calc").out());
    }

    /** Two digits are a rating, of which three are computed; more than six nobody reads off an instrument; zeros before a figure are none. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9kW|3",
                "9.5kW|3",
                "230.1V|4",
                "9.5000kW 230.00V|5",
                "9.5000kW 230V|3",
                "123.4567A|6",
                "0.0012345m|5",
                "00.1234m|4",
                "-12.345C|5",
                "copper 230.15V|5",
                "copper|3",
                "0m 230.15V|5"
            })
    void theLeastExactReadingSaysHowManyDigitsAreShown(String typed, int digits) {
        assertEquals(digits, TypedDigits.of(java.util.List.of(typed.split(" "))));
    }

    @Test
    void aTextOfSeveralKindsHasALineForEach() {
        Run run = Run.of("calc", "units", "value=20K");
        assertEquals(0, run.status(), run.err());
        assertEquals(
                1,
                run.out()
                        .lines()
                        .filter(line -> line.startsWith("temperature: "))
                        .count(),
                run.out());
        assertEquals(
                1,
                run.out()
                        .lines()
                        .filter(line -> line.startsWith("temperature difference: "))
                        .count(),
                run.out());
        Run none = Run.of("calc", "units", "value=0bar");
        assertTrue(none.out().startsWith("pressure: 0 bar = 0 kPa"), none.out());
        Run exact = Run.of("calc", "units", "value=1m");
        assertTrue(exact.out().contains("length: 1 m = 1000 mm = 100 cm = 0.001 km"), exact.out());
        assertTrue(exact.out().contains(" = 3.28084 ft"), exact.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "units|takes value= and nothing else",
                "units other=5m|takes value= and nothing else",
                "units value=1bar other=2|takes value= and nothing else",
                "units value=5|is no quantity with a unit",
                "flow =5|\"=5\" is no KEY=VALUE"
            })
    void whatUnitsCannotUseIsRefused(String arguments, String message) {
        Run run = Run.of((Object[]) ("calc " + arguments).split(" "));
        assertEquals(2, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains(message), run.err());
    }

    @Test
    void unitsHaveNoJsonDocument() {
        Run run = Run.of("calc", "units", "value=1bar", "--json");
        assertEquals(2, run.status());
        assertTrue(run.out().contains("leave --json out"), run.out());
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
