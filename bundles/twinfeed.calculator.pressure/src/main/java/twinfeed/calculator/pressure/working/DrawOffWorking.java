// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.CutOutExposure;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.HottestMoment;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.engineering.pipe.Outlet;

/** Writes down what a tap that opens does to a unit whose throttle stays where it is. */
public final class DrawOffWorking {
    private DrawOffWorking() {}

    /** Hottest outlet on the way. */
    public static Working opening(
            UnitFlows flows, HottestMoment moment, UnitData unit, SwitchOffCondition breaks, CutOutExposure exposure) {
        FeedConditions feed = flows.feed();
        HeldThrottle held = moment.held();
        OperatingPoint before = held.before();
        OperatingPointWorking start = OperatingPointWorking.of(flows, before).addInlet();
        WorkingLines lines = start.lines();
        addHeld(lines, flows, unit, held);
        String hottest = start.flow();
        double flow = moment.opening().hottestFlowM3PerS();
        if (flow < before.flowM3PerS()) {
            hottest = moment.opening().switchOpens()
                    ? SwitchOffLines.addLowest(lines, feed, unit, breaks, held)
                    : addAfter(lines, feed, held, moment.opening().flowAfterM3PerS());
        }
        FeedWorking.addDensity(lines, feed.intakeC(before.intake()), feed.intakeOrigin(before.intake()));
        addPower(lines, flows, before.voltage(), moment.powerW(), 1);
        if (!exposure.acts()) {
            HeatLines.addOutlet(lines, hottest);
            return lines.build();
        }
        HeatLines.addOutlet(lines, start.flow(), "_b");
        HeatLines.addOutlet(lines, hottest);
        lines.input(
                        "T_c",
                        "cutOut",
                        exposure.cutOutC(),
                        "°C",
                        "maker's instructions",
                        Origin.heater(unit.heater(), "cutOutTemperature"))
                .input("V", "canVolume", CutOutExposure.CAN_M3 * 1000, "L", "judgement", "usual.canVolume")
                .input("d", "cutOutDelay", exposure.delayS(), "s", "judgement", "usual.cutOutDelay")
                .step("tau", "changeTime", "V / " + hottest + " * 60", "s", "")
                .step(
                        "t_c",
                        "cutOutTime",
                        "max(0, tau * ln(max(1, (T_x - T_x_b) / max(0.000000001, T_x - T_c)))) + d",
                        "s",
                        "stirred can")
                .step("T_p", "reachedOutlet", "T_x - (T_x - T_x_b) * exp(-1 * t_c / tau)", "°C", "stirred can");
        return lines.build();
    }

    /** The power into the water, {@code P}: a share of what reaches the unit. */
    public static void addPower(WorkingLines lines, UnitFlows flows, int voltage, double powerW, double share) {
        Working power = flows.powerWorking(voltage);
        if (power.steps().isEmpty()) {
            lines.input("P", "power", powerW, "W", "check of the circuit");
            return;
        }
        lines.include(power, "_p");
        if (share == 1) {
            lines.step("P", "power", "P_p", "W", "");
        } else {
            lines.input("s", "powerShare", share, "", "").step("P", "power", "s * P_p", "W", "");
        }
    }

    /** The unit from now on, {@code R_h}. */
    static void addHeld(WorkingLines lines, UnitFlows flows, UnitData unit, HeldThrottle held) {
        Outlet fullBore = flows.fullBore();
        if (!held.stabilised()) {
            lines.step("R_h", "heldResistance", "p_in / Q^2", "bar/(L/min)²", "");
        } else if (fullBore != null) {
            OperatingPointWorking.addOutlet(lines, fullBore, flows.fullBoreWorking());
            lines.step("R_h", "heldResistance", "R_u", "bar/(L/min)²", "");
        } else {
            UnitLines.addDownstream(lines, unit);
            UnitLines.addPressure(
                    lines,
                    "p_n",
                    "stabiliserNeed",
                    unit.heater().getStabilisedMinimum().si(),
                    unit.heater(),
                    "stabilisedMinimum");
            lines.step("R_h", "heldResistance", "(R_d * Q^2 + p_n) / Q^2", "bar/(L/min)²", "");
        }
    }

    private static String addAfter(WorkingLines lines, FeedConditions feed, HeldThrottle held, double afterM3PerS) {
        OperatingPoint before = held.before();
        NetworkWorking network = NetworkWorking.of(lines, feed, before.intake(), feed.mostOpen(), "R_h", "o");
        network.solve(feed.at(before.intake()), afterM3PerS);
        return network.unitFlow();
    }
}
