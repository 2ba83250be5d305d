// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.DropOutLimit;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.UnitData;

/** Writes down the draw-off at which the heat goes off, with the throttle held. */
public final class SwitchDropOutWorking {
    /** From a trial that is a tenth off so many rounds lead to eleven digits: each squares the error. */
    private static final int ROUNDS = 5;

    private final FeedConditions feed;
    private final WorkingLines lines;

    private SwitchDropOutWorking(FeedConditions feed, WorkingLines lines) {
        this.feed = feed;
        this.lines = lines;
    }

    /** From the flow before to the draw-off. */
    public static Working of(UnitFlows flows, UnitData unit, SwitchOffCondition breaks, DropOutLimit limit) {
        FeedConditions feed = flows.feed();
        OperatingPoint before = limit.held().before();
        OperatingPointWorking start = OperatingPointWorking.of(flows, before).addInlet();
        WorkingLines lines = start.lines();
        TapAloneWorking.add(lines, feed.feed(), feed.feed().taps().get(0), LimitType.SYMBOL);
        DrawOffWorking.addHeld(lines, flows, unit, limit.held());
        FeedWorking.addWater(lines, feed.intakeC(before.intake()), feed.intakeOrigin(before.intake()));
        FeedWorking.addTest(lines, feed.feed());
        SwitchDropOutWorking working = new SwitchDropOutWorking(feed, lines);
        String breakFlow = SwitchOffLines.add(lines, unit, breaks, limit.way(), "Q_b");
        working.addTee(breakFlow);
        working.addDraw(breakFlow, limit.breakFlow().value() + limit.drawOff().value());
        return lines.build();
    }

    /** From the unit back to the tee. */
    private void addTee(String breakFlow) {
        int tee = feed.feed().shared(1);
        lines.step("p_x", "inletPressure", "R_h * " + breakFlow + "^2", "bar", "");
        FeedWorking.addRunBack(
                lines, feed.feed().run().subList(tee, feed.feed().run().size()), breakFlow, "p_x", "p_T");
    }

    /** The flow from the gauge that leaves that pressure at the tee: rounds of Newton's step, the friction at the last flow. */
    private void addDraw(String breakFlow, double totalM3PerS) {
        TeeFlowRounds rounds = new TeeFlowRounds(
                lines, feed.feed().run().subList(0, feed.feed().shared(1)));
        String total = rounds.start(totalM3PerS);
        for (int round = 1; round <= ROUNDS; round++) {
            lines.round(round);
            total = rounds.add(total, round);
        }
        lines.round(0);
        lines.step("Q_d", "drawOff", total + " - " + breakFlow, "L/min", "");
    }
}
