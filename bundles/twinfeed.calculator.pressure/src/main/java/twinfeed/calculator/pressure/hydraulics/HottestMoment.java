// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.engineering.heater.TapOpening;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Water;

/**
 * The hottest moment while a tap opens, in one condition.
 *
 * @param held the unit with its throttle held
 * @param powerW power into the water, W
 * @param opening flows and outlet temperatures
 * @param breakFlow flow at which the switch opens, m3/s
 */
public record HottestMoment(HeldThrottle held, double powerW, TapOpening opening, Solution breakFlow) {
    /** Outlet temperature, degC. */
    public double hottestC() {
        return opening.hottestOutlet().orElse(Water.HIGHEST_C);
    }
}
