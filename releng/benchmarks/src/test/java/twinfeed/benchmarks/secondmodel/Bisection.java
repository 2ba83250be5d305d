// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import java.util.function.DoubleUnaryOperator;

/** The root of a rising function by halving, until nothing is left of the interval: slow, and hard to get wrong. */
final class Bisection {
    private Bisection() {}

    /**
     * Where a rising function crosses 0.
     *
     * @param rising the function; the nearer end where it does not cross 0 in between
     */
    static double root(DoubleUnaryOperator rising, double low, double high) {
        double from = low;
        double to = high;
        for (int i = 0; i < 100 && from < to; i++) {
            double middle = (from + to) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                from = middle;
            } else {
                to = middle;
            }
            if (to - from <= 1e-12 * Math.abs(to)) {
                break;
            }
        }
        return (from + to) / 2;
    }
}
