// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;

/** Plain statistics of draws. */
final class Statistics {
    /** A reading that brings a smaller share of the variance is not worth measuring again. */
    static final double LEAST_SHARE = 1e-3;

    /** Up to so many values are put in their places one by one; more are quicker sorted with all others. */
    private static final int FEW = 100;

    private Statistics() {}

    /**
     * A quantile of values from the lower end, linear between the two next to it.
     *
     * @param values the values in any order; not changed
     * @param share 0 for the least, up to 1 for the largest
     */
    static double quantile(double[] values, double share) {
        double position = share * (values.length - 1);
        int below = (int) position;
        double[] least = least(values, Math.min(below + 2, values.length));
        return least[below] + (position - below) * (least[least.length - 1] - least[below]);
    }

    /** The same from the upper end: with a share of 0.05 the quantile of 0.95. */
    static double upperQuantile(double[] values, double share) {
        double[] opposite = new double[values.length];
        Arrays.setAll(opposite, i -> -values[i]);
        return -quantile(opposite, share);
    }

    /** The least of the values in ascending order. */
    private static double[] least(double[] values, int count) {
        return count <= FEW ? fewLeast(values, count) : Arrays.copyOf(ordered(values), count);
    }

    private static double[] ordered(double[] values) {
        double[] ordered = values.clone();
        Arrays.sort(ordered);
        return ordered;
    }

    private static double[] fewLeast(double[] values, int count) {
        double[] kept = new double[count];
        Arrays.fill(kept, Double.POSITIVE_INFINITY);
        for (double value : values) {
            if (value < kept[count - 1]) {
                int place = count - 1;
                while (place > 0 && value < kept[place - 1]) {
                    kept[place] = kept[place - 1];
                    place--;
                }
                kept[place] = value;
            }
        }
        return kept;
    }

    /** The square of the correlation of two rows of values, the second of which gives their number; 0 where either does not vary. */
    static double correlationSquared(double[] x, double[] y) {
        double meanX = mean(x, y.length);
        double meanY = mean(y, y.length);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < y.length; i++) {
            double dx = x[i] - meanX;
            double dy = y[i] - meanY;
            xy += dx * dy;
            xx += dx * dx;
            yy += dy * dy;
        }
        return xx == 0 || yy < 1e-24 ? 0 : xy * xy / (xx * yy);
    }

    /** A plain sum: this runs for every check with every reading, and rounding does not matter here. */
    private static double mean(double[] values, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += values[i];
        }
        return sum / count;
    }
}
