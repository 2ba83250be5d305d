// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.sampling.Uncertainty;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Ratio;

/** Chances with tolerances of what nobody reads: the heater's power, and figures from tables. */
class TolerancesTest {
    private static final int DRAWS = 512;
    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private final RandomHouse house = RandomHouse.of(3);

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    private static Survey with(Survey survey, String calculator, String key, String value) {
        Survey copy = EcoreUtil.copy(survey);
        ParameterValue parameter = SurveyFactory.eINSTANCE.createParameterValue();
        parameter.setCalculator(calculator);
        parameter.setKey(key);
        parameter.setValue(value);
        copy.getParameters().add(parameter);
        return copy;
    }

    private static double value(Survey survey, Candidate candidate, String key) {
        return RUNNER.judge(survey, candidate)
                .finding(key)
                .map(Finding::figures)
                .orElseThrow()
                .value();
    }

    /** EN 60335-1 (memory): heating appliances take at most 5 % more and 10 % less than rated. The warm water is in proportion to the power. */
    @Test
    void powerAtTheEndsOfItsToleranceGivesSoMuchWarmWater() {
        Survey survey = house.survey();
        house.candidate().heater().setPowerToleranceUp(null);
        house.candidate().heater().setPowerToleranceDown(null);
        double rated = value(survey, house.candidate(), "flow.winter");
        double most = value(with(survey, "circuit", "powerDeviation", "1"), house.candidate(), "flow.winter");
        double least = value(with(survey, "circuit", "powerDeviation", "-1"), house.candidate(), "flow.winter");
        // The cable takes its share: at most 1 % of the power's change.
        assertEquals(1.05, most / rated, 0.005);
        assertEquals(0.90, least / rated, 0.01);
        house.candidate().heater().setPowerToleranceDown(Ratio.valueOf("2 %"));
        assertEquals(
                0.98,
                value(with(survey, "circuit", "powerDeviation", "-1"), house.candidate(), "flow.winter") / rated,
                0.005);
    }

    /** The wiring rules take the current from the rating. */
    @Test
    void theDesignCurrentStaysThatOfTheRating() {
        Survey least = with(house.survey(), "circuit", "powerDeviation", "1");
        assertEquals(
                value(house.survey(), house.candidate(), "circuit.capacity"),
                value(least, house.candidate(), "circuit.capacity"));
    }

    /**
     * With the limit just above the flow at the rating a heater passes if its power lies above it, which half of them do; with the limit
     * half-way to the lower end three in four pass.
     */
    @Test
    void theChanceFollowsTheToleranceOfThePower() {
        Survey survey = EcoreUtil.copy(house.survey());
        double rated = value(survey, house.candidate(), "flow.winter");
        house.candidate().heater().setPowerToleranceUp(null);
        house.candidate().heater().setPowerToleranceDown(null);
        assertEquals(0.5, chance(exact(survey, rated * 1.000001), "flow.winter"), 0.02);
        assertEquals(0.75, chance(exact(survey, rated * 0.95), "flow.winter"), 0.03);
    }

    /** The least flow, in m³/s, as a limit, and readings of the electrical side taken as exact. */
    private static Survey exact(Survey survey, double least) {
        Survey copy = with(survey, "flow", "least", least * 60_000 + " L/min");
        copy.getElectricity()
                .setSupplyVoltage(twinfeed.units.Voltage.valueOf(
                        copy.getElectricity().getSupplyVoltage().si() + " V ± 0.0001 V"));
        copy.getElectricity()
                .getCircuit()
                .getSegments()
                .forEach(segment -> segment.setLength(
                        twinfeed.units.Length.valueOf(segment.getLength().si() + " m ± 0.0001 m")));
        return copy;
    }

    private double chance(Survey survey, String key) {
        OptionResult result = Uncertainty.plain(RUNNER, DRAWS, 5).judge(survey, house.candidate());
        PassProbability chance = result.finding(key).orElseThrow().chance();
        if (chance == null) {
            throw new AssertionError(key + " has no chance");
        }
        return chance.passes();
    }

    /** Narrower pipes and fittings that lose more leave less pressure. */
    @Test
    void figuresFromTablesCountTowardsThePressure() {
        Survey survey = house.survey();
        double usual = value(survey, house.candidate(), "pressure.running");
        assertTrue(
                value(with(survey, "pressure", "table-losses", "1.5"), house.candidate(), "pressure.running") < usual);
        assertTrue(value(with(survey, "pressure", "table-roughness", "1.5"), house.candidate(), "pressure.running")
                < usual);
    }
}
