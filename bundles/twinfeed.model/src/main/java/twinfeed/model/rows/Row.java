// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.util.List;

/**
 * One row of a list as text, whatever file it comes from: numbers with a decimal point and no grouping, days as YYYY-MM-DD.
 *
 * @param number where the file shows it, from 1; of a row over several lines the first
 * @param cells its cells in order, without spaces around them
 */
public record Row(int number, List<String> cells) {
    public Row {
        cells = cells.stream().map(String::strip).toList();
    }

    /** Whether nothing is written in it. */
    public boolean blank() {
        return cells.stream().allMatch(String::isEmpty);
    }

    /** Whether it is a head line or a remark. */
    public boolean head() {
        return !cells.isEmpty() && cells.get(0).startsWith("#");
    }
}
