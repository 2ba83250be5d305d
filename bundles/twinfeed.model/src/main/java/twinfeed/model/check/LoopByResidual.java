// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import twinfeed.model.assessment.Finding;

/**
 * Loops that only a residual-current device disconnects in time. They pass up to more than a thousand ohm, which a supply whose earth is lost does
 * not exceed either: their limit is no limit for a reading.
 */
public final class LoopByResidual {
    /** A larger limit is 50 V over the residual current of the device: no breaker or fuse of a shower has one, and no cold reading comes near it. */
    private static final double LIMIT_OHM = 20;

    private LoopByResidual() {}

    /** Whether the loop of a finding was held against the residual-current device. */
    public static boolean is(Finding loop) {
        return loop.getLimit() != null && loop.getLimit() > LIMIT_OHM;
    }
}
