// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Parameter;
import twinfeed.engineering.water.Scald;
import twinfeed.model.assessment.Supply;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/**
 * How much water at the target temperature the power that reaches the heater gives: in winter, month by month, on the low
 * setting and with an element burnt out; and what is to be said of the temperatures that are asked for and let in.
 *
 * <p>Heat is the difference of enthalpies, not a constant specific heat. Volume is given at the inlet, for the pipes, and at
 * the outlet, for a bucket; the difference is near 1 %.
 */
@Component(service = Calculator.class)
public final class FlowCalculator implements Calculator {
    static final String ID = "flow";

    private static final DisplayUnit FLOW = DisplayUnit.of(Kind.FLOW);

    /** Least flow that still feels like a shower: judgement. */
    static final Parameter LEAST = Parameter.optional("least", Kind.FLOW, FLOW.toSi(3), 0, FLOW.toSi(20));

    /** Outlet temperature above which the quote says so. */
    static final Parameter FLAG = Parameter.optional("flag", Kind.TEMPERATURE, Scald.UNCOMFORTABLE_C, 30, 60);

    /** Outlet temperature from which the warning is strong. */
    static final Parameter STRONG = Parameter.optional("strong", Kind.TEMPERATURE, Scald.FROM_C, 30, 70);

    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(FlowCalculator.class)
            .provides(SharedQuantity.TARGET_FLOW)
            .consumes(SharedQuantity.DELIVERED_POWER)
            .reads(
                    "survey.water",
                    "survey.unit",
                    "survey.customer",
                    "survey.targetOutlet",
                    "survey.winterIntake",
                    "survey.climate",
                    "survey.annualMeanAir",
                    "survey.monthlyAirSpread")
            .supply(Supply.WATER)
            .checks(FlowChecks.ALL)
            .parameters(LEAST, FLAG, STRONG)
            .formulas(FlowFormulas.ALL)
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        return new FlowAssessor(context, TargetOutlet.of(context));
    }
}
