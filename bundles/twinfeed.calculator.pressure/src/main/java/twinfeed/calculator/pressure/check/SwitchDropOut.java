// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.pressure.hydraulics.DropOutLimit;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.calculator.pressure.working.SwitchDropOutWorking;
import twinfeed.engineering.numeric.Solution;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.WaterFeed;

/** How much others may draw before the heat goes off: "a kitchen tap opened past 7 L/min turns the shower cold". */
public final class SwitchDropOut implements CheckGroup {
    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.DROP_OUT);
    }

    @Override
    public void answer(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        if (water != null && water.getDrawOffs().isEmpty()) {
            heater.notApplicable(PressureChecks.DROP_OUT, "noTap");
            return;
        }
        UnitFlows flows = heater.flows(PressureChecks.DROP_OUT);
        if (flows == null) {
            return;
        }
        SwitchOffCondition breaks = heater.switchOff();
        String missing = breaks.missing();
        if (!flows.heats()) {
            heater.notApplicable(PressureChecks.DROP_OUT, "");
        } else if (!missing.isEmpty()) {
            heater.cannotTell(PressureChecks.DROP_OUT, missing);
        } else {
            least(heater, flows, breaks);
        }
    }

    private static void least(HeaterCase heater, UnitFlows flows, SwitchOffCondition breaks) {
        DropOutLimit least = null;
        for (DropOutLimit limit : limits(heater, flows, breaks)) {
            least = least == null || limit.value() < least.value() ? limit : least;
        }
        if (least == null) {
            heater.notApplicable(PressureChecks.DROP_OUT, "noWater");
        } else {
            report(heater, flows, breaks, least);
        }
    }

    /** Ahead of the throttle the largest flow is the worst, behind it and for a flow the smallest. */
    private static List<DropOutLimit> limits(HeaterCase heater, UnitFlows flows, SwitchOffCondition breaks) {
        FeedConditions feed = flows.feed();
        OperatingPoint smallest = flows.running(feed.coldest(), feed.lowestVoltage(), 0);
        List<DropOutLimit> limits = new ArrayList<>();
        Double activation = breaks.activationM3PerS();
        if (activation != null) {
            add(limits, heater, feed, DropOutLimit.Way.FLOW, smallest, held -> Solution.of(activation));
        }
        if (breaks.byInlet()) {
            OperatingPoint largest = flows.running(flows.largestTarget(), feed.highestVoltage(), 0);
            add(limits, heater, feed, DropOutLimit.Way.INLET, largest, breaks::inlet);
        }
        if (breaks.byHeating()) {
            Solution flow = breaks.heating(feed.at(smallest.intake()).fluid());
            add(limits, heater, feed, DropOutLimit.Way.HEATING, smallest, held -> flow);
        }
        return limits;
    }

    private static void add(
            List<DropOutLimit> limits,
            HeaterCase heater,
            FeedConditions feed,
            DropOutLimit.Way way,
            OperatingPoint point,
            Function<HeldThrottle, Solution> breakFlow) {
        HeldThrottle held = HeldThrottle.of(feed, point, heater.stabiliserOpen(point.flowM3PerS()));
        if (held != null) {
            Solution flow = breakFlow.apply(held);
            limits.add(new DropOutLimit(way, held, flow, held.drawOff(feed, flow)));
        }
    }

    private static void report(HeaterCase heater, UnitFlows flows, SwitchOffCondition breaks, DropOutLimit least) {
        FeedConditions feed = flows.feed();
        SurveyedTap tap = feed.feed().taps().get(0);
        FindingBuilder finding = heater.on(PressureChecks.DROP_OUT)
                .argument("tap", tap.name())
                .condition(feed.condition(least.held().before()))
                .source("maker's instructions; the throttle held");
        if (Double.isInfinite(least.value())) {
            finding.outcome(Outcome.PASSES).variant("never").add();
            return;
        }
        finding.compare(least.value(), tap.flowM3PerS());
        if (least.drawOff().isPresent()) {
            finding.working(() -> SwitchDropOutWorking.of(flows, heater.unit(), breaks, least));
        } else {
            finding.variant("already");
        }
        finding.remedies(() -> WaterRemedies.lessDisturbance(heater.house().water()));
        finding.add();
    }
}
