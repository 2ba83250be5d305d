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
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.calculator.pressure.working.OperatingPointWorking;
import twinfeed.calculator.pressure.working.UnitLines;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/** Whether the inlet pressure covers what lies behind the throttle and the throttle's own least difference. */
public final class ThrottleCheck implements CheckGroup {
    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.THROTTLE);
    }

    @Override
    public void answer(HeaterCase heater) {
        UnitFlows flows = heater.flows(PressureChecks.THROTTLE);
        if (flows == null) {
            return;
        }
        Double downstream = heater.unit().downstream();
        if (downstream == null || downstream <= 0) {
            heater.cannotTell(PressureChecks.THROTTLE, "heater.downstreamPressure");
        } else if (!flows.heats()) {
            heater.notApplicable(PressureChecks.THROTTLE, "");
        } else {
            report(heater, flows, new Outlet(downstream, 0));
        }
    }

    /** The largest target flow needs most, and most taps open leave least. */
    private static void report(HeaterCase heater, UnitFlows flows, Outlet downstream) {
        FeedConditions feed = flows.feed();
        Heater data = heater.unit().heater();
        double flow = flows.target(flows.largestTarget(), feed.highestVoltage());
        OperatingPoint point =
                new OperatingPoint(flows.largestTarget(), feed.highestVoltage(), feed.mostOpen(), flow, false);
        double inletPa = feed.at(point.intake()).inletPa(flow, point.open());
        double neededPa = Throttle.neededInletPressurePa(
                downstream, Math.max(0, data.getThrottleMinimum().si()), flow);
        FindingBuilder finding = heater.on(PressureChecks.THROTTLE)
                // Where the pipe cannot carry the flow nothing is left; a pressure below nothing would mean nothing.
                .compare(Math.max(0, inletPa), neededPa)
                .condition(feed.condition(point))
                .variant(inletPa < 0 ? "none" : "")
                .argument("flow", Kind.FLOW.amount(flow))
                .source("maker's instructions")
                .working(() -> working(heater.unit(), flows, point));
        finding.remedies(() -> WaterRemedies.lessDisturbance(heater.house().water()));
        finding.add();
    }

    private static Working working(UnitData unit, UnitFlows flows, OperatingPoint point) {
        OperatingPointWorking working =
                OperatingPointWorking.ofTarget(flows, point).addInlet();
        UnitLines.addThrottleNeed(working.lines(), unit, working.flow());
        return working.lines()
                .step("p_l", "pressureLeft", "max(0, p_in)", "bar", "")
                .build();
    }
}
