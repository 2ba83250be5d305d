// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;

/** Laws of the heat balance, whatever the figures. */
class FlowProperties {
    private static Answer calculate(String name, Map<String, String> typed) {
        Formula formula = new FlowCalculator()
                .descriptor().formulas().stream()
                        .filter(each -> each.name().equals(name))
                        .findFirst()
                        .orElseThrow();
        return formula.apply(Arguments.parse(formula.parameters(), typed));
    }

    private static double flow(double powerKw, double intakeC, double outletC) {
        return calculate("flow", Map.of("power", powerKw + " kW", "intake", intakeC + " °C", "outlet", outletC + " °C"))
                .results()
                .get(0)
                .si();
    }

    @Property(seed = "1")
    void theOutletOfTheFlowIsTheTarget(
            @ForAll @DoubleRange(min = 1, max = 15) double powerKw,
            @ForAll @DoubleRange(min = 0, max = 25) double intakeC,
            @ForAll @DoubleRange(min = 30, max = 60) double outletC) {
        double mass = flow(powerKw, intakeC, outletC);
        Answer outlet = calculate(
                "outlet", Map.of("power", powerKw + " kW", "intake", intakeC + " °C", "mass", mass + " kg/s"));
        assertEquals(outletC, outlet.results().get(0).si(), 1e-6);
    }

    @Property(seed = "2")
    void morePowerOrWarmerIntakeGivesMoreFlow(
            @ForAll @DoubleRange(min = 1, max = 14) double powerKw,
            @ForAll @DoubleRange(min = 0, max = 24) double intakeC) {
        double flow = flow(powerKw, intakeC, 40);
        assertTrue(flow(powerKw + 1, intakeC, 40) > flow);
        assertTrue(flow(powerKw, intakeC + 1, 40) > flow);
    }

    /** Power goes with the square of the voltage, and flow with power. */
    @Property(seed = "3")
    void flowGoesWithTheSquareOfTheVoltage(
            @ForAll @DoubleRange(min = 1, max = 15) double powerKw,
            @ForAll @DoubleRange(min = 200, max = 260) double supplyV) {
        Answer answer = calculate(
                "flow", Map.of("power", powerKw + " kW", "rated", "240 V", "supply", supplyV + " V", "intake", "5 °C"));
        double ratio = supplyV / 240;
        assertEquals(
                flow(powerKw, 5, 40) * ratio * ratio, answer.results().get(0).si(), 1e-12);
    }
}
