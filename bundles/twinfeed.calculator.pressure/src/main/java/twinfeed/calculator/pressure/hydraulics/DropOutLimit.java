// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

/**
 * How much others may draw before the heat goes off in one way, in the condition that is worst for it.
 *
 * @param way how the heat is switched off
 * @param held the unit with its throttle held
 * @param breakFlow flow through the unit at which that happens, m3/s
 * @param drawOff draw-off of others at which it happens, m3/s
 */
public record DropOutLimit(Way way, HeldThrottle held, Solution breakFlow, Solution drawOff) {
    /** How the heat is switched off. */
    public enum Way {
        /** By a flow. */
        FLOW,
        /** By a pressure ahead of the throttle. */
        INLET,
        /** By a pressure behind it. */
        HEATING
    }

    /** The draw-off, m3/s: 0 where the heat is off before anything is drawn, unlimited where nothing switches it off. */
    public double value() {
        return drawOff.isPresent()
                ? drawOff.value()
                : (drawOff.trouble() == FailureReason.NEVER_REACHED ? Double.POSITIVE_INFINITY : 0);
    }
}
