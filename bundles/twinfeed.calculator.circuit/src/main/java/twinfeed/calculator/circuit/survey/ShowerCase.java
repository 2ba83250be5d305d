// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.SharedQuantities;
import twinfeed.model.catalogue.Heater;

/**
 * One heater on this circuit.
 *
 * @param heater its data
 * @param load it as a load, absent while its rating is not known
 * @param present whether it is the unit that is there now
 * @param shared where delivered power and current go
 */
public record ShowerCase(Heater heater, @Nullable ShowerLoad load, boolean present, SharedQuantities shared) {
    /** The readings of the rating that are missing. */
    public List<String> missingRating() {
        List<String> missing = new ArrayList<>();
        if (heater.getPower() == null || heater.getPower().si() <= 0) {
            missing.add(ReadingPaths.POWER);
        }
        if (heater.getVoltage() == null || heater.getVoltage().si() <= 0) {
            missing.add(ReadingPaths.RATED_VOLTAGE);
        }
        return missing;
    }
}
