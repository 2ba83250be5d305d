// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.pressure.hydraulics.DropOutLimit;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.engineering.numeric.Solution;
import twinfeed.units.Kind;

/** Writes down the flow through a unit at which its heat goes off. */
final class SwitchOffLines {
    private SwitchOffLines() {}

    /** Adds the flow for one way of switching off, with {@code R_h} and {@code rho} among the lines, under a symbol, which is returned. */
    static String add(
            WorkingLines lines, UnitData unit, SwitchOffCondition breaks, DropOutLimit.Way way, String symbol) {
        if (way == DropOutLimit.Way.FLOW) {
            Double activation = breaks.activationM3PerS();
            UnitLines.addFlow(
                    lines, symbol, "breakFlow", activation == null ? 0 : activation, unit.heater(), "activationFlow");
            return symbol;
        }
        UnitLines.addBreakPressure(lines, unit.heater(), breaks.breakPa());
        if (way == DropOutLimit.Way.INLET) {
            UnitLines.addStrainer(lines, unit, breaks.strainer());
            lines.step(symbol, "breakFlow", "sqrt(p_b / (R_h - R_s))", "L/min", "");
            return symbol;
        }
        UnitLines.addDownstream(lines, unit);
        UnitLines.addHandset(lines, breaks.lowestHandsetM());
        lines.step(
                symbol,
                "breakFlow",
                "sqrt((p_b - " + Kind.PRESSURE.inDisplayUnit("rho * 9.80665 * z_h") + ") / R_d)",
                "L/min",
                "");
        return symbol;
    }

    /** Adds the lowest flow at which the heat may still be on, as {@link SwitchOffCondition#lowest}; returns its symbol. */
    static String addLowest(
            WorkingLines lines, FeedConditions feed, UnitData unit, SwitchOffCondition breaks, HeldThrottle held) {
        if (breaks.activationM3PerS() != null) {
            return add(lines, unit, breaks, DropOutLimit.Way.FLOW, "Q_b");
        }
        int intake = held.before().intake();
        FeedWorking.addDensity(lines, feed.intakeC(intake), feed.intakeOrigin(intake));
        boolean inlet = breaks.byInlet() && breaks.inlet(held).isPresent();
        Solution heating = breaks.heating(feed.at(intake).fluid());
        if (!breaks.byHeating() || !heating.isPresent()) {
            return add(lines, unit, breaks, DropOutLimit.Way.INLET, "Q_b");
        }
        if (!inlet) {
            return add(lines, unit, breaks, DropOutLimit.Way.HEATING, "Q_b");
        }
        String behind = add(lines, unit, breaks, DropOutLimit.Way.HEATING, "Q_bh");
        String ahead = add(lines, unit, breaks, DropOutLimit.Way.INLET, "Q_bi");
        lines.step("Q_b", "breakFlow", "min(" + ahead + ", " + behind + ")", "L/min", "");
        return "Q_b";
    }
}
