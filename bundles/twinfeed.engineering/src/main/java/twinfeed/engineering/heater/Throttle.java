// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.water.Heat;

/**
 * The user's throttle, which stays where it is while the pressure changes.
 *
 * <p>Above the pressure at which the switch opens, less flow means hotter water: the hottest moment comes just before the
 * switch opens, or with the tap fully open when it does not.
 */
public final class Throttle {
    private Throttle() {}

    /**
     * Returns the unit with its throttle held as it stands: an outlet through the present flow and pressure.
     *
     * @param flowM3PerS present flow, m3/s, positive
     * @param inletPressurePa present pressure at the unit's inlet, Pa, above the back pressure
     * @param backPressurePa height of the handset above the inlet as a pressure, Pa; zero when not known
     */
    public static Outlet held(double flowM3PerS, double inletPressurePa, double backPressurePa) {
        return Outlet.ofPoint(flowM3PerS, inletPressurePa, backPressurePa);
    }

    /**
     * Returns the flow, m3/s, through a held throttle when the pressure across it changes: Q sqrt(ratio).
     *
     * @param flowM3PerS flow before, m3/s, zero or more
     * @param pressureRatio pressure across it after, over before, zero or more
     */
    public static double flowAtRatio(double flowM3PerS, double pressureRatio) {
        return Require.result(Require.notNegative(flowM3PerS, "flowM3PerS")
                * Math.sqrt(Require.notNegative(pressureRatio, "pressureRatio")));
    }

    /**
     * Returns what happens while the flow through the unit goes from one value down to another.
     *
     * @param powerW power into the water, W, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param flowBeforeM3PerS flow with the tap shut, volume at the inlet, m3/s, positive
     * @param flowAfterM3PerS flow with the tap open, m3/s, zero or more
     * @param flowAtBreak flow at which the switch opens (see {@link SwitchMargin}), or why there is none: then it stays
     *     made throughout
     */
    public static TapOpening whileTapOpens(
            double powerW, double intakeC, double flowBeforeM3PerS, double flowAfterM3PerS, Solution flowAtBreak) {
        Require.positive(flowBeforeM3PerS, "flowBeforeM3PerS");
        Require.notNegative(flowAfterM3PerS, "flowAfterM3PerS");
        double breakFlow = flowAtBreak.orElse(0);
        boolean opens = flowAtBreak.isPresent() && flowAfterM3PerS < breakFlow;
        double smallest = Math.min(flowBeforeM3PerS, Math.max(flowAfterM3PerS, breakFlow));
        Solution hottest = Heat.outletTemperature(powerW, intakeC, Heat.massFlow(smallest, intakeC));
        return new TapOpening(flowBeforeM3PerS, flowAfterM3PerS, opens, smallest, hottest);
    }

    /**
     * Returns the pressure at the inlet, Pa, that a unit needs for a flow: what is after the throttle, plus the
     * throttle's own least difference.
     *
     * @param downstream what is after the throttle: heating chamber, hose, handset and its height
     * @param leastDifferencePa least pressure difference of the throttle or stabiliser, Pa, zero or more
     * @param flowM3PerS flow, m3/s, zero or more
     */
    public static double neededInletPressurePa(Outlet downstream, double leastDifferencePa, double flowM3PerS) {
        return Require.result(
                downstream.pressureAt(flowM3PerS) + Require.notNegative(leastDifferencePa, "leastDifferencePa"));
    }
}
