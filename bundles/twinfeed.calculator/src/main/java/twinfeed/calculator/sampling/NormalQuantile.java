// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import org.hipparchus.special.Erf;

/** Quantiles of the standard normal distribution. */
final class NormalQuantile {
    private static final double LEAST = 1e-9;

    private NormalQuantile() {}

    /**
     * The quantile.
     *
     * @param probability 0 to 1; the ends give a large but finite value
     */
    static double of(double probability) {
        double inside = Math.min(1 - LEAST, Math.max(LEAST, probability));
        return Math.sqrt(2) * Erf.erfInv(2 * inside - 1);
    }
}
