// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

/**
 * Where the parts of the section stand.
 *
 * @param left left wall
 * @param right right wall
 * @param roof ridge
 * @param loft cable in the loft
 * @param eaves eaves
 * @param cable cable elsewhere
 * @param highest the greatest height of the pipes
 * @param lowest the least one
 * @param unit box of the unit
 * @param heights heights of the pipes
 */
record SectionFrame(
        double left,
        double right,
        double roof,
        double loft,
        double eaves,
        double cable,
        double highest,
        double lowest,
        Area unit,
        Heights heights) {
    /** Where a height, m, is drawn. */
    double y(double heightM) {
        double range = heights.highest() - heights.lowest();
        double share = range > 0 ? (heightM - heights.lowest()) / range : 0.5;
        return lowest - share * (lowest - highest);
    }

    double unitMiddle() {
        return unit.x() + unit.width() / 2;
    }
}
