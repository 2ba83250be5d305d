// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Bracketed root finding.
 *
 * <p>Only brackets: an iteration without one may wander off for a survey that nobody foresaw.
 */
public final class Roots {
    private static final int MOST_EVALUATIONS = 1000;
    private static final int MOST_STEPS = 200;

    /** A Newton step this small leaves an error of the order of its square. */
    private static final double LAST_STEP = 1e-7;

    private static final double NARROWEST = 2e-16;

    private Roots() {}

    /**
     * Returns a root of a continuous function by Brent's method (Hipparchus).
     *
     * @param function the function, finite on the whole bracket
     * @param low lower end of the bracket
     * @param high upper end of the bracket, not below the lower
     * @param absoluteTolerance largest error of the root, positive
     * @return the root, or {@link FailureReason#NO_SIGN_CHANGE} when the function has the same sign at both ends
     * @throws DomainException if an end, the tolerance, or the function at an end is not a number of the range
     */
    public static Solution bracketed(DoubleUnaryOperator function, double low, double high, double absoluteTolerance) {
        Require.within(Require.finite(low, "low"), -Double.MAX_VALUE, Require.finite(high, "high"), "low");
        Require.positive(absoluteTolerance, "absoluteTolerance");
        double atLow = Require.finite(function.applyAsDouble(low), "function(low)");
        double atHigh = Require.finite(function.applyAsDouble(high), "function(high)");
        if (atLow == 0 || atHigh == 0) {
            return Solution.of(atLow == 0 ? low : high);
        }
        if (atLow > 0 == atHigh > 0) {
            return Solution.none(FailureReason.NO_SIGN_CHANGE);
        }
        BrentSolver solver = new BrentSolver(2 * NARROWEST, absoluteTolerance);
        return Solution.of(solver.solve(MOST_EVALUATIONS, function::applyAsDouble, low, high));
    }

    /**
     * Returns the root of a rising function between low (where it is not positive) and high (where it is not negative):
     * Newton steps, and bisection wherever a step would leave the bracket or shrinks too slowly.
     *
     * <p>A function that jumps upward through zero gives the place of the jump. The last evaluation, at most a step of
     * 1e-7 away from the root, is left in {@code at}.
     */
    public static double rising(SlopedFunction function, double low, double high, double guess, SlopedValue at) {
        double from = low;
        double to = high;
        double x = guess > low && guess < high ? guess : low + (high - low) / 2;
        double stepBefore = to - from;
        for (int step = 0; step < MOST_STEPS && to - from > NARROWEST * (Math.abs(from) + Math.abs(to)); step++) {
            function.at(x, at);
            from = at.value <= 0 ? x : from;
            to = at.value >= 0 ? x : to;
            double newton = -at.value / at.slope;
            if (Math.abs(newton) <= LAST_STEP * Math.abs(x)) {
                return Math.min(Math.max(x + newton, from), to);
            }
            boolean good = x + newton > from && x + newton < to && Math.abs(newton) < stepBefore / 2;
            double next = good ? x + newton : from + (to - from) / 2;
            stepBefore = Math.abs(next - x);
            x = next;
        }
        return x;
    }
}
