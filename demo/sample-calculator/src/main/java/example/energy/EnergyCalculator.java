// SPDX-License-Identifier: EPL-2.0
package example.energy;

import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.formula.Parameter;
import twinfeed.units.Kind;

/** How much energy one shower takes. */
public final class EnergyCalculator implements Calculator {
    private static final Check ENERGY = Check.report("energy.shower", Kind.ENERGY, "heater.power");
    private static final Parameter DURATION = Parameter.optional("duration", Kind.DURATION, 480, 60, 3600);

    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(EnergyCalculator.class)
            .checks(ENERGY)
            .parameters(DURATION)
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        double seconds = context.parameters().si("duration");
        return (candidate, shared, findings) -> {
            if (!findings.blocked(ENERGY)) {
                double joules = candidate.heater().getPower().si() * seconds;
                findings.on(ENERGY)
                        .report(joules)
                        .argument("minutes", seconds / 60)
                        .add();
            }
        };
    }
}
