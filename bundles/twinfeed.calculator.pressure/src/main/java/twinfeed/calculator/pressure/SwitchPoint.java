// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

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
record SwitchPoint(SwitchPlace place, boolean making, FlowPoint point, double switchPa, double limitPa) {
    double marginPa() {
        return switchPa - limitPa;
    }

    /** The one with the smaller margin; the first when equal. */
    static SwitchPoint worse(SwitchPoint first, SwitchPoint second) {
        return second.marginPa() < first.marginPa() ? second : first;
    }
}
