// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * Keys of the curves that run along a supply, point by point in the order of the survey's pieces: the first point is the place from
 * which the calculator counts, each further one the far end of a piece, the last one the unit. The horizontal values are metres of
 * pipe or cable from the first point, the labels the names of the pieces. Drawings of the house find the finding by its topic and the
 * curve by one of these keys, so that any calculator can give it.
 */
public final class FeedProfile {
    /** Pressure along the pipes with no flow, given with the finding about the running pressure. */
    public static final String STATIC_PRESSURE = "profile.staticPressure";

    /** Pressure along the pipes while the unit runs, given with the finding about the running pressure; it ends in its value. */
    public static final String RUNNING_PRESSURE = "profile.runningPressure";

    /** Voltage along the cable at the design current, given with the finding about the voltage drop. */
    public static final String VOLTAGE = "profile.voltage";

    /** Label of the first point; readers see a word of their language in its place. */
    public static final String START = "";

    private static final String PREFIX = "profile.";

    private FeedProfile() {}

    /** Whether a curve runs along a supply. */
    public static boolean is(String key) {
        return key.startsWith(PREFIX);
    }
}
