// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.model.catalogue.SwitchPlace;

/**
 * What the switch feels in one condition.
 *
 * @param place where the switch is taken to be
 * @param making whether it has to close, rather than to stay closed
 * @param point the condition
 * @param switchPa pressure at the switch, Pa
 * @param limitPa pressure at which it makes or breaks, Pa
 */
public record SwitchState(SwitchPlace place, boolean making, OperatingPoint point, double switchPa, double limitPa) {
    public double marginPa() {
        return switchPa - limitPa;
    }

    /** The one with the smaller margin; the first when equal. */
    public static SwitchState worse(SwitchState first, SwitchState second) {
        return second.marginPa() < first.marginPa() ? second : first;
    }
}
