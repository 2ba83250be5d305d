// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * What a shower does while a tap opens elsewhere.
 *
 * @param flowBeforeM3PerS flow through the unit with the tap shut, m3/s
 * @param flowAfterM3PerS flow through the unit with the tap open, before the switch is asked, m3/s
 * @param switchOpens whether the pressure switch opens on the way, so that the shower goes cold
 * @param hottestFlowM3PerS the smallest flow that is still heated on the way, m3/s
 * @param hottestOutlet the outlet temperature at that flow, degC, or why there is none
 */
public record TapOpening(
        double flowBeforeM3PerS,
        double flowAfterM3PerS,
        boolean switchOpens,
        double hottestFlowM3PerS,
        Solution hottestOutlet) {
    /** Checks the ranges. */
    public TapOpening {
        Require.notNegative(flowBeforeM3PerS, "flowBeforeM3PerS");
        Require.notNegative(flowAfterM3PerS, "flowAfterM3PerS");
        Require.notNegative(hottestFlowM3PerS, "hottestFlowM3PerS");
    }
}
