// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.hydraulics.CutOutExposure;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.HottestMoment;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.engineering.pipe.Outlet;

/** Writes down what a tap that opens does to a unit whose throttle stays where it is. */
public final class DrawOffWorking {
    private DrawOffWorking() {}

    /** Hottest outlet on the way. */
    public static Working opening(
            FeedConditions feed, HottestMoment moment, @Nullable Outlet fullBore, CutOutExposure exposure) {
        HeldThrottle held = moment.held();
        OperatingPoint before = held.before();
        OperatingPointWorking start = new OperatingPointWorking(feed, before, fullBore).addInlet();
        WorkingLines lines = start.lines();
        addHeld(lines, start.flow(), held);
        String hottest = start.flow();
        double flow = moment.opening().hottestFlowM3PerS();
        if (flow < before.flowM3PerS()) {
            hottest = moment.opening().switchOpens()
                    ? addBreak(lines, moment.breakFlow().value())
                    : addAfter(lines, feed, held, moment.opening().flowAfterM3PerS());
        }
        FeedWorking.addDensity(lines, feed.intakeC(before.intake()));
        lines.input("P", "power", moment.powerW(), "W", "check of the circuit");
        HeatLines.addOutlet(lines, hottest);
        if (exposure.acts()) {
            lines.input("T_c", "cutOut", exposure.cutOutC(), "°C", "maker's instructions")
                    .input("T_b", "outletBefore", exposure.beforeC(), "°C", "heat balance")
                    .input("V", "canVolume", CutOutExposure.CAN_M3 * 1000, "L", "judgement")
                    .input("d", "cutOutDelay", exposure.delayS(), "s", "judgement")
                    .step("tau", "changeTime", "V / " + hottest + " * 60", "s", "")
                    .step(
                            "t_c",
                            "cutOutTime",
                            "max(0, tau * ln(max(1, (T_x - T_b) / max(0.000000001, T_x - T_c)))) + d",
                            "s",
                            "stirred can")
                    .step("T_p", "reachedOutlet", "T_x - (T_x - T_b) * exp(-1 * t_c / tau)", "°C", "stirred can");
        }
        return lines.build();
    }

    /** The unit from now on, {@code R_h}. */
    static void addHeld(WorkingLines lines, String flow, HeldThrottle held) {
        if (held.stabilised()) {
            lines.input(
                    "p_n",
                    "stabiliserNeed",
                    held.outlet().pressureAt(held.before().flowM3PerS()) / FeedUnits.BAR,
                    "bar",
                    "maker's instructions");
            lines.step("R_h", "heldResistance", "p_n / " + flow + "^2", "bar/(L/min)²", "");
        } else {
            lines.step("R_h", "heldResistance", "p_in / " + flow + "^2", "bar/(L/min)²", "");
        }
    }

    private static String addBreak(WorkingLines lines, double breakM3PerS) {
        lines.input("Q_b", "breakFlow", breakM3PerS * FeedUnits.L_PER_MIN, "L/min", "where the switch opens");
        return "Q_b";
    }

    private static String addAfter(WorkingLines lines, FeedConditions feed, HeldThrottle held, double afterM3PerS) {
        OperatingPoint before = held.before();
        NetworkWorking network = new NetworkWorking(
                lines, feed.feed(), feed.mostOpen(), feed.intakeC(before.intake()), held.outlet(), "R_h", "o");
        network.solve(feed.at(before.intake()), afterM3PerS);
        return network.unitFlow();
    }
}
