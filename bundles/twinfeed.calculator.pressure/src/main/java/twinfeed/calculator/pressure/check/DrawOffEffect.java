// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.CutOutExposure;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.HeldThrottle;
import twinfeed.calculator.pressure.hydraulics.HottestMoment;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.working.DrawOffWorking;
import twinfeed.engineering.heater.TapOpening;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;
import twinfeed.engineering.water.Water;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/**
 * How hot the water gets when a tap opens while somebody showers. The throttle stays where it is, so less water runs through the
 * same heat, until the switch opens, or the thermal cut-out where its temperature is known. What is judged is the water that reaches a
 * person until then, never a value clipped at the cut-out.
 */
public final class DrawOffEffect implements CheckGroup {
    private static final String SOURCE =
            "full-thickness burn of adult skin in 30 s at 55 °C and 5 s at 60 °C (table after"
                    + " Moritz and Henriques 1947, read second hand); the limit is judgement: time to step away";

    private static final double LITRES_PER_M3 = 1000;

    /** Less is no flow, m3/s. */
    private static final double LEAST_FLOW = 1e-9;

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.TAP_OPENS, PressureChecks.SCALD);
    }

    @Override
    public void answer(HeaterCase heater) {
        UnitFlows flows = heater.flows(PressureChecks.TAP_OPENS);
        if (flows == null) {
            heater.flows(PressureChecks.SCALD);
            return;
        }
        HottestMoment worst = flows.feed().mostOpen() == 0 || !flows.heats() ? null : worst(heater, flows);
        if (worst == null) {
            boolean noTap = flows.feed().mostOpen() == 0;
            String why = noTap ? "noTap" : flows.heats() ? "noWater" : "";
            if (noTap
                    && flows.heats()
                    && LimitType.exceeds(
                            heater.house().targetC(), heater.house().hottestC())) {
                asked(heater);
            } else {
                heater.notApplicable(PressureChecks.TAP_OPENS, why);
            }
            if (!heater.blocked(PressureChecks.SCALD)) {
                heater.notApplicable(PressureChecks.SCALD, why);
            }
            return;
        }
        double limitC = heater.house().hottestC();
        CutOutExposure exposure = exposure(heater, flows, worst);
        if (LimitType.exceeds(exposure.reachedC(), limitC) && unknown(heater)) {
            heater.cannotTell(
                    PressureChecks.TAP_OPENS,
                    heater.unit().heater().getStabilised() == null ? "heater.stabilised" : "heater.stabilisedMinimum");
        } else {
            report(heater, flows, worst, exposure, limitC);
        }
        advise(heater, flows, worst, exposure);
    }

    private static CutOutExposure exposure(HeaterCase heater, UnitFlows flows, HottestMoment worst) {
        FeedConditions feed = flows.feed();
        OperatingPoint before = worst.held().before();
        double kgPerS = before.flowM3PerS() * feed.at(before.intake()).fluid().densityKgPerM3();
        double beforeC = Heat.outletTemperature(worst.powerW(), feed.intakeC(before.intake()), kgPerS)
                .orElse(worst.hottestC());
        CutOutExposure exposure = new CutOutExposure(
                beforeC,
                worst.hottestC(),
                heater.unit().cutOutC(),
                Math.max(LEAST_FLOW, worst.opening().hottestFlowM3PerS()),
                heater.house().cutOutDelayS());
        if (exposure.acts()) {
            heater.house()
                    .context()
                    .assume(
                            "cutOutDelay",
                            Map.of("delay", exposure.delayS(), "volume", CutOutExposure.CAN_M3 * LITRES_PER_M3));
        }
        return exposure;
    }

    /** Without any tap the water is as hot as was asked for, and that can be too hot already: no work on the pipes changes it. */
    private static void asked(HeaterCase heater) {
        double targetC = heater.house().targetC();
        heater.on(PressureChecks.TAP_OPENS)
                .compare(targetC, heater.house().hottestC())
                .variant("asked")
                .source(SOURCE)
                .working(() -> Working.start()
                        .input("T_out", "outletTemperature", targetC, "°C", "", "survey.targetOutlet")
                        .build())
                .add();
    }

    /** The water that reaches a person before a cut-out acts is said to everybody, in the finding that quotes give to the customer. */
    private static void advise(HeaterCase heater, UnitFlows flows, HottestMoment worst, CutOutExposure exposure) {
        FindingBuilder finding = heater.on(PressureChecks.SCALD)
                .compare(exposure.reachedC(), heater.house().strongC())
                .variant(exposure.acts() ? "cutOut" : "")
                .condition(flows.feed().condition(open(flows, worst)))
                .argument("after", Kind.FLOW.amount(worst.opening().hottestFlowM3PerS()))
                .argument("unprotected", exposure.unprotectedC())
                .argument("cutOut", Math.min(exposure.cutOutC(), Water.HIGHEST_C))
                .argument("seconds", exposure.acts() ? exposure.untilOffS() : 0)
                .argument("burn", BurnTime.at(exposure.reachedC()))
                .source(SOURCE);
        if (worst.opening().hottestOutlet().isPresent()) {
            finding.working(() -> DrawOffWorking.opening(flows, worst, heater.unit(), heater.switchOff(), exposure));
        }
        finding.add();
    }

    /** Whether the unit might hold its flow by itself, but what it needs for that is not known. */
    private static boolean unknown(HeaterCase heater) {
        Heater data = heater.unit().heater();
        return data.getStabilised() == null
                || (data.getStabilised() && data.getStabilisedMinimum() == null && heater.fullBore() == null);
    }

    /**
     * The hottest moment of the year. By the rise that is heated the coldest water is the worst, by the flow that is set for it
     * the warmest; in between the outlet bends down, so the search walks inward from both ends as long as it gets hotter.
     */
    private static @Nullable HottestMoment worst(HeaterCase heater, UnitFlows flows) {
        FeedConditions feed = flows.feed();
        SwitchOffCondition breaks = heater.switchOff();
        int last = feed.rank(flows.largestTarget());
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
        HeldThrottle held = HeldThrottle.of(feed, before, heater.stabiliserOpen(before.flowM3PerS()));
        if (held == null) {
            return null;
        }
        Solution breakFlow = breaks.lowest(held, feed.at(intake).fluid());
        double after = held.flowWith(feed, feed.mostOpen());
        TapOpening opening = Throttle.whileTapOpens(
                flows.powerW(voltage), feed.intakeC(intake), before.flowM3PerS(), after, breakFlow);
        return new HottestMoment(held, flows.powerW(voltage), opening, breakFlow);
    }

    private static OperatingPoint open(UnitFlows flows, HottestMoment worst) {
        OperatingPoint before = worst.held().before();
        return new OperatingPoint(
                before.intake(), before.voltage(), flows.feed().mostOpen(), before.flowM3PerS(), before.limited());
    }

    private static void report(
            HeaterCase heater, UnitFlows flows, HottestMoment worst, CutOutExposure exposure, double limitC) {
        FeedConditions feed = flows.feed();
        FindingBuilder finding = heater.on(PressureChecks.TAP_OPENS)
                .argument("unprotected", worst.hottestC())
                .argument("reached", exposure.reachedC())
                .argument("burn", BurnTime.at(exposure.reachedC()))
                .argument("cutOut", Math.min(exposure.cutOutC(), Water.HIGHEST_C))
                .condition(feed.condition(open(flows, worst)))
                .argument("before", Kind.FLOW.amount(worst.opening().flowBeforeM3PerS()))
                .argument("after", Kind.FLOW.amount(worst.opening().hottestFlowM3PerS()))
                .source(SOURCE);
        if (advised(heater, exposure)) {
            finding.outcome(Outcome.NOT_APPLICABLE).variant("cutOut").add();
            return;
        }
        finding.compare(exposure.reachedC(), limitC).variant(variant(heater, worst, exposure));
        if (worst.opening().hottestOutlet().isPresent()) {
            finding.working(() -> DrawOffWorking.opening(flows, worst, heater.unit(), heater.switchOff(), exposure));
        }
        finding.remedies(() -> WaterRemedies.lessDisturbance(heater.house().water()));
        finding.add();
    }

    /** Whether a cut-out within the limit ends it soon and the users can step aside: then it is a matter of advice. */
    private static boolean advised(HeaterCase heater, CutOutExposure exposure) {
        return exposure.acts()
                && !heater.house().vulnerable()
                && !LimitType.exceeds(exposure.cutOutC(), heater.house().hottestC());
    }

    private static String variant(HeaterCase heater, HottestMoment worst, CutOutExposure exposure) {
        if (exposure.acts()) {
            return "cutOut";
        }
        if (worst.opening().switchOpens()) {
            return "opens";
        }
        return worst.hottestC() >= heater.house().strongC() ? "strong" : "";
    }
}
