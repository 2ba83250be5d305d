// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import twinfeed.model.catalogue.Heater;
import twinfeed.model.usual.UsualValues;

/**
 * How far a heater's real power may lie from its rating. Only what reaches the water follows the real power; the design current is
 * that of the rating, as the wiring rules have it.
 *
 * @param up as a share of the rating above it
 * @param down as a share of the rating below it
 */
record PowerTolerance(double up, double down) {
    /** The tolerance that a heater's instructions state, or else the standard's. */
    static PowerTolerance of(Heater heater) {
        return new PowerTolerance(UsualValues.powerUp(heater), UsualValues.powerDown(heater));
    }

    /**
     * The real power over the rated one.
     *
     * @param deviation 0 at the rating, 1 and -1 at the ends of the tolerance, in proportion between
     */
    double share(double deviation) {
        return 1 + (deviation > 0 ? up : down) * deviation;
    }
}
