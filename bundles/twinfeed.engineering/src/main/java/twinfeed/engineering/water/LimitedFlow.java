// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * The outlet of a heater whose target flow may be more than the supply gives: warm water in summer wants a large flow, and
 * with less of it the outlet runs hot and wears the cut-out.
 *
 * @param targetM3PerS flow for the target temperature, volume at the inlet, m3/s, or why there is none
 * @param flowM3PerS flow that runs: the target flow, or the available one when that is less or there is no target, m3/s
 * @param limited whether the available flow is below the target flow
 * @param outlet outlet temperature at the flow that runs, degC, or why there is none
 */
public record LimitedFlow(Solution targetM3PerS, double flowM3PerS, boolean limited, Solution outlet) {
    /** Checks the range. */
    public LimitedFlow {
        Require.notNegative(flowM3PerS, "flowM3PerS");
    }

    /**
     * Returns the flow that runs and its outlet temperature.
     *
     * @param powerW power into the water, W, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param targetOutletC target outlet temperature, 0..100 degC
     * @param availableM3PerS largest flow through the unit, volume at the inlet, m3/s, zero or more
     * @throws DomainException outside the ranges
     */
    public static LimitedFlow of(double powerW, double intakeC, double targetOutletC, double availableM3PerS) {
        Require.notNegative(availableM3PerS, "availableM3PerS");
        Solution target = Heat.massFlowForOutlet(powerW, intakeC, targetOutletC)
                .map(mass -> Heat.volumeFlowAtInlet(mass, intakeC));
        double flow = Math.min(availableM3PerS, target.orElse(availableM3PerS));
        Solution outlet = Heat.outletTemperature(powerW, intakeC, Heat.massFlow(flow, intakeC));
        return new LimitedFlow(target, flow, target.isPresent() && availableM3PerS < target.value(), outlet);
    }
}
