// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;

/** The results of the quick questions that no published case names, by closed forms beside them. */
class FormulaResultsTest {
    private static double result(Answer answer, String key) {
        return PublishedCasesTest.result(answer, key).si();
    }

    private static String source(Answer answer, String symbol) {
        return answer.working().steps().stream()
                .filter(step -> step.symbol().equals(symbol))
                .map(Step::source)
                .findFirst()
                .orElseThrow();
    }

    /** 7.3 mV/A/m x 20 m x 45 A = 6.57 V, 2.857 % of 230 V; 11.5 - 6.57 = 4.93 V are spare (table 4D5; memory). */
    @Test
    void aDropHasItsShareAndWhatIsSpare() {
        Answer drop = PublishedCasesTest.answer("drop", "size=6mm2 length=20m current=45A");
        assertEquals(6.57, result(drop, "drop"), 1e-9);
        assertEquals(6.57 / 230, result(drop, "dropShare"), 1e-12);
        assertEquals(11.5, result(drop, "dropLimit"), 1e-9);
        assertEquals(4.93, result(drop, "dropSpare"), 1e-9);
    }

    /** What was typed has no table behind it. */
    @Test
    void onlyFiguresFromATableNameIt() {
        assertEquals("", source(PublishedCasesTest.answer("drop", "gradient=7.3mV/A/m length=20m current=45A"), "g"));
        assertNotEquals("", source(PublishedCasesTest.answer("drop", "size=6mm2 length=20m current=45A"), "g"));
        assertEquals("", source(PublishedCasesTest.answer("loop", "line=10mohm/m length=20m ze=0.2ohm"), "z"));
        assertNotEquals("", source(PublishedCasesTest.answer("loop", "size=10mm2 length=20m ze=0.2ohm"), "z"));
    }

    /** Ohm's law: the current is the voltage at the heater over its element of 240² / 9500 = 6.063 ohm, and the power both multiplied. */
    @Test
    void whatArrivesIsOneCurrentThroughTheElement() {
        Answer arrives = PublishedCasesTest.answer(
                "delivered", "power=9.5kW rated=240V supply=230V size=10mm2 length=20m method=C");
        assertEquals(result(arrives, "terminalVoltage") / 6.0632, result(arrives, "current"), 0.001);
        assertEquals(result(arrives, "terminalVoltage") * result(arrives, "current"), result(arrives, "power"), 1e-6);
    }

    /** 12 and 8 ohm side by side are 4.8 ohm: 50 A and 12 kW at 240 V. */
    @Test
    void twoElementsTakeTheirCurrentTogether() {
        Answer both = PublishedCasesTest.answer("elements", "first=12ohm second=8ohm supply=240V");
        assertEquals(4.8, result(both, "resistance"), 1e-12);
        assertEquals(50, result(both, "current"), 1e-9);
        assertEquals(12_000, result(both, "power"), 1e-6);
    }

    /** 210 A in 0.4 s (30 A semi-enclosed fuse; memory) need 210 sqrt(0.4) / 115 = 1.155 mm². */
    @ParameterizedTest
    @CsvSource({"1 mm2, conductorTooThin", "1.5 mm2, ''"})
    void aConductorIsComparedWithWhatTheFuseLetsThrough(String size, String warning) {
        Answer answer = PublishedCasesTest.answer("fuse", "rating=30A time=0.4s size=" + size.replace(" ", ""));
        assertEquals(1.155e-6, result(answer, "conductor"), 0.01e-6);
        assertEquals(warning.isEmpty() ? List.of() : List.of(warning), answer.warnings());
    }

    /** The longest time that a conductor of 1.5 mm² stands is that in which the fuse lets through (115 x 1.5)² = 29 756 A²s. */
    @Test
    void aConductorStandsTheFaultForATime() {
        Answer answer = PublishedCasesTest.answer("fuse", "rating=30A size=1.5mm2");
        double current = result(answer, "faultCurrent");
        assertEquals(29_756, current * current * result(answer, "withstandTime"), 30);
    }

    /** The shortest time of the characteristic is part of it: 0.95 x 230 V / 0.485 ohm (table 41.2 and its notes; memory) within 0.1 s. */
    @Test
    void theShortestTimeOfAFuseHasItsCurrent() {
        assertEquals(450.5, result(PublishedCasesTest.answer("fuse", "rating=30A time=0.1s"), "faultCurrent"), 0.1);
    }
}
