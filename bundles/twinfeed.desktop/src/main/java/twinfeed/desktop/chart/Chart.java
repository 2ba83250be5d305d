// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Series;

/**
 * Curves over the same two axes, as the findings carry them.
 *
 * @param title what it shows
 * @param xTitle the horizontal axis, with its unit
 * @param yTitle the vertical axis, with its unit
 * @param labels names of the points where the horizontal axis is not a number, otherwise empty
 * @param curves the curves, one or more
 */
public record Chart(String title, String xTitle, String yTitle, List<String> labels, List<Curve> curves) {
    /**
     * A curve; a single point is one, too.
     *
     * @param title its name
     * @param x horizontal values
     * @param y vertical values, as many
     */
    public record Curve(String title, List<Double> x, List<Double> y) {
        public Curve {
            x = List.copyOf(x);
            y = List.copyOf(y);
        }
    }

    private static final int MONTHS = 12;

    private record Axes(String x, String y, boolean labelled) {}

    public Chart {
        labels = List.copyOf(labels);
        curves = List.copyOf(curves);
    }

    /** The charts of an option: curves over the same axes share one, and the same curve of several findings is there once. */
    public static List<Chart> of(@Nullable OptionAssessment option) {
        Map<Axes, Map<String, Series>> byAxes = new LinkedHashMap<>();
        Map<Axes, String> titles = new LinkedHashMap<>();
        for (Finding finding : option == null ? List.<Finding>of() : option.getFindings()) {
            for (Series series : finding.getSeries()) {
                if (!series.getX().isEmpty()) {
                    Axes axes = new Axes(
                            axis(series.getXTitle(), series.getXUnit()),
                            axis(series.getYTitle(), series.getYUnit()),
                            !series.getLabels().isEmpty());
                    titles.putIfAbsent(axes, finding.getTitle());
                    byAxes.computeIfAbsent(axes, each -> new LinkedHashMap<>()).putIfAbsent(series.getKey(), series);
                }
            }
        }
        List<Chart> charts = new ArrayList<>();
        byAxes.forEach(
                (axes, series) -> charts.add(chart(titles.getOrDefault(axes, ""), axes, List.copyOf(series.values()))));
        // What tells most comes first: the year, then curves that are to be compared, then single ones.
        charts.sort(Comparator.comparingInt(Chart::rank));
        return charts;
    }

    private int rank() {
        return labels.size() == MONTHS ? 0 : curves.size() > 1 ? 1 : 2;
    }

    private static Chart chart(String title, Axes axes, List<Series> series) {
        return new Chart(
                title,
                axes.x,
                axes.y,
                axes.labelled ? series.get(0).getLabels() : List.of(),
                series.stream()
                        .map(each -> new Curve(each.getTitle(), each.getX(), each.getY()))
                        .toList());
    }

    private static String axis(@Nullable String title, @Nullable String unit) {
        String name = title == null ? "" : title;
        return unit == null || unit.isEmpty() ? name : name + ", " + unit;
    }

    /** Place of a point along the horizontal axis: points with names stand at equal distances. */
    double x(Curve curve, int index) {
        return labels.isEmpty() ? curve.x().get(index) : index;
    }
}
