// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Outcome;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.model.survey.WaterFeed;

/** How much others may draw before the heat goes off: "a kitchen tap opened past 7 L/min turns the shower cold". */
final class DropOut implements PressureAnswer {
    /** How the heat is switched off. */
    enum Way {
        /** By a flow. */
        FLOW,
        /** By a pressure ahead of the throttle. */
        INLET,
        /** By a pressure behind it. */
        HEATING
    }

    /** One way in the condition that is worst for it. */
    record Limit(Way way, HeldUnit held, Solution breakFlow, Solution drawOff) {
        /** 0 where the heat is off before anything is drawn, unlimited where nothing switches it off. */
        double value() {
            return drawOff.isPresent()
                    ? drawOff.value()
                    : (drawOff.trouble() == FailureReason.NEVER_REACHED ? Double.POSITIVE_INFINITY : 0);
        }
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
        Breaks breaks = new Breaks(heater);
        String missing = breaks.missing();
        if (!flows.heats()) {
            heater.notApplicable(PressureChecks.DROP_OUT, "");
        } else if (!missing.isEmpty()) {
            heater.cannotTell(PressureChecks.DROP_OUT, missing);
        } else {
            least(heater, flows, breaks);
        }
    }

    private static void least(HeaterCase heater, UnitFlows flows, Breaks breaks) {
        Limit least = null;
        for (Limit limit : limits(heater, flows, breaks)) {
            least = least == null || limit.value() < least.value() ? limit : least;
        }
        if (least == null) {
            heater.cannotTell(PressureChecks.DROP_OUT, "survey.water.test.runningPressure");
        } else {
            report(heater, flows, breaks, least);
        }
    }

    /** Ahead of the throttle the largest flow is the worst, behind it and for a flow the smallest. */
    private static List<Limit> limits(HeaterCase heater, UnitFlows flows, Breaks breaks) {
        FeedConditions feed = flows.feed();
        FlowPoint smallest = flows.running(feed.coldest(), feed.lowestVoltage(), 0);
        List<Limit> limits = new ArrayList<>();
        Double activation = breaks.activationM3PerS();
        if (activation != null) {
            add(limits, heater, feed, Way.FLOW, smallest, held -> Solution.of(activation));
        }
        if (breaks.byInlet()) {
            FlowPoint largest = flows.running(flows.largestWished(), feed.highestVoltage(), 0);
            add(limits, heater, feed, Way.INLET, largest, breaks::inlet);
        }
        if (breaks.byHeating()) {
            Solution flow = breaks.heating(feed.at(smallest.intake()).fluid());
            add(limits, heater, feed, Way.HEATING, smallest, held -> flow);
        }
        return limits;
    }

    private static void add(
            List<Limit> limits,
            HeaterCase heater,
            FeedConditions feed,
            Way way,
            FlowPoint point,
            Function<HeldUnit, Solution> breakFlow) {
        HeldUnit held = HeldUnit.of(feed, point, TapOpens.neededPa(heater, point.flowM3PerS()));
        if (held != null) {
            Solution flow = breakFlow.apply(held);
            limits.add(new Limit(way, held, flow, held.drawOff(feed, flow)));
        }
    }

    private static void report(HeaterCase heater, UnitFlows flows, Breaks breaks, Limit least) {
        FeedConditions feed = flows.feed();
        TapPoint tap = feed.feed().taps().get(0);
        double tapFlow = tap.flowM3PerS() * FeedWorking.L_PER_MIN;
        FindingBuilder finding = heater.on(PressureChecks.DROP_OUT)
                .argument("tap", tap.name())
                .condition(feed.condition(least.held().before()))
                .source("maker's instructions; the throttle held");
        if (Double.isInfinite(least.value())) {
            finding.outcome(Outcome.PASSES).variant("never").add();
            return;
        }
        finding.compare(least.value() * FeedWorking.L_PER_MIN, tapFlow);
        if (least.drawOff().isPresent()) {
            finding.working(() -> DropOutWorking.of(feed, heater.unit(), breaks, least, flows.fullBore()));
        } else {
            finding.variant("already");
        }
        if (least.value() < tap.flowM3PerS()) {
            WaterWorks.lessDisturbance(heater.house()).forEach(finding::remedy);
        }
        finding.add();
    }
}
