// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.hydraulics.DropOutLimit;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.engineering.pipe.Outlet;

/** Writes down the draw-off at which the heat goes off, with the throttle held. */
public final class SwitchDropOutWorking {
    private static final double TO_BAR = FeedUnits.BAR * FeedUnits.L_PER_MIN * FeedUnits.L_PER_MIN;
    private static final int MOST_ROUNDS = 30;
    private static final double LAST_CHANGE = 2e-13;

    private final FeedConditions feed;
    private final WorkingLines lines;

    private SwitchDropOutWorking(FeedConditions feed, WorkingLines lines) {
        this.feed = feed;
        this.lines = lines;
    }

    /** From the flow before to the draw-off. */
    public static Working of(
            FeedConditions feed,
            UnitData unit,
            SwitchOffCondition breaks,
            DropOutLimit limit,
            @Nullable Outlet fullBore) {
        OperatingPoint before = limit.held().before();
        OperatingPointWorking start = new OperatingPointWorking(feed, before, fullBore).addInlet();
        WorkingLines lines = start.lines();
        DrawOffWorking.addHeld(lines, start.flow(), limit.held());
        FeedWorking.addWater(lines, feed.intakeC(before.intake()));
        FeedWorking.addTest(lines, feed.feed().curve());
        SwitchDropOutWorking working = new SwitchDropOutWorking(feed, lines);
        working.addBreak(unit, breaks, limit);
        working.addTee();
        double draw = limit.drawOff().value();
        working.addDraw(limit.breakFlow().value() + draw);
        return lines.build();
    }

    private void addBreak(UnitData unit, SwitchOffCondition breaks, DropOutLimit limit) {
        if (limit.way() == DropOutLimit.Way.FLOW) {
            lines.input(
                    "Q_b",
                    "breakFlow",
                    limit.breakFlow().value() * FeedUnits.L_PER_MIN,
                    "L/min",
                    "maker's instructions");
            return;
        }
        lines.input("p_b", "breakPressure", breaks.breakPa() / FeedUnits.BAR, "bar", "maker's instructions");
        if (limit.way() == DropOutLimit.Way.INLET) {
            lines.input("R_s", "strainerResistance", breaks.strainer() / TO_BAR, "bar/(L/min)²", "")
                    .step("Q_b", "breakFlow", "sqrt(p_b / (R_h - R_s))", "L/min", "");
            return;
        }
        Double downstream = unit.downstream();
        lines.input("R_d", "downstreamResistance", (downstream == null ? 0 : downstream) / TO_BAR, "bar/(L/min)²", "")
                .input("z_h", "handset", breaks.lowestHandsetM(), "m", "")
                .step("Q_b", "breakFlow", "sqrt((p_b - rho * 9.80665 * z_h / 100000) / R_d)", "L/min", "");
    }

    /** From the unit back to the tee. */
    private void addTee() {
        int tee = feed.feed().shared(1);
        lines.step("p_x", "inletPressure", "R_h * Q_b^2", "bar", "");
        FeedWorking.addRunBack(
                lines, feed.feed().run().subList(tee, feed.feed().run().size()), "Q_b", "p_x", "p_T");
    }

    /** The flow from the gauge that leaves that pressure at the tee: rounds of Newton's step, the friction at the last flow. */
    private void addDraw(double totalM3PerS) {
        TeeFlowRounds rounds = new TeeFlowRounds(
                lines, feed.feed().run().subList(0, feed.feed().shared(1)));
        String total = rounds.start(totalM3PerS);
        double value = lines.value(total);
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            total = rounds.add(total, round);
            double next = lines.value(total);
            boolean settled = Math.abs(next - value) <= LAST_CHANGE * next && round > 1;
            value = next;
            if (settled) {
                break;
            }
        }
        lines.step("Q_d", "drawOff", total + " - Q_b", "L/min", "");
    }
}
