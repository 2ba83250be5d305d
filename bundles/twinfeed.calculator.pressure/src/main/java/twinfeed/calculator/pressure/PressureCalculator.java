// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.pressure.check.PressureChecks;
import twinfeed.calculator.pressure.formula.PressureFormulas;
import twinfeed.calculator.pressure.remedy.WaterRemedyKinds;
import twinfeed.engineering.water.Scald;
import twinfeed.model.assessment.Supply;
import twinfeed.units.Kind;

/**
 * What the water feed leaves at a heater: enough pressure while it runs, enough at its switch in the worst condition, not too
 * much when all is shut; what an open tap does to it; and where the pressure is lost, so that the work is done there.
 */
@Component(service = Calculator.class)
public final class PressureCalculator implements Calculator {
    static final String ID = "pressure";

    private static final List<Parameter> PARAMETERS = List.of(
            Parameter.optional("peak", Kind.RATIO, 0.2, 0, 0.9),
            Parameter.optional("reduced", Kind.PRESSURE, 3e5, 0.5e5, 10e5),
            Parameter.optional("hottest", Kind.TEMPERATURE, 55, 41, 70),
            Parameter.optional("hottest-frail", Kind.TEMPERATURE, Scald.FROM_C, 41, 70),
            Parameter.optional("cut-out-delay", Kind.DURATION, 5, 0, 60),
            Parameter.optional("table-losses", Kind.RATIO, 1, 0.1, 10),
            Parameter.optional("table-roughness", Kind.RATIO, 1, 0.1, 10),
            Parameter.optional("table-bores", Kind.RATIO, 1, 0.8, 1.2),
            Parameter.optional("strong", Kind.TEMPERATURE, Scald.FROM_C, 30, 70));

    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(PressureCalculator.class)
            .provides(SharedQuantity.SWITCH_MARGIN)
            .consumes(SharedQuantity.TARGET_FLOW, SharedQuantity.DELIVERED_POWER)
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
            .checks(PressureChecks.ALL)
            .remedies(WaterRemedyKinds.ALL)
            .parameters(PARAMETERS)
            .formulas(PressureFormulas.ALL)
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        return new PressureAssessor(context);
    }
}
