// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Step;

/**
 * Workings that are the same for several heaters, because they only ask about the house: written once, so that an input stands in one
 * cell and a change is followed for all of them.
 */
final class SharedWorkings {
    /**
     * A working that is written.
     *
     * @param option title of the option under which it stands
     * @param row number of its first row
     * @param cells its cells
     */
    record Written(String option, int row, WorkingCells cells) {}

    private record Line(String symbol, double value, @Nullable String unit, @Nullable String expression) {
        static Line of(Step step) {
            double value = step.getValue() == null ? 0 : step.getValue();
            return new Line(step.getSymbol(), value, step.getUnit(), step.getExpression());
        }
    }

    private record Working(String check, List<Line> lines) {
        static Working of(Finding finding) {
            return new Working(
                    finding.getKey(), finding.getSteps().stream().map(Line::of).toList());
        }
    }

    private final Map<Working, Written> written = new HashMap<>();

    /** The same working of another option, if there is one. */
    @Nullable
    Written find(Finding finding) {
        return written.get(Working.of(finding));
    }

    void add(Finding finding, Written place) {
        written.put(Working.of(finding), place);
    }
}
