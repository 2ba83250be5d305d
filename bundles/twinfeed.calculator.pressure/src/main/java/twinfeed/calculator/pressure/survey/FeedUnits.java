// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import twinfeed.units.Kind;

/** How many SI units make one of the units in which plumbers write their figures; the formulas of workings are in these. */
public final class FeedUnits {
    /** Pascal in a bar. */
    public static final double BAR = Kind.PRESSURE.siPerDisplayUnit();

    /** Litres a minute in a cubic metre a second. */
    public static final double L_PER_MIN = Kind.FLOW.displayUnitsPerSi();

    private FeedUnits() {}
}
