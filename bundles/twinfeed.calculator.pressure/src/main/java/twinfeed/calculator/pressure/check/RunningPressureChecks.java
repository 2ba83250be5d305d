// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.FeedCurves;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.UnitLines;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** The running pressure at the unit's inlet, at the flow that its instructions name, with the house otherwise shut. */
public final class RunningPressureChecks implements CheckGroup {
    private static final String SOURCE = "maker's instructions; form of NFPA 291 and Darcy-Weisbach";

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.RUNNING, PressureChecks.PEAK);
    }

    @Override
    public void answer(HeaterCase heater) {
        running(heater);
        peak(heater);
    }

    private static void running(HeaterCase heater) {
        FeedConditions feed = usable(heater, PressureChecks.RUNNING);
        if (feed == null) {
            return;
        }
        double flow = heater.unit().heater().getRunningPressureFlow().si();
        // The coldest water is the thickest.
        int intake = feed.coldest();
        double inletPa = feed.at(intake).inletPa(flow, 0);
        FindingBuilder finding = compare(heater, PressureChecks.RUNNING, inletPa)
                .variant(inletPa <= 0 ? "none" : "")
                .condition(feed.shut(intake))
                .source(SOURCE)
                .working(() -> running(heater, feed, intake, flow));
        curves(heater, feed, flow, inletPa, finding);
        finding.remedies(() -> WaterRemedies.morePressure(heater.house().water()));
        finding.add();
    }

    private static FindingBuilder compare(HeaterCase heater, Check check, double inletPa) {
        Heater data = heater.unit().heater();
        return heater.on(check)
                .compare(inletPa, data.getMinimumRunningPressure().si())
                .argument("flow", Kind.FLOW.amount(data.getRunningPressureFlow().si()));
    }

    private static @Nullable FeedConditions usable(HeaterCase heater, Check check) {
        FeedConditions feed = heater.feed(check);
        if (feed != null && !UnitData.flow(heater.unit().heater().getRunningPressureFlow())) {
            heater.cannotTell(check, "heater.runningPressureFlow");
            return null;
        }
        return feed;
    }

    private static void curves(
            HeaterCase heater, FeedConditions feed, double flow, double inletPa, FindingBuilder finding) {
        finding.series(feed::curve);
        finding.series(() -> FeedCurves.point("pressure.operatingPoint", flow, inletPa));
        finding.series(() -> FeedCurves.along(FeedProfile.STATIC_PRESSURE, feed, feed.coldest(), 0));
        finding.series(() -> FeedCurves.along(FeedProfile.RUNNING_PRESSURE, feed, feed.coldest(), flow));
        Outlet need = heater.unit().need().orElse(null);
        if (need != null) {
            finding.series(() -> FeedCurves.need(need));
        }
        PressureSwitch limits = heater.unit().pressureSwitch();
        if (limits != null && heater.unit().inletPossible()) {
            Double strainer = heater.unit().strainer();
            finding.series(() -> FeedCurves.switchLine(limits.makePa(), strainer == null ? 0 : strainer));
        }
    }

    private static WorkingLines limit(HeaterCase heater) {
        Heater data = heater.unit().heater();
        WorkingLines lines = new WorkingLines();
        UnitLines.addPressure(
                lines,
                LimitType.SYMBOL,
                "leastRunning",
                data.getMinimumRunningPressure().si(),
                data,
                "minimumRunningPressure");
        return lines;
    }

    private static Working running(HeaterCase heater, FeedConditions feed, int intake, double flow) {
        String origin = Origin.heater(heater.unit().heater(), "runningPressureFlow");
        return limit(heater)
                .include(FeedWorking.inlet(feed, intake, flow, origin), "")
                .build();
    }

    /** A test in the quiet hours flatters: with both pressures less a share the unit should still have enough. */
    private static void peak(HeaterCase heater) {
        WaterSource source = heater.house().source();
        if (source == WaterSource.TANK || source == WaterSource.PUMPED) {
            // The neighbours draw on the main and not on this tank.
            heater.notApplicable(PressureChecks.PEAK, "tank");
            return;
        }
        WaterTest test =
                heater.house().water() == null ? null : heater.house().water().getTest();
        if (test != null && Boolean.TRUE.equals(test.getAtPeak())) {
            heater.notApplicable(PressureChecks.PEAK, "");
            return;
        }
        FeedConditions feed = usable(heater, PressureChecks.PEAK);
        if (feed == null) {
            return;
        }
        int intake = feed.coldest();
        double share = heater.house().peakShare();
        double flow = heater.unit().heater().getRunningPressureFlow().si();
        Feed weaker = weaker(feed.feed(), share);
        double inletPa = weaker.curve().pressureAt(flow)
                + feed.at(intake).inletPa(flow, 0)
                - feed.feed().curve().pressureAt(flow);
        FindingBuilder finding = compare(heater, PressureChecks.PEAK, inletPa)
                .argument("percent", DisplayUnit.PERCENT.amount(share))
                .condition(feed.shut(intake))
                .source("judgement")
                .working(() -> peakWorking(heater, feed, share, intake, flow));
        finding.remedies(() -> WaterRemedies.morePressure(heater.house().water()));
        finding.add();
    }

    private static Feed weaker(Feed feed, double share) {
        SupplyCurve curve = feed.curve();
        double left = 1 - share;
        return new Feed(
                new SupplyCurve(curve.staticPa() * left, curve.runningPa() * left, curve.testFlowM3PerS()),
                feed.run(),
                List.of());
    }

    private static Working peakWorking(HeaterCase heater, FeedConditions feed, double share, int intake, double flow) {
        WorkingLines test = new WorkingLines();
        FeedWorking.addTest(test, feed.feed());
        WorkingLines lines = limit(heater).include(test.build(), "_q");
        UnitLines.addFlow(lines, "Q", "unitFlow", flow, heater.unit().heater(), "runningPressureFlow");
        lines.input("s", "peakShare", share, "", "judgement", "usual.peakShare")
                .step("p_0", "staticPeak", "p_0_q * (1 - s)", "bar", "")
                .step("p_1", "runningPeak", "p_1_q * (1 - s)", "bar", "")
                .step("Q_1", "testFlow", "Q_1_q", "L/min", "");
        FeedWorking.addWater(lines, feed.intakeC(intake), feed.intakeOrigin(intake));
        FeedWorking.addSupply(lines, "Q", "");
        FeedWorking.addRun(lines, feed.feed().run(), "Q", "p_s", 1, "p_in");
        return lines.build();
    }
}
