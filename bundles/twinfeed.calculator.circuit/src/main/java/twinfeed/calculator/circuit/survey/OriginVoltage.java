// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import twinfeed.calculator.Grid;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;

/** The voltage at the origin in workings: the survey's own or, where that is nearer to the bound, the end of the band that is judged. */
public final class OriginVoltage {
    private OriginVoltage() {}

    /** Adds a voltage of the grid as {@code U0}. */
    public static void add(Working.Builder working, Grid grid, int voltage) {
        int own = grid.nominal();
        double originV = grid.voltage(voltage);
        boolean lowest = voltage == 0 && own > 0;
        boolean highest = voltage == grid.voltageCount() - 1 && own < voltage;
        if (voltage == own) {
            working.input("U0", "originVoltage", originV, "V", "", Origin.SUPPLY_VOLTAGE);
        } else if (lowest || highest) {
            working.input("Us", "surveyedVoltage", grid.voltage(own), "V", "", Origin.SUPPLY_VOLTAGE)
                    .input("Ub", "boundVoltage", originV, "V", "", Origin.rule("voltage.bound." + (lowest ? 0 : 1)))
                    .step("U0", "originVoltage", lowest ? "min(Us, Ub)" : "max(Us, Ub)", "V", "");
        } else {
            working.input("U0", "originVoltage", originV, "V", "", Origin.rule("voltage." + voltage));
        }
    }
}
