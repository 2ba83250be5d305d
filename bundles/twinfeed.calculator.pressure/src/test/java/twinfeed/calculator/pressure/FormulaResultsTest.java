// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;
import twinfeed.units.Quantities;

/** All results of the quick questions, by closed forms that are worked out beside them. A metre of water at 10 degC is 0.098037 bar. */
class FormulaResultsTest {
    private static final double L_PER_MIN = 60_000;

    private static Answer calculate(String name, String arguments) {
        Answer answer = FormulaCall.answer(FormulaCall.formula(new PressureCalculator(), name), arguments, ",");
        assertEquals("", answer.trouble(), arguments);
        List<Step> steps = answer.working().steps();
        Step last = steps.get(steps.size() - 1);
        Answer.Result first = answer.results().get(0);
        double value = Quantities.toUnit(first.kind(), first.si(), last.unit());
        assertEquals(value, last.value(), 1e-6 * Math.abs(value), "the working of " + arguments + " ends elsewhere");
        return answer;
    }

    private static double si(Answer answer, String key) {
        return FormulaCall.result(answer, key).si();
    }

    private static List<String> keys(Answer answer) {
        return answer.results().stream().map(Answer.Result::key).toList();
    }

    private static String trouble(String name, String arguments) {
        return FormulaCall.answer(FormulaCall.formula(new PressureCalculator(), name), arguments, ",")
                .trouble();
    }

    /** 2 m/s in 20 mm are 37.7 L/min; Re = 2 x 0.02 / 1.3063e-6; K = 5.5 takes 5.5 x 2² / (2 x 9.80665) = 1.1217 m. */
    @Test
    void fittingsAloneLoseBySpeed() {
        Answer answer = calculate("head-loss", "bore=20mm,velocity=2m/s,k=5.5");
        assertEquals(List.of("head", "pressure", "velocity", "reynolds"), keys(answer));
        assertEquals(1.1217, si(answer, "head"), 1e-4);
        assertEquals(5.5 * 999.7 / 2 * 4, si(answer, "pressure"), 1);
        assertEquals(2, si(answer, "velocity"), 1e-12);
        assertEquals(30_620, si(answer, "reynolds"), 40); // viscosity of IAPWS R12-08 at 10 degC: 1.306 mPa s (memory)
    }

    /** The gradient is the loss of a metre: of 12 m of 13.6 mm at 9 L/min 1.46495 m (EPANET, as among the published cases). */
    @Test
    void aPipeHasItsLossPerMetre() {
        Answer answer = calculate("head-loss", "bore=13.6mm,roughness=0.0015mm,length=12m,flow=9L/min");
        assertEquals(List.of("head", "pressure", "velocity", "reynolds", "gradient"), keys(answer));
        assertEquals(1.46495 / 12 * 9803.7, si(answer, "gradient"), 15);
        assertEquals(9 / L_PER_MIN / (Math.PI * 0.0136 * 0.0136 / 4), si(answer, "velocity"), 1e-9);
    }

    /** 3.0 - 1.4 (9/15)^1.85 = 2.4559 bar, and 2 m higher 0.1961 bar less. */
    @Test
    void thePressureAtAFlowAndAHeight() {
        Answer level = calculate("supply-curve", "static=3bar,running=1.6bar,flow=15L/min,at=9L/min");
        assertEquals(2.4559e5, si(level, "pressure"), 10);
        assertEquals(2.4559e5 / 9806.65, si(level, "head"), 0.001);
        Answer high = calculate("supply-curve", "static=3bar,running=1.6bar,flow=15L/min,at=9L/min,rise=2m");
        assertEquals(0.196074e5, si(level, "pressure") - si(high, "pressure"), 3);
        Answer still = calculate("supply-curve", "static=3bar,at=0L/min,rise=-2m");
        assertEquals(3.196074e5, si(still, "pressure"), 3);
    }

    /** 15 ((3 - p - 0.1961) / 1.4)^(1/n): n is 1.85 up to the test's flow and 2 beyond it. */
    @ParameterizedTest
    @CsvSource({
        "'pressure=2bar', 12.505, ''",
        "'pressure=2bar,rise=2m', 11.114, ''",
        "'pressure=1.6bar', 15, ''",
        "'pressure=1bar', 17.928, beyondTest",
        "'pressure=1bar,exponent=1.85', 18.190, beyondTest",
        "'pressure=0bar', 21.958, beyondTest",
    })
    void theFlowAtAPressure(String asked, double expectedLPerMin, String warning) {
        Answer answer = calculate("supply-curve", "static=3bar,running=1.6bar,flow=15L/min," + asked);
        assertEquals(expectedLPerMin, si(answer, "flow") * L_PER_MIN, 0.003);
        assertEquals(warning.isEmpty() ? List.of() : List.of(warning), answer.warnings());
    }

