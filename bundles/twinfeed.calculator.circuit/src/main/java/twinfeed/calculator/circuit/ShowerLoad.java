// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import org.jspecify.annotations.Nullable;
import twinfeed.engineering.Heat;
import twinfeed.model.catalogue.Heater;

/**
 * A heater as a load: a resistance.
 *
 * @param ratedW rated power, W, above zero
 * @param ratedV voltage at which it is rated, V, above zero
 */
record ShowerLoad(double ratedW, double ratedV) {
    /** The load of a heater; absent while its rating is not known. */
    static @Nullable ShowerLoad of(Heater heater) {
        Double powerW = Si.of(heater.getPower());
        Double voltageV = Si.of(heater.getVoltage());
        return powerW != null && voltageV != null && powerW > 0 && voltageV > 0
                ? new ShowerLoad(powerW, voltageV)
                : null;
    }

    /** Design current Ib at the rated voltage, A. Never the rated power over another voltage: that mixes two voltages. */
    double designA() {
        return Heat.currentAt(ratedW, ratedV, ratedV);
    }

    /** Current at another voltage, A. */
    double currentA(double voltageV) {
        return Heat.currentAt(ratedW, ratedV, voltageV);
    }

    double elementOhm() {
        return Heat.elementResistance(ratedW, ratedV);
    }
}
