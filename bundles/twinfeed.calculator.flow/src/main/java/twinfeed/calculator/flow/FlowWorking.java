// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.water.Water;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/** Writes down, line by line, how a flow, a temperature or a power is found. */
final class FlowWorking {
    private static final String WATER = "IAPWS R7-97(2012), fitted";
    private static final String BALANCE = "heat balance";
    private static final String OHM = "Ohm's law";

    private FlowWorking() {}

    /** Volume flow at the outlet, L/min, of a power. */
    static Working outletFlow(HeatCase heat) {
        return addFlows(heat.temperatures(heat.start()), true).build();
    }

    /** Volume flow at the inlet, L/min, of a power. */
    static Working inletFlow(HeatCase heat) {
        return addFlows(heat.temperatures(heat.start()), false).build();
    }

    /** Mass flow, kg/s, of a power; 0 where nothing has to be heated. */
    static Working massFlow(HeatCase heat) {
        Working.Builder lines = heat.temperatures(heat.start());
        addEnthalpies(lines);
        return lines.step("m", "massFlow", "if(h_out > h_in, P / (h_out - h_in), 0)", "kg/s", BALANCE)
                .build();
    }

    private static Working.Builder power(double powerW) {
        return Working.start().input("P", "power", powerW, "W", "");
    }

    /** Adds the lines from the power {@code P} to the flow; the one asked for comes last. */
    static void addFlows(Working.Builder lines, double intakeC, double outletC, boolean outletLast) {
        lines.input("T_in", "intake", intakeC, "°C", "").input("T_out", "outlet", outletC, "°C", "");
        addFlows(lines, outletLast);
    }

    private static Working.Builder addFlows(Working.Builder lines, boolean outletLast) {
        addEnthalpies(lines);
        lines.step("m", "massFlow", "P / (h_out - h_in)", "kg/s", BALANCE);
        addVolume(lines, outletLast ? "in" : "out");
        return addVolume(lines, outletLast ? "out" : "in");
    }

    private static void addEnthalpies(Working.Builder lines) {
        lines.step("h_in", "enthalpyIn", Water.enthalpyExpression("T_in"), "J/kg", WATER)
                .step("h_out", "enthalpyOut", Water.enthalpyExpression("T_out"), "J/kg", WATER);
    }

    private static Working.Builder addVolume(Working.Builder lines, String end) {
        String where = "in".equals(end) ? "In" : "Out";
        return lines.step("rho_" + end, "density" + where, Water.densityExpression("T_" + end), "kg/m³", WATER)
                .step("Q_" + end, "flow" + where, Kind.FLOW.inDisplayUnit("m / rho_" + end), "L/min", "");
    }

    /**
     * Winter flow of two heaters and their difference, L/min. The present unit would hang at the end of the same cable, whose resistance
     * follows from the power of the first.
     */
    static Working difference(HeatCase heat, double presentW, Heater first, Heater present, double originV) {
        Working.Builder lines = heat.start();
        if (heat.power().steps().isEmpty()) {
            lines.input("P_now", "presentPower", presentW, "W", OHM);
        } else {
            rating(lines, "P_1", "U_1", first);
            rating(lines, "P_2", "U_2", present);
            lines.input("U_s", "originVoltage", originV, "V", "", Origin.SUPPLY_VOLTAGE)
                    .step("R_1", "elementResistance", "U_1^2 / P_1", "Ω", OHM)
                    .step("R_2", "elementResistance", "U_2^2 / P_2", "Ω", OHM)
                    .step("R_c", "cableResistance", "max(0, R_1 * (U_s / sqrt(P * R_1) - 1))", "Ω", OHM)
                    .step("P_now", "presentPower", "(U_s * R_2 / (R_2 + R_c))^2 / R_2", "W", OHM);
        }
        addFlows(heat.temperatures(lines), true);
        return lines.step(
                        "Q_now",
                        "presentFlow",
                        Kind.FLOW.inDisplayUnit("P_now / (h_out - h_in) / rho_out"),
                        "L/min",
                        "")
                .step("dQ", "flowGain", "Q_out - Q_now", "L/min", "")
                .build();
    }

    private static void rating(Working.Builder lines, String power, String voltage, Heater heater) {
        lines.input(power, "ratedPower", heater.getPower().si(), "W", "", Origin.heater(heater, "power"))
                .input(voltage, "ratedVoltage", heater.getVoltage().si(), "V", "", Origin.heater(heater, "voltage"));
    }

