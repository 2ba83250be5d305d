// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.List;
import java.util.function.Function;

/** The scales of a chart's two axes, the same on a screen and in a file. */
public final class ChartScales {
    private static final int TICKS = 6;

    private ChartScales() {}

    /**
     * The horizontal one; names stand at equal distances.
     *
     * @param ticks how many there is room for
     */
    public static Scale horizontal(Chart chart, int ticks) {
        if (!chart.labels().isEmpty()) {
            return new Scale(-0.4, chart.labels().size() - 0.6, 1);
        }
        return of(chart, Chart.Curve::x, Math.max(3, Math.min(10, ticks)));
    }

    /** The vertical one. */
    public static Scale vertical(Chart chart) {
        return of(chart, Chart.Curve::y, TICKS);
    }

    private static Scale of(Chart chart, Function<Chart.Curve, List<Double>> values, int ticks) {
        double most = chart.curves().stream()
                .flatMap(curve -> values.apply(curve).stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1);
        double least = chart.curves().stream()
                .flatMap(curve -> values.apply(curve).stream())
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
        return Scale.of(fromZero(least, most), most, ticks);
    }

    /** A scale begins at 0 unless all values are far from it. */
    private static double fromZero(double least, double most) {
        return least > 0 && least < 0.7 * most ? 0 : least;
    }
}
