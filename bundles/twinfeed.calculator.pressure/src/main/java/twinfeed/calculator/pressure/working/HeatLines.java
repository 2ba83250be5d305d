// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.engineering.water.Water;

/** Writes down the outlet temperature of a flow. */
public final class HeatLines {
    private static final String WATER = "IAPWS R7-97(2012), fitted";

    private HeatLines() {}

    /** From a power {@code P} and the symbol of a flow, L/min, with {@code T} and {@code rho} among the lines, to {@code T_x}. */
    public static void addOutlet(WorkingLines lines, String flow) {
        lines.step("h_in", "enthalpyIn", Water.enthalpyExpression("T"), "J/kg", WATER)
                .step("m", "massFlow", flow + " / 60000 * rho", "kg/s", "")
                .step("h_x", "enthalpyOut", "h_in + P / m", "J/kg", "heat balance")
                .step("T_0", "temperatureStart", Water.temperatureStartExpression("h_x"), "°C", WATER)
                .step("T_1", "temperatureStep", Water.temperatureStepExpression("h_x", "T_0"), "°C", WATER)
                .step("T_x", "outletTemperature", Water.temperatureStepExpression("h_x", "T_1"), "°C", WATER);
    }
}
