// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

/**
 * The Colebrook-White equation, x = -2 lg(a + b x) with x = 1/sqrt(f), a = (k/D)/3.7 and b = 2.51/Re, solved to machine
 * precision.
 *
 * <p>Halley's method: each step costs one logarithm and cubes the error, so from the fixed start two or three steps do,
 * and one from the root of a flow nearby.
 */
final class Colebrook {
    /** Divisor of the relative roughness. */
    static final double ROUGHNESS_DIVISOR = 3.7;

    /** Numerator over the Reynolds number. */
    static final double VISCOUS_NUMERATOR = 2.51;

    /** Where the search starts: f = 0.028, usual in house pipes. */
    static final double START = 6;

    private static final double TWO_OVER_LN_10 = 2 / Math.log(10);
    private static final int MOST_STEPS = 20;

    /** A last step of this size leaves an error of some ten-thousandths of its cube, which is below rounding. */
    private static final double LAST_STEP = 1e-4;

    private Colebrook() {}

    /** Returns x = 1/sqrt(f). */
    static double inverseRoot(double a, double b) {
        double x = START;
        for (int step = 0; step < MOST_STEPS; step++) {
            double next = nearer(a, b, x);
            boolean last = Math.abs(next - x) < LAST_STEP;
            x = next;
            if (last) {
                break;
            }
        }
        return x;
    }

    /**
     * Returns x after one of Halley's steps, with g = x + c ln(a + b x) and c = 2/ln 10. Multiplied out, so that it costs one division; the
     * step is at most twice Newton's, because far from the root Halley's overshoots.
     */
    static double nearer(double a, double b, double x) {
        double sum = a + b * x;
        double g = x + TWO_OVER_LN_10 * Math.log(sum);
        double whole = withSlope(sum, b);
        double square = whole * whole;
        return x - 2 * g * sum * whole / Math.max(square, 2 * square + g * TWO_OVER_LN_10 * b * b);
    }

    /** Returns g' (a + b x) for a sum a + b x; the sum over this is how strongly the friction loss follows the flow, over 2 loss/Q. */
    static double withSlope(double sum, double b) {
        return sum + TWO_OVER_LN_10 * b;
    }
}
