// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

/** Beyond these a reading is a slip of the pen, and figures from it would mean nothing. */
public final class ReadingLimits {
    /** More than any pipe of a house carries, m3/s. */
    public static final double MAX_FLOW_M3_PER_S = 1;

    /** Longer and higher than any pipe of a house, m. */
    static final double MAX_LENGTH_M = 10_000;

    private ReadingLimits() {}
}
