// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;

/**
 * A voltage of the grid in workings: the reading itself, an end of the band that the reading may pass, or a voltage of the rules. A workbook
 * follows a change of the reading by it.
 */
class OriginVoltageTest {
    private static final double[] VOLTS = {216.2, 230, 238, 253};

    private static List<Step> steps(int surveyed, int voltage) {
        Grid grid = new Grid(List.of(new Intake(0, 10)), VOLTS, surveyed, List.of(new DrawOffState(0, List.of())));
        Working.Builder working = Working.start();
        OriginVoltage.add(working, grid, voltage);
        return working.build().steps();
    }

    @ParameterizedTest
    @CsvSource({"0", "2", "3"})
    void theReadingIsTheReading(int surveyed) {
        List<Step> steps = steps(surveyed, surveyed);
        assertEquals(1, steps.size());
        assertEquals(VOLTS[surveyed], steps.get(0).value(), 0);
        assertEquals(Origin.SUPPLY_VOLTAGE, steps.get(0).origin());
    }

    /** The lowest and the highest that are judged are the ends of the band, or the reading where it lies beyond. */
    @ParameterizedTest
    @CsvSource({
        "2, 0, 'min(Us, Ub)', voltage.bound.0",
        "3, 0, 'min(Us, Ub)', voltage.bound.0",
        "2, 3, 'max(Us, Ub)', voltage.bound.1",
        "0, 3, 'max(Us, Ub)', voltage.bound.1",
    })
    void anEndOfTheBandIsComparedWithTheReading(int surveyed, int voltage, String expression, String bound) {
        List<Step> steps = steps(surveyed, voltage);
        assertEquals(List.of("Us", "Ub", "U0"), steps.stream().map(Step::symbol).toList());
        assertEquals(VOLTS[surveyed], steps.get(0).value(), 0);
        assertEquals(Origin.SUPPLY_VOLTAGE, steps.get(0).origin());
        assertEquals(Origin.rule(bound), steps.get(1).origin());
        assertEquals(expression, steps.get(2).expression());
        assertEquals(VOLTS[voltage], steps.get(2).value(), 0);
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "0, 1", "0, 2", "3, 2"})
    void whatLiesBetweenIsAVoltageOfTheRules(int surveyed, int voltage) {
        List<Step> steps = steps(surveyed, voltage);
        assertEquals(1, steps.size());
        assertEquals(VOLTS[voltage], steps.get(0).value(), 0);
        assertEquals(Origin.rule("voltage." + voltage), steps.get(0).origin());
    }
}
