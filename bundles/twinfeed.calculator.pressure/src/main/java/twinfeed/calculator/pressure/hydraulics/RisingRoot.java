// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

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

    private static final double NARROWEST = 4e-16;

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
        T first = evaluate.apply(guess);
        double last = excess.applyAsDouble(first);
        if (last == 0) {
            return new RisingRoot<>(guess, first);
        }
        // The slope is at least 1, so the root is no further off than what is lacking or too much.
        double from = last > 0 ? Math.max(low, guess - last) : guess;
        double to = last > 0 ? guess : guess - last;
        return secant(evaluate, excess, new Bracket(from, to, guess, last), Math.max(low, guess - last / USUAL_SLOPE));
    }

    /** Where the root lies, and the last point. */
    private record Bracket(double from, double to, double lastX, double last) {
        Bracket narrowed(double x, double value) {
            return new Bracket(value <= 0 ? x : from, value >= 0 ? x : to, x, value);
        }

        double next(double x, double value) {
            return x - value * (x - lastX) / (value - last);
        }
    }

    private static <T> RisingRoot<T> secant(
            DoubleFunction<T> evaluate, ToDoubleFunction<T> excess, Bracket start, double second) {
        Bracket bracket = start;
        double x = second;
        for (int step = 0; step < MOST_STEPS; step++) {
            double value = excess.applyAsDouble(evaluate.apply(x));
            double next = bracket.next(x, value);
            bracket = bracket.narrowed(x, value);
            boolean inside = next >= bracket.from && next <= bracket.to;
            if (value == 0 || bracket.to - bracket.from <= NARROWEST * bracket.to) {
                break;
            }
            boolean last = inside && Math.abs(next - x) <= LAST_STEP * x;
            x = inside ? next : bracket.from + (bracket.to - bracket.from) / 2;
            if (last) {
                break;
            }
        }
        return new RisingRoot<>(x, evaluate.apply(x));
    }
}
