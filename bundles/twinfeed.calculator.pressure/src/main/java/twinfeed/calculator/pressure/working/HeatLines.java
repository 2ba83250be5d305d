// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.engineering.water.Water;
import twinfeed.units.Kind;

/** Writes down the outlet temperature of a flow. */
public final class HeatLines {
    private static final String WATER = "IAPWS R7-97(2012), fitted";

    private HeatLines() {}

    /** From a power {@code P} and the symbol of a flow, L/min, with {@code T} and {@code rho} among the lines, to {@code T_x}. */
    public static void addOutlet(WorkingLines lines, String flow) {
        addOutlet(lines, flow, "");
    }

    /** The same with an ending to all symbols but those of the power and the intake. */
    public static void addOutlet(WorkingLines lines, String flow, String ending) {
        String h = "h_x" + ending;
        lines.step("h_in", "enthalpyIn", Water.enthalpyExpression("T"), "J/kg", WATER)
                .step("m" + ending, "massFlow", Kind.FLOW.inSi(flow) + " * rho", "kg/s", "")
                .step(h, "enthalpyOut", "h_in + P / m" + ending, "J/kg", "heat balance")
                .step("T_0" + ending, "temperatureStart", Water.temperatureStartExpression(h), "°C", WATER)
                .step(
                        "T_1" + ending,
                        "temperatureStep",
                        Water.temperatureStepExpression(h, "T_0" + ending),
                        "°C",
                        WATER)
                .step(
                        "T_x" + ending,
                        "outletTemperature",
                        Water.temperatureStepExpression(h, "T_1" + ending),
                        "°C",
                        WATER);
    }
}
