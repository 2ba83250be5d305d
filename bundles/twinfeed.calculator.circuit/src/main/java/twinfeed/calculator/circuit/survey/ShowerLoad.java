// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.water.Heat;
import twinfeed.model.catalogue.Heater;

/**
 * A heater as a load: a resistance.
 *
 * @param ratedW rated power, W, above zero
 * @param ratedV voltage at which it is rated, V, above zero
 * @param powerOrigin origin of its rated power in workings
 * @param voltageOrigin origin of its rated voltage in workings
 */
public record ShowerLoad(double ratedW, double ratedV, String powerOrigin, String voltageOrigin) {
    /** A load of which nobody says whose it is. */
    public ShowerLoad(double ratedW, double ratedV) {
        this(ratedW, ratedV, "", "");
    }

    /** The load of a heater; absent while its rating is not known. */
    public static @Nullable ShowerLoad of(Heater heater) {
        Double powerW = SiValues.of(heater.getPower());
        Double voltageV = SiValues.of(heater.getVoltage());
        return powerW != null && voltageV != null && powerW > 0 && voltageV > 0
                ? new ShowerLoad(powerW, voltageV, Origin.heater(heater, "power"), Origin.heater(heater, "voltage"))
                : null;
    }

    /** Design current Ib at the rated voltage, A. Never the rated power over another voltage: that mixes two voltages. */
    public double designA() {
        return Heat.currentAt(ratedW, ratedV, ratedV);
    }

    /** Current at another voltage, A. */
    public double currentA(double voltageV) {
        return Heat.currentAt(ratedW, ratedV, voltageV);
    }

    public double elementOhm() {
        return Heat.elementResistance(ratedW, ratedV);
    }

    /** Starts a working with the heater's rating. */
    public Working.Builder rating() {
        return Working.start()
                .input("Pr", "ratedPower", ratedW, "W", "", powerOrigin)
                .input("Ur", "ratedVoltage", ratedV, "V", "", voltageOrigin);
    }

    /** Starts a working with the heater's design current Ib. */
    public Working.Builder working() {
        return rating().step("Ib", "designCurrent", "Pr / Ur", "A", "");
    }
}
