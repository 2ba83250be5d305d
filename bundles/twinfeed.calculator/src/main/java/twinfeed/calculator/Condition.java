// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import org.jspecify.annotations.Nullable;

/**
 * The condition under which a figure holds; parts that do not matter are absent.
 *
 * @param intake intake temperature with its month
 * @param voltageV voltage at the origin, V
 * @param drawOff taps that are open
 * @param subject name of the piece that governs, for example a cable segment, as the survey calls it
 */
public record Condition(
        @Nullable Intake intake, @Nullable Double voltageV, @Nullable DrawOffState drawOff, @Nullable String subject) {
    /** No condition. */
    public static final Condition NONE = new Condition(null, null, null, null);

    /** Only a piece. */
    public static Condition of(String subject) {
        return new Condition(null, null, null, subject);
    }

    /** A point of the grid. */
    public static Condition of(@Nullable Intake intake, @Nullable Double voltageV, @Nullable DrawOffState drawOff) {
        return new Condition(intake, voltageV, drawOff, null);
    }
}
