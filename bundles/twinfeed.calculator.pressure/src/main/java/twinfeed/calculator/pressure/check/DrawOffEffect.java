// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.HottestMoment;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.working.DrawOffWorking;
import twinfeed.engineering.heater.TapOpening;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.numeric.Solution;
import twinfeed.model.catalogue.Heater;

/**
 * How hot the water gets when a tap opens while somebody showers. The throttle stays where it is, so less water runs through the
 * same heat, until the switch opens, or the thermal cut-out where its temperature is known: then the figure is the cut-out's, and
 * the text gives the unprotected one.
 */
public final class DrawOffEffect implements CheckGroup {
    private static final String SOURCE =
            "full-thickness burn of adult skin in 30 s at 55 °C and 5 s at 60 °C (table after"
                    + " Moritz and Henriques 1947, read second hand); the limit is judgement: time to step away";

    @Override
    public void answer(HeaterCase heater) {
        UnitFlows flows = heater.flows(PressureChecks.TAP_OPENS);
        if (flows == null) {
            return;
        }
        HottestMoment worst = flows.feed().mostOpen() == 0 || !flows.heats() ? null : worst(heater, flows);
        if (worst == null) {
            heater.notApplicable(PressureChecks.TAP_OPENS, flows.feed().mostOpen() == 0 ? "noTap" : "");
            return;
        }
        double limitC = heater.house().hottestC();
        if (protectedC(heater, worst) > limitC && unknown(heater)) {
            heater.cannotTell(
                    PressureChecks.TAP_OPENS,
                    heater.unit().heater().getStabilised() == null ? "heater.stabilised" : "heater.stabilisedMinimum");
        } else {
            report(heater, flows, worst, limitC);
        }
    }

    private static double protectedC(HeaterCase heater, HottestMoment moment) {
        return Math.min(moment.hottestC(), heater.unit().cutOutC());
    }

    /** Whether the unit might hold its flow by itself, but what it needs for that is not known. */
    private static boolean unknown(HeaterCase heater) {
        Heater data = heater.unit().heater();
        return data.getStabilised() == null || (data.getStabilised() && data.getStabilisedMinimum() == null);
    }

    /**
     * The hottest moment of the year. By the rise that is heated the coldest water is the worst, by the flow that is set for it
     * the warmest; in between the outlet bends down, so the search walks inward from both ends as long as it gets hotter.
     */
    private static @Nullable HottestMoment worst(HeaterCase heater, UnitFlows flows) {
        FeedConditions feed = flows.feed();
        SwitchOffCondition breaks = heater.switchOff();
        int last = feed.rank(flows.largestWished());
        HottestMoment worst = null;
        for (int rank = 0; rank <= last; rank++) {
            HottestMoment moment = moment(heater, flows, breaks, feed.byRank(rank));
            if (!hotter(moment, worst)) {
                break;
            }
            worst = moment;
        }
        for (int rank = last; rank > 0; rank--) {
            HottestMoment moment = moment(heater, flows, breaks, feed.byRank(rank));
            if (!hotter(moment, worst)) {
                break;
            }
            worst = moment;
        }
        return worst;
    }

    private static boolean hotter(@Nullable HottestMoment moment, @Nullable HottestMoment than) {
        return moment != null && (than == null || moment.hottestC() > than.hottestC());
    }

    private static @Nullable HottestMoment moment(
            HeaterCase heater, UnitFlows flows, SwitchOffCondition breaks, int intake) {
        FeedConditions feed = flows.feed();
        int voltage = feed.highestVoltage();
        OperatingPoint before = flows.running(intake, voltage, 0);
        HeldThrottle held = HeldThrottle.of(feed, before, heater.stabiliserNeedPa(before.flowM3PerS()));
        if (held == null) {
            return null;
        }
        Solution breakFlow = breaks.lowest(held, feed.at(intake).fluid());
        double after = held.flowWith(feed, feed.mostOpen());
        TapOpening opening = Throttle.whileTapOpens(
                flows.powerW(voltage), feed.intakeC(intake), before.flowM3PerS(), after, breakFlow);
        return new HottestMoment(held, flows.powerW(voltage), opening, breakFlow);
    }

    private static void report(HeaterCase heater, UnitFlows flows, HottestMoment worst, double limitC) {
        FeedConditions feed = flows.feed();
        OperatingPoint before = worst.held().before();
        OperatingPoint open = new OperatingPoint(
                before.intake(), before.voltage(), feed.mostOpen(), before.flowM3PerS(), before.limited());
        FindingBuilder finding = heater.on(PressureChecks.TAP_OPENS)
                .compare(protectedC(heater, worst), limitC)
                .argument("unprotected", worst.hottestC())
                .condition(feed.condition(open))
                .variant(variant(heater, worst))
                .argument("before", worst.opening().flowBeforeM3PerS() * FeedUnits.L_PER_MIN)
                .argument("after", worst.opening().hottestFlowM3PerS() * FeedUnits.L_PER_MIN)
                .source(SOURCE);
        if (worst.opening().hottestOutlet().isPresent()) {
            finding.working(() -> DrawOffWorking.opening(
                    feed, worst, flows.fullBore(), heater.unit().cutOutC()));
        }
        if (protectedC(heater, worst) > limitC) {
            WaterRemedies.lessDisturbance(heater.house().water()).forEach(finding::remedy);
        }
        finding.add();
    }

    private static String variant(HeaterCase heater, HottestMoment worst) {
        if (worst.hottestC() > heater.unit().cutOutC()) {
            return "cutOut";
        }
        if (worst.opening().switchOpens()) {
            return "opens";
        }
        return worst.hottestC() >= heater.house().strongC() ? "strong" : "";
    }
}
