// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import twinfeed.engineering.numeric.Require;

/**
 * The pressures of a unit's switch, from its data or from a measurement.
 *
 * @param makePa pressure above which it closes, Pa, not below the break pressure
 * @param breakPa pressure below which it opens, Pa, zero or more
 */
public record PressureSwitch(double makePa, double breakPa) {
    /** Checks the ranges. */
    public PressureSwitch {
        Require.notNegative(breakPa, "breakPa");
        Require.within(makePa, breakPa, Double.MAX_VALUE, "makePa");
    }
}
