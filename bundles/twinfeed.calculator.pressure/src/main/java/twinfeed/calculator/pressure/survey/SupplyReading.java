// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import twinfeed.model.survey.WaterTest;
import twinfeed.units.Quantity;

/** How exact a two-point test is. */
public final class SupplyReading {
    /** What a gauge may be off where the survey states no tolerance, Pa: judgement. */
    private static final double USUAL_GAUGE_PA = 10_000;

    private SupplyReading() {}

    /** Both pressures together may be off by so much, Pa. */
    public static double spreadPa(WaterTest test) {
        return halfWidthPa(test.getStaticPressure()) + halfWidthPa(test.getRunningPressure());
    }

    private static double halfWidthPa(Quantity pressure) {
        return pressure.hasTolerance() ? pressure.halfWidthSi() : USUAL_GAUGE_PA;
    }
}
