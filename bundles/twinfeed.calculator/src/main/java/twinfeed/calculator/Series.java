// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/**
 * A curve for screens and sheets, which draw it and compute nothing.
 *
 * @param key key of its title in the calculator's messages, {@code series.KEY}
 * @param xAxis what the horizontal axis shows
 * @param yAxis what the vertical axis shows
 * @param labels labels of the points where the horizontal axis is not a number, otherwise empty
 * @param x horizontal values in SI, as many as y
 * @param y vertical values in SI
 */
public record Series(String key, Axis xAxis, Axis yAxis, List<String> labels, double[] x, double[] y) {
    /**
     * An axis.
     *
     * @param key key of its title, {@code axis.KEY}
     * @param unit kind of its values, which are in SI, and the unit in which they are shown
     */
    public record Axis(String key, DisplayUnit unit) {
        /** An axis in the unit in which the trade writes a kind. */
        public static Axis of(String key, Kind quantity) {
            return new Axis(key, DisplayUnit.of(quantity));
        }
    }

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
