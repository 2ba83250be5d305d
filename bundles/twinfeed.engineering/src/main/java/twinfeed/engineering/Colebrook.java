// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/**
 * The Colebrook-White equation, x = -2 lg(a + b x) with x = 1/sqrt(f), a = (k/D)/3.7 and b = 2.51/Re, solved to machine
 * precision.
 *
 * <p>Halley's method: each step costs one logarithm and cubes the error, so from the fixed start two or three steps do.
 */
final class Colebrook {
    /** Divisor of the relative roughness. */
    static final double ROUGHNESS_DIVISOR = 3.7;

    /** Numerator over the Reynolds number. */
    static final double VISCOUS_NUMERATOR = 2.51;

    private static final double TWO_OVER_LN_10 = 2 / Math.log(10);
    private static final double START = 6;
    private static final int MOST_STEPS = 20;

    /** A last step of this size leaves an error of the order of its cube, far below rounding. */
    private static final double LAST_STEP = 1e-6;

    private Colebrook() {}

    /** Returns x = 1/sqrt(f). */
    static double inverseRoot(double a, double b) {
        double x = START;
        for (int step = 0; step < MOST_STEPS; step++) {
            double sum = a + b * x;
            double u = TWO_OVER_LN_10 * b / sum;
            double newton = (x + TWO_OVER_LN_10 * Math.log(sum)) / (1 + u);
            // g'' / (2 g') = -(u^2 / c) / (2 (1 + u)) with c = 2/ln 10; bounded, because far from the root Halley
            // overshoots
            double change = newton / Math.max(0.5, 1 + newton * u * u / (2 * TWO_OVER_LN_10 * (1 + u)));
            x -= change;
            if (Math.abs(change) < LAST_STEP) {
                break;
            }
        }
        return x;
    }

    /** Returns how strongly x follows b, b/x dx/db with reversed sign: 0 (rough) to about 0.3 (smooth, slow). */
    static double viscousShare(double a, double b, double x) {
        double u = TWO_OVER_LN_10 * b / (a + b * x);
        return u / (1 + u);
    }
}
