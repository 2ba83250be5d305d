// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.quick;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What follows from a quick question.
 *
 * @param lines the answers in order, the one asked for first
 * @param trouble why there is none, or not all of them; null if nothing is lacking
 */
public record QuickAnswer(List<Line> lines, @Nullable String trouble) {
    /**
     * One answer.
     *
     * @param label what it is
     * @param text the value with its unit, or words
     */
    public record Line(String label, String text) {}

    public QuickAnswer {
        lines = List.copyOf(lines);
    }
}