    @Test
    void theTestsOwnFlowIsWithinTheTest() {
        assertEquals(
                List.of(),
                calculate("supply-curve", "static=3bar,running=1.6bar,flow=15L/min,at=15L/min")
                        .warnings());
        assertEquals(
                "belowAir", trouble("supply-curve", "static=3bar,running=1.6bar,flow=15L/min,pressure=0bar,rise=-1m"));
        assertEquals("noRunningTest", trouble("supply-curve", "static=3bar,pressure=1bar"));
    }

    /** Stiff 3 bar without pipes: C sqrt(3 / 0.098037) = 5.5318 C through each outlet, whatever the other one takes. */
    @Test
    void aStiffSupplyFeedsBothOutletsAsIfAlone() {
        Answer both = calculate("network", "static=3bar,shower-outlet=2L/min,tap-outlet=1L/min");
        assertEquals(List.of("showerFlow", "showerPressure", "teePressure", "tapFlow"), keys(both));
        assertEquals(11.0636, si(both, "showerFlow") * L_PER_MIN, 0.001);
        assertEquals(5.5318, si(both, "tapFlow") * L_PER_MIN, 0.001);
        assertEquals(3e5, si(both, "teePressure"), 1);
        assertEquals(3e5, si(both, "showerPressure"), 1);
        Answer shut = calculate("network", "static=3bar,shower-outlet=2L/min,tap=shut,shower-rise=2m,common-rise=1m");
        assertEquals(List.of("showerFlow", "showerPressure", "teePressure"), keys(shut));
        assertEquals(3e5 - 9803.7, si(shut, "teePressure"), 2);
        assertEquals(3e5 - 3 * 9803.7, si(shut, "showerPressure"), 5);
        assertEquals(2 * Math.sqrt(3e5 / 9803.7 - 3), si(shut, "showerFlow") * L_PER_MIN, 0.001);
    }

    /** Bernoulli and the outlet's own law in series: the working of a narrow outlet ends in the flow that was found. */
    @Test
    void theWorkingOfANarrowOutletEndsInItsFlow() {
        calculate("network", "static=3bar,tap=shut,shower-outlet=2L/min,shower-outlet-bore=4mm");
    }

    /** The ends of what is believed: a wall of a twentieth of its bore, and a flow that uses the supply up to nothing. */
    @Test
    void whatIsOnlyJustPossibleIsCalculated() {
        calculate("network", "static=3bar,shower-outlet=2L/min,common-bore=20mm,common-roughness=1mm");
        calculate("head-loss", "bore=20mm,roughness=1mm,length=1m,flow=9L/min");
        Answer nothingLeft = calculate("supply-curve", "static=3bar,running=0bar,flow=15L/min,at=15L/min");
        assertEquals(0, si(nothingLeft, "pressure"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"common", "shower", "tap"})
    void noWallIsRougherThanItsPipeIsWide(String pipe) {
        assertEquals("tooRough", trouble("network", "static=3bar,shower-outlet=2L/min," + pipe + "-roughness=1mm"));
    }

    /** 0.15 bar at 8 L/min is 0.0375 bar at 4 L/min: 0.4625 bar at the switch, 0.1625 over make and 0.2625 over break. */
    @Test
    void aSwitchHasTwoMargins() {
        Answer answer = calculate(
                "switch-margin", "make=0.3bar,break=0.2bar,flow=4L/min,pressure=0.5bar,loss=0.15bar,loss-flow=8L/min");
        assertEquals(0.1625e5, si(answer, "margin"), 1e-6);
        assertEquals(0.1625e5, si(answer, "toMake"), 1e-6);
        assertEquals(0.2625e5, si(answer, "toBreak"), 1e-6);
        assertEquals("", trouble("switch-margin", "make=0.3bar,break=0.3bar,flow=4L/min"));
    }

    /** 9.5 kW heat 3.891 kg/min from 5 to 40 degC (IAPWS-IF97); with a ratio r of pressures the held throttle passes sqrt(r) of it. */
    @ParameterizedTest
    @CsvSource({
        "100 %, 1, 40.0, ''",
        "96 %, 0.979796, 40.7, ''",
        "90 %, 0.948683, 41.9, scaldFlag",
        "81 %, 0.9, 43.9, scaldFlag",
        "64 %, 0.8, 48.7, scaldStrong",
    })
    void lessWaterThroughAHeldThrottleIsHotter(String ratio, double share, double hottestC, String warning) {
        Answer answer = calculate("tap-opens", "power=9.5kW,intake=5C,outlet=40C,ratio=" + ratio);
        assertEquals(List.of("hottest", "flowBefore", "flowAfter"), keys(answer));
        assertEquals(3.891, si(answer, "flowBefore") * L_PER_MIN, 0.005);
        assertEquals(3.891 * share, si(answer, "flowAfter") * L_PER_MIN, 0.005);
        assertEquals(hottestC, si(answer, "hottest"), 0.1);
        assertEquals(warning.isEmpty() ? List.of() : List.of(warning), answer.warnings());
        assertTrue(si(answer, "hottest") >= 40 - 1e-6);
    }
}
