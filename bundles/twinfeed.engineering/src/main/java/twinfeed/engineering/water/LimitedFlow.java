// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * The outlet of a heater whose wished flow may be more than the supply gives: warm water in summer wants a large flow, and
 * with less of it the outlet runs hot and wears the cut-out.
 *
 * @param wishedM3PerS flow for the wished outlet, volume at the inlet, m3/s, or why there is none
 * @param flowM3PerS flow that runs: the wished one, or the available one when that is less or none is wished, m3/s
 * @param limited whether the available flow is below the wished one
 * @param outlet outlet temperature at the flow that runs, degC, or why there is none
 */
public record LimitedFlow(Solution wishedM3PerS, double flowM3PerS, boolean limited, Solution outlet) {
    /** Checks the range. */
    public LimitedFlow {
        Require.notNegative(flowM3PerS, "flowM3PerS");
    }

    /**
     * Returns the flow that runs and its outlet temperature.
     *
     * @param powerW power into the water, W, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param wishedOutletC wished outlet temperature, 0..100 degC
     * @param availableM3PerS largest flow through the unit, volume at the inlet, m3/s, zero or more
     * @throws DomainException outside the ranges
     */
    public static LimitedFlow of(double powerW, double intakeC, double wishedOutletC, double availableM3PerS) {
        Require.notNegative(availableM3PerS, "availableM3PerS");
        Solution wished = Heat.massFlowForOutlet(powerW, intakeC, wishedOutletC)
                .map(mass -> Heat.volumeFlowAtInlet(mass, intakeC));
        double flow = Math.min(availableM3PerS, wished.orElse(availableM3PerS));
        Solution outlet = Heat.outletTemperature(powerW, intakeC, Heat.massFlow(flow, intakeC));
        return new LimitedFlow(wished, flow, wished.isPresent() && availableM3PerS < wished.value(), outlet);
    }
}
