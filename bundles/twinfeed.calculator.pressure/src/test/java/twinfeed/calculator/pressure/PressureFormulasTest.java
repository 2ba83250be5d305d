// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

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

class PressureFormulasTest {
    private static Answer calculate(String name, String arguments) {
        return FormulaCall.answer(FormulaCall.formula(new PressureCalculator(), name), arguments, ",");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "hydraulics-cases.csv", delimiter = ';', useHeadersInDisplayName = true)
    void agreesWithPublishedCases(@AggregateWith(PublishedCase.Reader.class) PublishedCase published) {
        published.assertAgrees(new PressureCalculator());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "hydraulics-cases.csv", delimiter = ';', useHeadersInDisplayName = true)
    void workingsEndInTheFirstResult(String id, String formula, String arguments) {
        Answer answer = calculate(formula, arguments);
        List<Step> steps = answer.working().steps();
        Step last = steps.get(steps.size() - 1);
        Answer.Result first = answer.results().get(0);
        double value = Quantities.toUnit(first.kind(), first.si(), last.unit());
        assertEquals(value, last.value(), 1e-7 * Math.abs(value), id);
    }

    @ParameterizedTest
    @CsvSource({
        "supply-curve, 'static=3bar,running=3bar,flow=15L/min,at=9L/min', runningNotBelowStatic",
        "supply-curve, 'static=3bar,running=3.2bar,flow=15L/min,at=9L/min', runningNotBelowStatic",
        "supply-curve, 'static=3bar,running=2bar,flow=0L/min,at=9L/min', flowNotPositive",
        "supply-curve, 'static=3bar,running=2bar,flow=15L/min,pressure=4bar', supplyTooWeak",
        "supply-curve, 'static=3bar,running=2bar,flow=15L/min,at=60L/min', supplyTooWeak",
        "supply-curve, 'static=3bar,at=9L/min', noRunningTest",
        "supply-curve, 'static=3bar,running=2bar,at=9L/min', runningAndFlow",
        "supply-curve, 'static=3bar,running=2bar,flow=9L/min', atOrPressure",
        "head-loss, 'bore=15mm,length=1m', flowOrVelocity",
        "head-loss, 'bore=15mm,length=1m,flow=0L/min', flowNotPositive",
        "head-loss, 'bore=15mm,roughness=1mm,length=1m,flow=9L/min', tooRough",
        "network, 'static=3bar,running=3bar,flow=9L/min,shower-outlet=2L/min', runningNotBelowStatic",
        "network, 'static=0.2bar,shower-outlet=2L/min,shower-rise=4m', supplyTooWeak",
        "network, 'static=3bar,shower-outlet=2L/min,pump=1bar', pumpAndFlow",
        "network, 'static=3bar,shower-outlet=2L/min,running=2bar', runningAndFlow",
        "network, 'static=3bar,shower-outlet=2L/min,exponent=1.9', exponentWithoutTest",
        "switch-margin, 'make=0.2bar,break=0.3bar,flow=4L/min', breakAboveMake",
        "tap-opens, 'power=9.5kW,intake=40C,ratio=50%', noHeatingNeeded",
        "tap-opens, 'power=9.5kW,intake=5C,ratio=1%', above100Degc",
    })
    void whatHasNoAnswerHasAName(String formula, String arguments, String trouble) {
        Answer answer = calculate(formula, arguments);
        assertEquals(trouble, answer.trouble());
        assertTrue(answer.results().isEmpty());
        assertTrue(new PressureCalculator().descriptor().texts().has("trouble." + trouble));
    }

    /** The 10 % are the practice of NFPA 291 for a test with enough drop. */
    @ParameterizedTest
    @CsvSource({
        "'static=3bar,running=2.8bar,flow=15L/min,at=9L/min', smallDrop",
        "'static=3bar,running=2.7bar,flow=15L/min,at=9L/min', ''",
        "'static=3bar,running=1.6bar,flow=15L/min,at=18L/min', beyondTest",
        "'static=7m head,at=0L/min,rise=3.5m', belowGuaranteed",
        "'static=0.6bar,running=0.4bar,flow=8L/min,at=4L/min', belowGuaranteed",
        // Ofwat's guaranteed standard: 7 m of head in the communication pipe.
        "'static=7.1m head,at=0L/min,rise=3.5m', ''",
    })
    void whatIsDoubtfulIsWarnedOf(String arguments, String warning) {
        assertEquals(
                warning.isEmpty() ? List.of() : List.of(warning),
                calculate("supply-curve", arguments).warnings());
    }

