// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Ratio;

/**
 * How far a heater's real power may lie from its rating. Only what reaches the water follows the real power; the design current is
 * that of the rating, as the wiring rules have it.
 *
 * @param up as a share of the rating above it
 * @param down as a share of the rating below it
 */
record PowerTolerance(double up, double down) {
    /** Above the rating where the instructions do not say: EN 60335-1, heating appliances over 200 W (memory). */
    private static final double USUAL_UP = 0.05;

    /** Below it: the same place. */
    private static final double USUAL_DOWN = 0.10;

    /** More than any heater is off. */
    private static final double MOST = 0.5;

    /** The tolerance that a heater's instructions state, or else the standard's. */
    static PowerTolerance of(Heater heater) {
        return new PowerTolerance(
                of(heater.getPowerToleranceUp(), USUAL_UP), of(heater.getPowerToleranceDown(), USUAL_DOWN));
    }

    private static double of(@Nullable Ratio stated, double usual) {
        return stated == null || !(stated.si() >= 0 && stated.si() <= MOST) ? usual : stated.si();
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
