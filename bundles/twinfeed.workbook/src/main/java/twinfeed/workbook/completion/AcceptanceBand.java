// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.completion;

import org.jspecify.annotations.Nullable;

/**
 * A reading to take and the band in which it is accepted.
 *
 * @param key key of its texts
 * @param unit its unit; empty for a question of yes or no
 * @param low least accepted, absent for none
 * @param high most accepted, absent for none
 * @param basis where the band comes from
 */
record AcceptanceBand(String key, String unit, @Nullable Double low, @Nullable Double high, String basis) {
    /** A question of yes or no. */
    static AcceptanceBand question(String key) {
        return new AcceptanceBand(key, "", null, null, "");
    }

    /** A reading whose band nobody can tell. */
    static AcceptanceBand open(String key, String unit, String basis) {
        return new AcceptanceBand(key, unit, null, null, basis);
    }

    boolean isQuestion() {
        return unit.isEmpty();
    }
}