    @ParameterizedTest
    @CsvSource({"1 L/min, laminar", "3 L/min, critical", "9 L/min, turbulent"})
    void theRegimeIsNamed(String flow, String regime) {
        Answer answer = calculate("head-loss", "bore=13.6mm,length=1m,flow=" + flow);
        assertEquals(List.of(regime), answer.warnings());
    }

    /** 0.25 bar at 8 L/min is 0.0625 bar at 4 L/min by the square law; 0.3 m of water at 10 degC are 0.0294 bar. */
    @Test
    void theSwitchBehindTheThrottleFeelsTheFlow() {
        Answer answer = calculate(
                "switch-margin",
                "make=0.05bar,break=0.03bar,place=heating,flow=4L/min,build=0.25bar,build-flow=8L/min,handset=-0.3m");
        assertEquals(0.0125e5, answer.results().get(1).si(), 1);
        assertEquals(0.0031e5, answer.results().get(2).si(), 10);
        assertEquals(answer.results().get(2).si(), answer.results().get(0).si(), 1e-9);
    }

    /** 0.15 bar at 8 L/min is 0.0375 bar at 4 L/min by the square law. */
    @Test
    void theSwitchAheadOfTheThrottleFeelsTheSupply() {
        Answer answer = calculate(
                "switch-margin", "make=0.3bar,break=0.2bar,flow=4L/min,pressure=0.5bar,loss=0.15bar,loss-flow=8L/min");
        assertEquals(0.1625e5, answer.results().get(0).si(), 1e-6);
        assertEquals(0.2625e5, answer.results().get(2).si(), 1e-6);
    }

    /**
     * Closed forms without pipes, of 3 bar static and 2 bar at 12 L/min: with exponent 2 and an outlet C the pressure at the outlet is
     * p = 3 - (Q/12)^2 = 0.09804 (Q/C)^2 bar (a metre of water at 10 degC is 0.09804 bar).
     */
    @ParameterizedTest
    @CsvSource({
        "'', 0, 0",
        "'exponent=2', 0, 0",
        "'exponent=2,pump=1bar,pump-flow=20L/min', 1, 20",
    })
    void aNetworkWithoutPipesFollowsTheClosedForm(String more, double pumpBar, double pumpLPerMin) {
        Answer answer = calculate(
                "network",
                "static=3bar,running=2bar,flow=12L/min,tap=shut,shower-outlet=2L/min"
                        + (more.isEmpty() ? "" : "," + more));
        double metre = 0.0980371;
        double q = answer.results().get(0).si() * 60_000;
        double exponent = more.isEmpty() ? (q <= 12 ? 1.85 : 2) : 2;
        double pump = pumpBar == 0 ? 0 : pumpBar * (1 - q * q / pumpLPerMin / pumpLPerMin);
        assertEquals(3 - Math.pow(q / 12, exponent) + pump, metre * q * q / 4, 1e-4);
        List<Step> steps = answer.working().steps();
        assertEquals(steps.get(steps.size() - 1).value(), q, 1e-6);
    }

    /** Bernoulli: water that leaves 4 mm at 6 L/min has 7.96 m/s and so 0.317 bar in its velocity. */
    @Test
    void anOutletsVelocityTakesItsPressure() {
        Answer plain = calculate("network", "static=3bar,tap=shut,shower-outlet=2L/min");
        Answer narrow = calculate("network", "static=3bar,tap=shut,shower-outlet=2L/min,shower-outlet-bore=4mm");
        double q = narrow.results().get(0).si();
        double velocity = q / (Math.PI * 0.004 * 0.004 / 4);
        double ownPa = 9803.71 * Math.pow(q * 60_000 / 2, 2);
        assertTrue(q < plain.results().get(0).si());
        assertEquals(3e5, ownPa + 999.7 / 2 * velocity * velocity, 3e5 * 1e-4);
        assertEquals(0.317e5, 999.7 / 2 * Math.pow(6 / 60_000.0 / (Math.PI * 0.004 * 0.004 / 4), 2), 50);
    }

    @Test
    void aSwitchThatOpensEndsTheHeating() {
        Answer answer = calculate("tap-opens", "power=9.5kW,intake=5C,outlet=40C,ratio=20%,break-flow=3L/min");
        assertEquals(List.of("switchOpens", "scaldStrong"), answer.warnings());
        // IAPWS-IF97 enthalpies, closed form: 9.5 kW heats 3.0 kg/min from 5 to 50.4 degC
        assertEquals(50.4, answer.results().get(0).si(), 0.3);
    }
}
