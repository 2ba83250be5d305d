// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.Require;

/** What is to be said of a two-point test of a supply before a curve is drawn through it. */
public enum SupplyTest {
    /** The drop is at least a tenth of the static pressure. */
    USABLE,
    /** The drop is below a tenth of the static pressure: a stiff supply, a wider interval. Accepted with a warning. */
    SMALL_DROP,
    /** Refused: the running pressure is at or above the static one. */
    RUNNING_NOT_BELOW_STATIC,
    /** Refused: the flow of the test is zero or below. */
    FLOW_NOT_POSITIVE;

    /** Smallest drop over static pressure of a test without a warning (practice of NFPA 291). */
    public static final double SMALLEST_DROP_SHARE = 0.1;

    /**
     * Judges a test.
     *
     * @param staticPa pressure with everything shut, Pa, zero or more
     * @param runningPa pressure at the same point while the flow runs, Pa, zero or more
     * @param flowM3PerS the flow, m3/s, finite
     * @throws DomainException outside the ranges
     */
    public static SupplyTest of(double staticPa, double runningPa, double flowM3PerS) {
        Require.notNegative(staticPa, "staticPa");
        Require.notNegative(runningPa, "runningPa");
        if (Require.finite(flowM3PerS, "flowM3PerS") <= 0) {
            return FLOW_NOT_POSITIVE;
        }
        if (runningPa >= staticPa) {
            return RUNNING_NOT_BELOW_STATIC;
        }
        // Compared as sums: a drop of exactly a tenth passes whatever the rounding of a difference.
        return staticPa * (1 - SMALLEST_DROP_SHARE) >= runningPa ? USABLE : SMALL_DROP;
    }

    /** Returns whether a curve may be drawn. */
    public boolean isAccepted() {
        return this == USABLE || this == SMALL_DROP;
    }
}
