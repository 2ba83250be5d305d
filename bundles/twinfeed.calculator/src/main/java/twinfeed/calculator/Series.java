// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;

/**
 * A curve for screens and sheets, which draw it and compute nothing.
 *
 * @param key key of its title in the calculator's messages, {@code series.KEY}
 * @param xAxis what the horizontal axis shows
 * @param yAxis what the vertical axis shows
 * @param labels labels of the points where the horizontal axis is not a number, otherwise empty
 * @param x horizontal values, as many as y
 * @param y vertical values
 */
public record Series(String key, Axis xAxis, Axis yAxis, List<String> labels, double[] x, double[] y) {
    /**
     * An axis.
     *
     * @param key key of its title, {@code axis.KEY}
     * @param unit unit as printed
     */
    public record Axis(String key, String unit) {}

    public Series {
        if (x.length != y.length || (!labels.isEmpty() && labels.size() != x.length)) {
            throw new IllegalArgumentException("a series has as many x as y and labels");
        }
        labels = List.copyOf(labels);
        x = x.clone();
        y = y.clone();
    }

    @Override
    public double[] x() {
        return x.clone();
    }

    @Override
    public double[] y() {
        return y.clone();
    }
}
