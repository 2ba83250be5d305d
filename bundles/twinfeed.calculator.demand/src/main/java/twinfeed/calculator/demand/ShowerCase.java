// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Origin;
import twinfeed.model.catalogue.Heater;

/**
 * One heater in this house.
 *
 * @param candidate the heater
 * @param shared where its design current comes from
 */
record ShowerCase(Candidate candidate, SharedQuantities shared) {
    /** Its design current, A; absent while its rating is not known. */
    @Nullable
    Double currentA() {
        return shared.has(SharedQuantity.DESIGN_CURRENT)
                ? Double.valueOf(shared.get(SharedQuantity.DESIGN_CURRENT)[0])
                : null;
    }

    /** Where its design current comes from: its power at the voltage at which it is rated. */
    CurrentSource currentSource() {
        Heater heater = candidate.heater();
        if (heater.getPower() == null || heater.getVoltage() == null) {
            return CurrentSource.UNKNOWN;
        }
        return (working, number, load) -> CurrentSource.ofPower(
                working,
                number,
                load,
                heater.getPower().si(),
                Origin.heater(heater, "power"),
                heater.getVoltage().si(),
                Origin.heater(heater, "voltage"));
    }
}
