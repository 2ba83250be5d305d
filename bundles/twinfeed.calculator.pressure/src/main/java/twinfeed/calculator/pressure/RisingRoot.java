// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * The root of a function that rises at least as fast as its argument: how much more is drawn than is taken. The secant through
 * the last two points, and halving whenever a step would leave the bracket. Five or six steps where a general search takes
 * twice as many; it matters because a sweep over all conditions asks thousands of times.
 *
 * @param x the root
 * @param state what was worked out there
 */
record RisingRoot<T>(double x, T state) {
    private static final int MOST_STEPS = 100;

    /** The next error is of the order of the product of the last two. */
    private static final double LAST_STEP = 1e-8;

    /** Usual slope with taps open; only for the second guess. */
    private static final double USUAL_SLOPE = 4;

    /**
     * Finds the root.
     *
     * @param evaluate what holds at an argument
     * @param excess the function's value of that
     * @param low where the function is not positive, 0 or more
     * @param guess a first guess above that
     */
    static <T> RisingRoot<T> of(DoubleFunction<T> evaluate, ToDoubleFunction<T> excess, double low, double guess) {
        double lastX = guess;
        T state = evaluate.apply(guess);
        double last = excess.applyAsDouble(state);
        // The slope is at least 1, so the root is no further off than what is lacking or too much.
        double from = last > 0 ? Math.max(low, guess - last) : guess;
        double to = last > 0 ? guess : guess - last;
        double x = Math.max(low, guess - last / USUAL_SLOPE);
        for (int step = 0; step < MOST_STEPS && last != 0; step++) {
            state = evaluate.apply(x);
            double value = excess.applyAsDouble(state);
            from = value <= 0 ? x : from;
            to = value >= 0 ? x : to;
            double next = x - value * (x - lastX) / (value - last);
            boolean inside = next >= from && next <= to;
            if (value == 0 || (inside && Math.abs(next - x) <= LAST_STEP * x)) {
                double root = inside ? next : x;
                return new RisingRoot<>(root, evaluate.apply(root));
            }
            if (to - from <= 4e-16 * to) {
                break;
            }
            lastX = x;
            last = value;
            x = inside ? next : from + (to - from) / 2;
        }
        return new RisingRoot<>(x, state);
    }
}
