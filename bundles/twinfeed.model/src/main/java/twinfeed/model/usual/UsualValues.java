// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.usual;

import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Ratio;

/** What a survey or a heater's data say, or else what is usual. Who takes the usual value says so beside the result. */
public final class UsualValues {
    /** Temperature of the water at the handset, degC: common practice, the middle of 38 to 41. */
    public static final double TARGET_OUTLET_C = 40;

    /** How far a heater's power may lie above its rating, as a share of it: EN 60335-1, heating appliances over 200 W (from memory). */
    public static final double POWER_UP = 0.05;

    /** How far below it: the same place. */
    public static final double POWER_DOWN = 0.10;

    /** No heater is off by more than this share of its rating; who writes more has mistaken the unit. */
    private static final double MOST_POWER = 0.5;

    private UsualValues() {}

    /** The target outlet temperature of a survey, degC. */
    public static double targetOutletC(Survey survey) {
        return survey.getTargetOutlet() == null
                ? TARGET_OUTLET_C
                : survey.getTargetOutlet().si();
    }

    /** How far a heater's power may lie above its rating, as a share of it, 0..0.5. */
    public static double powerUp(Heater heater) {
        return share(heater.getPowerToleranceUp(), POWER_UP);
    }

    /** How far a heater's power may lie below its rating, as a share of it, 0..0.5. */
    public static double powerDown(Heater heater) {
        return share(heater.getPowerToleranceDown(), POWER_DOWN);
    }

    private static double share(@Nullable Ratio stated, double usual) {
        return stated == null || !(stated.si() >= 0 && stated.si() <= MOST_POWER) ? usual : stated.si();
    }
}