    /** Volume flow at the outlet, L/min, of the rated power. */
    static Working ratedFlow(HeatCase heat, Heater heater) {
        Working.Builder lines =
                Working.start().input("P", "ratedPower", heat.powerW(), "W", "", Origin.heater(heater, "power"));
        return addFlows(heat.temperatures(lines), true).build();
    }

    /** Flow at the outlet, L/min, of a share of a power. */
    static Working shareFlow(HeatCase heat, double share, Heater heater) {
        Working.Builder lines = share(heat, share, heater);
        return addFlows(heat.temperatures(lines), true).build();
    }

    /** Takes the share {@code s} of the power; the full power becomes {@code P_full}. */
    private static Working.Builder share(HeatCase heat, double share, Heater heater) {
        Working.Builder lines = Working.start();
        if (heat.power().steps().isEmpty()) {
            lines.input("P_full", "fullPower", heat.powerW(), "W", "");
        } else {
            lines.include(heat.power(), "_f").step("P_full", "fullPower", "P_f", "W", "");
        }
        return lines.input("s", "share", share, "", "", Origin.heater(heater, "share." + share))
                .step("P", "power", "s * P_full", "W", "");
    }

    /** Outlet temperature, degC, when the flow is set for full power and a share of the power is left. */
    static Working shareOutlet(HeatCase heat, double share, Heater heater) {
        Working.Builder lines = heat.temperatures(share(heat, share, heater));
        addEnthalpies(lines);
        lines.step("m", "massFlow", "P_full / (h_out - h_in)", "kg/s", BALANCE)
                .step("h_x", "enthalpyLeft", "h_in + P / m", "J/kg", BALANCE);
        return addTemperature(lines, "h_x").build();
    }

    /** Adds the temperature of an enthalpy: a straight line for the start and two Newton steps. */
    private static Working.Builder addTemperature(Working.Builder lines, String enthalpy) {
        return lines.step("T_0", "temperatureStart", Water.temperatureStartExpression(enthalpy), "°C", WATER)
                .step("T_1", "temperatureStep", Water.temperatureStepExpression(enthalpy, "T_0"), "°C", WATER)
                .step("T_x", "temperatureFound", Water.temperatureStepExpression(enthalpy, "T_1"), "°C", WATER);
    }

    /** Starts with the rating and, where both voltages are known, the power at the supply's. */
    static Working.Builder rating(double ratedW, double ratedV, double supplyV) {
        return Working.start()
                .input("P_r", "ratedPower", ratedW, "W", "")
                .input("U_r", "ratedVoltage", ratedV, "V", "")
                .input("U", "supplyVoltage", supplyV, "V", "")
                .step("P", "power", "P_r * (U / U_r)^2", "W", OHM);
    }

    /** Starts with a power put in. */
    static Working.Builder plain(double powerW) {
        return power(powerW);
    }

    /** The power, W, for a mass flow {@code m} and an intake {@code T_in} that are already among the lines. */
    static void addPower(Working.Builder lines, double outletC) {
        lines.input("T_out", "outlet", outletC, "°C", "");
        addEnthalpies(lines);
        lines.step("P", "power", "m * (h_out - h_in)", "W", BALANCE);
    }

    /** The outlet temperature, degC, of a power {@code P} and a mass flow {@code m} that are already among the lines. */
    static void addOutlet(Working.Builder lines) {
        lines.step("h_in", "enthalpyIn", Water.enthalpyExpression("T_in"), "J/kg", WATER)
                .step("h_out", "enthalpyOut", "h_in + P / m", "J/kg", BALANCE);
        addTemperature(lines, "h_out");
    }

    /** Adds a mass flow from a volume flow at the inlet, whose intake temperature {@code T_in} is put in here. */
    static Working.Builder addMassFlow(Working.Builder lines, double flowM3PerS, double intakeC) {
        return lines.input("T_in", "intake", intakeC, "°C", "")
                .input("Q_in", "flowIn", Kind.FLOW.amount(flowM3PerS), "")
                .step("rho_in", "densityIn", Water.densityExpression("T_in"), "kg/m³", WATER)
                .step("m", "massFlow", Kind.FLOW.inSi("Q_in") + " * rho_in", "kg/s", "");
    }
}
