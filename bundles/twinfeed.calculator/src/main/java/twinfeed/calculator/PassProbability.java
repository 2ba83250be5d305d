// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * How sure a finding is, given the tolerances of the readings. The interval of the margin is worked out when somebody first asks for it: a
 * search for works and a list of dwellings ask for few of them. Thread-safe.
 */
public final class PassProbability {
    /** Below this chance a check counts as failing, above one less it as passing; in between it is too close to call. */
    public static final double DOUBT = 0.05;

    private final double passes;
    private @Nullable Supplier<MarginInterval> asked;
    private MarginInterval interval = MarginInterval.NONE;

    /**
     * A chance whose interval is worked out when asked for.
     *
     * @param passes chance that the check passes, 0 to 1
     * @param interval works out the interval of the margin, the same each time
     */
    public PassProbability(double passes, Supplier<MarginInterval> interval) {
        this.passes = passes;
        this.asked = interval;
    }

    /** A chance with its interval. */
    public PassProbability(double passes, MarginInterval interval) {
        this.passes = passes;
        this.interval = interval;
    }

    /** Chance that the check passes, 0 to 1. */
    public double passes() {
        return passes;
    }

    /** The interval of the margin. */
    public synchronized MarginInterval interval() {
        Supplier<MarginInterval> works = asked;
        if (works != null) {
            interval = works.get();
            asked = null;
        }
        return interval;
    }

    /** Whether the outcome is too close to call. */
    public boolean tooClose() {
        return passes > DOUBT && passes < 1 - DOUBT;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PassProbability chance
                && passes == chance.passes
                && interval().equals(chance.interval());
    }

    @Override
    public int hashCode() {
        return Double.hashCode(passes);
    }

    @Override
    public String toString() {
        return "passes " + passes + ", " + interval();
    }
}
