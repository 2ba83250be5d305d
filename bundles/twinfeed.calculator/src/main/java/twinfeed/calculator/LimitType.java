// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/** On which side of its limit a value has to lie. */
public enum LimitType {
    /** At or over the limit; margin is value less limit. */
    AT_LEAST,
    /** At or under the limit; margin is limit less value. */
    AT_MOST,
    /** A figure without a limit. */
    REPORT;

    /**
     * Values that differ from their limit by less than this share of the larger of both lie on it: so much may come from rounding, and
     * no instrument shows it. Every comparison with a limit uses it, in the checks, in the draws and in the workbook's formulas.
     */
    public static final double RELATIVE_SLACK = 1e-9;

    /** What lies closer to a limit of 0 than this, in the unit in which the check is printed, lies on it. */
    public static final double SLACK_AT_ZERO = 1e-12;

    /** The symbol under which a working names the limit that its last line is compared with. */
    public static final String SYMBOL = "lim";

    /** How far a value may lie beyond its limit and still count as on it; in the unit of both. */
    public static double slack(double value, double limit) {
        return slack(value, limit, SLACK_AT_ZERO);
    }

    private static double slack(double value, double limit, double atZero) {
        double larger = Math.max(Math.abs(value), Math.abs(limit));
        // A share of something unlimited would swallow every difference.
        return Double.isInfinite(larger) ? atZero : Math.max(RELATIVE_SLACK * larger, atZero);
    }

    /** Whether a value lies over a limit by more than rounding. */
    public static boolean exceeds(double value, double limit) {
        return value - limit > slack(value, limit);
    }

    /** Whether a value lies under a limit by more than rounding. */
    public static boolean fallsShort(double value, double limit) {
        return limit - value > slack(value, limit);
    }

    /** The margin of a value: 0 or more passes; exactly 0 where value and limit differ by rounding only. */
    public double margin(double value, double limit) {
        return margin(value, limit, SLACK_AT_ZERO);
    }

    /** The same where at a limit of 0 another slack counts: that of another unit. */
    double margin(double value, double limit, double slackAtZero) {
        double difference = this == AT_LEAST ? value - limit : limit - value;
        return Math.abs(difference) <= slack(value, limit, slackAtZero) ? 0 : difference;
    }
}
