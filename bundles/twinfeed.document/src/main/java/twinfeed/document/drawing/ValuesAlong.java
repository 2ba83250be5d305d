// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.List;
import java.util.Optional;
import twinfeed.calculator.FeedProfile;
import twinfeed.document.Figures;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Series;

/**
 * The values along a supply, point by point, as the findings bring them; the last point is the unit, so that points are counted from
 * there: pipes ahead of the gauge have none.
 */
final class ValuesAlong {
    private final List<List<Double>> curves;
    private final String unit;
    private final Figures figures;

    private ValuesAlong(List<List<Double>> curves, String unit, Figures figures) {
        this.curves = curves;
        this.unit = unit;
        this.figures = figures;
    }

    /** Pressures at rest and while the unit runs. */
    static ValuesAlong pressures(List<Finding> findings, Figures figures) {
        return of(
                findings,
                CheckTopic.RUNNING_PRESSURE,
                List.of(FeedProfile.STATIC_PRESSURE, FeedProfile.RUNNING_PRESSURE),
                figures);
    }

    /** Voltages at full load. */
    static ValuesAlong voltages(List<Finding> findings, Figures figures) {
        return of(findings, CheckTopic.VOLTAGE_DROP, List.of(FeedProfile.VOLTAGE), figures);
    }

    private static ValuesAlong of(List<Finding> findings, CheckTopic topic, List<String> keys, Figures figures) {
        Optional<Finding> about = findings.stream()
                .filter(finding -> finding.isSetTopic() && finding.getTopic() == topic)
                .findFirst();
        List<Series> found = about.stream()
                .flatMap(finding -> finding.getSeries().stream())
                .filter(series -> keys.contains(series.getKey()))
                .toList();
        return found.size() < keys.size()
                ? new ValuesAlong(List.of(), "", figures)
                : new ValuesAlong(
                        found.stream().map(series -> List.copyOf(series.getY())).toList(),
                        found.get(0).getYUnit(),
                        figures);
    }

    /**
     * The value at a point.
     *
     * @param toUnit how many pieces lie between it and the unit
     * @return empty if it is not known
     */
    String at(int toUnit) {
        if (curves.isEmpty()) {
            return "";
        }
        int point = curves.get(0).size() - 1 - toUnit;
        if (point < 0) {
            return "";
        }
        List<String> values =
                curves.stream().map(curve -> figures.number(curve.get(point))).toList();
        return String.join(" / ", values) + " " + unit;
    }
}
