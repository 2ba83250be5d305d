// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.List;

/**
 * One row of a price book as text.
 *
 * @param number where the file shows it, from 1; of a row over several lines the first
 * @param cells its cells in order, none of them null
 */
public record BookRow(int number, List<String> cells) {
    public BookRow {
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
