// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.working.DrawOffWorking;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.HeatLines;
import twinfeed.calculator.pressure.working.OperatingPointWorking;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.water.Heat;
import twinfeed.engineering.water.Water;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/**
 * Whether enough water can be had: the largest flow, and what comes out in the warmest month, when the target temperature wants
 * more water than the feed may give. Too little of it runs hot, and works the cut-out.
 */
public final class SummerChecks implements CheckGroup {
    private static final String SOURCE = "judgement: from this temperature on a strong warning is due";

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.SUMMER, PressureChecks.SUMMER_LOW, PressureChecks.AVAILABLE);
    }

    @Override
    public void answer(HeaterCase heater) {
        available(heater);
        UnitFlows flows = heater.flows(PressureChecks.SUMMER);
        if (flows != null) {
            outlet(heater, flows, PressureChecks.SUMMER, 1);
        }
        UnitFlows lowFlows = heater.flows(PressureChecks.SUMMER_LOW);
        if (lowFlows != null) {
            outlet(
                    heater,
                    lowFlows,
                    PressureChecks.SUMMER_LOW,
                    lowShare(heater.unit().heater()));
        }
    }

    private static void available(HeaterCase heater) {
        FeedConditions feed = heater.feed(PressureChecks.AVAILABLE);
        if (feed == null) {
            return;
        }
        Outlet fullBore = heater.fullBore();
        if (fullBore == null) {
            heater.cannotTell(PressureChecks.AVAILABLE, "heater.runningPressureFlow");
            return;
        }
        int coldest = feed.coldest();
        double flow = feed.available(fullBore, coldest, 0);
        OperatingPoint point = new OperatingPoint(coldest, 0, 0, flow, true);
        heater.on(PressureChecks.AVAILABLE)
                .report(flow)
                .condition(feed.shut(coldest))
                .variant(heater.measured() ? "measured" : "")
                .source("maker's instructions: the least running pressure stands in for the unit's losses")
                .working(() -> flow > 0
                        ? OperatingPointWorking.available(feed, point, fullBore, heater::fullBoreWorking)
                        : Working.none())
                .add();
    }

    /** Share of the power on the lowest setting: the smallest element, or all where none is listed. */
    private static double lowShare(Heater heater) {
        double least = Double.MAX_VALUE;
        double sum = 0;
        for (Element element : heater.getElements()) {
            if (element.getPower() == null || element.getPower().si() <= 0) {
                return 1;
            }
            least = Math.min(least, element.getPower().si());
            sum += element.getPower().si();
        }
        return heater.getElements().size() < 2 ? 1 : least / sum;
    }

    private static void outlet(HeaterCase heater, UnitFlows flows, Check check, double share) {
        int warmest = flows.largestTarget();
        if (warmest < 0) {
            heater.notApplicable(check, "");
            return;
        }
        FeedConditions feed = flows.feed();
        int voltage = feed.highestVoltage();
        double target = share * flows.target(warmest, voltage);
        double available = flows.available(warmest, 0);
        OperatingPoint point = new OperatingPoint(warmest, voltage, 0, Math.min(target, available), available < target);
        double powerW = share * flows.powerW(voltage);
        double outletC = point.flowM3PerS() > 0
                ? Heat.outletTemperature(
                                powerW,
                                feed.intakeC(warmest),
                                point.flowM3PerS() * feed.at(warmest).fluid().densityKgPerM3())
                        .orElse(Water.HIGHEST_C)
                : Water.HIGHEST_C;
        report(heater, flows, check, new Summer(point, share, powerW, outletC));
    }

    /** What comes out. */
    private record Summer(OperatingPoint point, double share, double powerW, double outletC) {}

    private static void report(HeaterCase heater, UnitFlows flows, Check check, Summer summer) {
        OperatingPoint point = summer.point();
        double limitC = heater.house().strongC();
        FindingBuilder finding = heater.on(check)
                .compare(summer.outletC(), Math.max(limitC, heater.house().targetC()))
                .condition(flows.feed().grid().condition(point.intake(), point.voltage(), 0))
                .argument("flow", Kind.FLOW.amount(point.flowM3PerS()))
                .argument("power", Kind.POWER.amount(summer.powerW()))
                .variant(variant(heater, summer))
                .source(SOURCE);
        if (summer.outletC() < Water.HIGHEST_C) {
            finding.working(() -> working(flows, summer));
        }
        finding.remedies(() -> WaterRemedies.morePressure(heater.house().water()));
        finding.add();
    }

    private static String variant(HeaterCase heater, Summer summer) {
        if (summer.outletC() > heater.unit().cutOutC()) {
            return "cutOut";
        }
        return summer.point().limited() ? "limited" : "";
    }

    private static Working working(UnitFlows flows, Summer summer) {
        FeedConditions feed = flows.feed();
        int intake = summer.point().intake();
        OperatingPointWorking point =
                OperatingPointWorking.of(flows, summer.point(), summer.share()).addFlow();
        FeedWorking.addDensity(point.lines(), feed.intakeC(intake), feed.intakeOrigin(intake));
        DrawOffWorking.addPower(point.lines(), flows, summer.point().voltage(), summer.powerW(), summer.share());
        HeatLines.addOutlet(point.lines(), point.flow());
        return point.lines().build();
    }
}
