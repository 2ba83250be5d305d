// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.drawing.Mark;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;

/**
 * A margin with its interval on a common scale: as a share of its limit.
 *
 * @param title the check
 * @param mark its answer
 * @param share the margin
 * @param low 5 % quantile; the margin itself where tolerances were not counted
 * @param high 95 % quantile; likewise
 * @param text the margin in its unit
 * @param interval the interval in its unit; empty without one
 */
public record MarginRow(String title, Mark mark, double share, double low, double high, String text, String interval) {

    /** The margins of an option, in the order of its findings; figures without a limit have none. */
    public static List<MarginRow> of(@Nullable OptionAssessment option, Words words) {
        List<MarginRow> rows = new ArrayList<>();
        for (Finding finding : option == null ? List.<Finding>of() : option.getFindings()) {
            Double margin = finding.getMargin();
            Double limit = finding.getLimit();
            if (margin != null && limit != null && limit != 0) {
                rows.add(of(finding, margin, Math.abs(limit), words));
            }
        }
        return rows;
    }

    private static MarginRow of(Finding finding, double margin, double limit, Words words) {
        Figures figures = new Figures(words.locale());
        boolean counted = finding.getLow() != null && finding.getHigh() != null;
        String unit = finding.getUnit();
        String interval = !counted
                ? ""
                : words.format(
                        "chart.interval",
                        Map.of(
                                "low", figures.margin(finding.getLow(), limit, null),
                                "high", figures.margin(finding.getHigh(), limit, unit)));
        return new MarginRow(
                finding.getTitle(),
                Mark.of(finding, words.locale()),
                margin / limit,
                (counted ? finding.getLow() : margin) / limit,
                (counted ? finding.getHigh() : margin) / limit,
                figures.margin(margin, limit, unit),
                interval);
    }

    /** All of it in a sentence, for screen readers. */
    public String sentence() {
        return title + ": " + mark.word() + ", " + text + (interval.isEmpty() ? "" : " (" + interval + ")");
    }
}
