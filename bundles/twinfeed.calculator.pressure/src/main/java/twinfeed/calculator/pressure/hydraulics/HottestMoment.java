// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.engineering.heater.TapOpening;
import twinfeed.engineering.numeric.Solution;

/**
 * The hottest moment while a tap opens, in one condition.
 *
 * @param held the unit with its throttle held
 * @param powerW power into the water, W
 * @param opening flows and outlet temperatures
 * @param breakFlow flow at which the switch opens, m3/s
 */
public record HottestMoment(HeldThrottle held, double powerW, TapOpening opening, Solution breakFlow) {
    /** The model of liquid water ends here; the cut-out must have opened long before. */
    private static final double BOILING_C = 100;

    /** Outlet temperature, degC. */
    public double hottestC() {
        return opening.hottestOutlet().orElse(BOILING_C);
    }
}
