// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.AggregateWith;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.PublishedCase;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;
import twinfeed.units.Quantities;

class FlowFormulasTest {
    private static Answer calculate(String name, String arguments) {
        return FormulaCall.answer(FormulaCall.formula(new FlowCalculator(), name), arguments, ",");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "heat-cases.csv", delimiter = ';', useHeadersInDisplayName = true)
    void agreesWithPublishedCases(@AggregateWith(PublishedCase.Reader.class) PublishedCase published) {
        published.assertAgrees(new FlowCalculator());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "heat-cases.csv", delimiter = ';', useHeadersInDisplayName = true)
    void workingsEndInTheFirstResult(String id, String formula, String arguments) {
        Answer answer = calculate(formula, arguments);
        List<Step> steps = answer.working().steps();
        Step last = steps.get(steps.size() - 1);
        // The flow formula's working ends at the outlet, which is the third of its results.
        Answer.Result end = answer.results().get(formula.equals("flow") ? 2 : 0);
        double value = Quantities.toUnit(end.kind(), end.si(), last.unit());
        assertEquals(value, last.value(), 1e-9 * value, id);
    }

    @Test
    void theExampleOfTheHelpWorks() {
        Answer answer = calculate("flow", "power=9.5kW,rated=240V,supply=230V,intake=5C,outlet=40C");
        assertEquals(3.573, answer.results().get(0).si() * 60, 0.003);
        assertEquals(List.of(), answer.warnings());
    }

    @ParameterizedTest
    @CsvSource({
        "flow, 'power=9.5kW,intake=40C,outlet=40C', noHeatingNeeded",
        "flow, 'power=9.5kW,intake=41C,outlet=40C', noHeatingNeeded",
        "heat, 'flow=5L/min,intake=41C,outlet=40C', noHeatingNeeded",
        "outlet, 'power=9.5kW,intake=5C,flow=0L/min', flowNotPositive",
        "outlet, 'power=9.5kW,intake=5C,flow=1L/min', above100Degc",
        "outlet, 'power=9.5kW,intake=5C', flowOrMass",
        "heat, 'flow=5L/min,mass=5kg/min,intake=5C', flowOrMass",
        "flow, 'power=9.5kW,rated=240V,intake=5C', bothVoltages",
    })
    void whatHasNoAnswerHasAName(String formula, String arguments, String trouble) {
        Answer answer = calculate(formula, arguments);
        assertEquals(trouble, answer.trouble());
        assertTrue(answer.results().isEmpty());
        assertTrue(new FlowCalculator().descriptor().texts().has("trouble." + trouble));
    }

    @ParameterizedTest
    @CsvSource({"41, ''", "41.1, scaldFlag", "43.9, scaldFlag", "44, scaldStrong", "60, scaldStrong"})
    void hotWaterIsWarnedOf(double outletC, String warning) {
        Answer answer = calculate("flow", "power=9.5kW,intake=5C,outlet=" + outletC + "C");
        assertEquals(warning.isEmpty() ? List.of() : List.of(warning), answer.warnings());
    }

    /** Hendron et al. 2004: the formula again by hand for 50 degF (10 degC), 27 degF (15 K) spread, in the middle of July. */
    @Test
    void mainsTemperatureFollowsItsModel() {
        double ratio = 0.4 + 0.01 * (50 - 44);
        double lag = 35 - (50 - 44);
        double angle = 0.986 * (197 - 15 - lag) - 90;
        double fahrenheit = 50 + 6 + ratio * (27 / 2.0) * Math.sin(Math.toRadians(angle));
        Answer answer = calculate("mains-temperature", "mean=10C,spread=15K,month=jul");
        assertEquals((fahrenheit - 32) / 1.8, answer.results().get(0).si(), 1e-9);
        List<Step> steps = answer.working().steps();
        assertEquals(answer.results().get(0).si(), steps.get(steps.size() - 1).value(), 1e-9);
    }

    @Test
    void theSouthIsHalfAYearApart() {
        double north = calculate("mains-temperature", "mean=12C,spread=10K,month=jan")
                .results()
                .get(0)
                .si();
        double south = calculate("mains-temperature", "mean=12C,spread=10K,month=jan,hemisphere=south")
                .results()
                .get(0)
                .si();
        assertEquals(2 * (12 + 6 / 1.8), north + south, 1e-9);
        assertTrue(north < south);
    }
}
