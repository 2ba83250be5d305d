// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;

/** Plain statistics of draws. */
final class Statistics {
    /** A reading that brings a smaller share of the variance is not worth measuring again. */
    static final double LEAST_SHARE = 1e-3;

    private Statistics() {}

    /** Values in ascending order; the given ones stay as they are. */
    static double[] ordered(double[] values) {
        double[] ordered = values.clone();
        Arrays.sort(ordered);
        return ordered;
    }

    /** A quantile of values in ascending order, linear between the two next to it. */
    static double quantile(double[] ordered, double share) {
        double position = share * (ordered.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, ordered.length - 1);
        return ordered[below] + (position - below) * (ordered[above] - ordered[below]);
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
