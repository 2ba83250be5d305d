// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchState;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.hydraulics.WorstSwitchSearch;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.calculator.pressure.working.OperatingPointWorking;
import twinfeed.calculator.pressure.working.SwitchWorking;
import twinfeed.calculator.pressure.working.UnitLines;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.units.Kind;

/**
 * Whether the heat comes on and stays on in the worst condition of the year: by the pressure at the switch or, where the
 * instructions name a flow instead, by that flow.
 */
public final class SwitchChecks implements CheckGroup {
    private static final String SOURCE = "maker's instructions; the worst condition by month, voltage and open taps";

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.SWITCH, PressureChecks.ACTIVATION);
    }

    @Override
    public List<SharedQuantity> provides() {
        return List.of(SharedQuantity.SWITCH_MARGIN);
    }

    @Override
    public void answer(HeaterCase heater) {
        pressure(heater);
        activation(heater);
    }

    private static void pressure(HeaterCase heater) {
        Heater data = heater.unit().heater();
        if (data.getMakePressure() == null && data.getActivationFlow() != null) {
            heater.notApplicable(PressureChecks.SWITCH, "flow");
            return;
        }
        UnitFlows flows = heater.flows(PressureChecks.SWITCH);
        if (flows == null) {
            return;
        }
        List<String> missing = missing(heater);
        PressureSwitch limits = heater.unit().pressureSwitch();
        if (limits == null || !missing.isEmpty()) {
            heater.cannotTell(
                    PressureChecks.SWITCH,
                    limits == null ? new String[] {contradiction(data)} : missing.toArray(String[]::new));
        } else if (flows.heats()) {
            report(heater, flows, worst(heater, flows, limits));
        } else {
            heater.notApplicable(PressureChecks.SWITCH, "unheated");
        }
    }

    /** Make and break pressures that cannot both be right; without a break pressure it is the make pressure. */
    private static String contradiction(Heater data) {
        return data.getBreakPressure() == null ? "heater.makePressure" : "heater.breakPressure";
    }

    /** What a switch that may be behind the throttle asks for besides. */
    private static List<String> missing(HeaterCase heater) {
        List<String> missing = new ArrayList<>();
        if (heater.unit().heatingPossible()) {
            if (heater.unit().downstream() == null) {
                missing.add("heater.downstreamPressure");
            }
            if (heater.house().lowestHandsetM() == null) {
                missing.add("survey.water.lowestHandset");
            }
            if (!missing.isEmpty() && heater.unit().inletPossible()) {
                missing.add("heater.switchPlace");
            }
        }
        return missing;
    }

    private static SwitchState worst(HeaterCase heater, UnitFlows flows, PressureSwitch limits) {
        UnitData unit = heater.unit();
        WorstSwitchSearch search = new WorstSwitchSearch(flows.feed(), flows, limits, heater.strainer());
        Double downstream = unit.downstream();
        Double handset = heater.house().lowestHandsetM();
        if (!unit.heatingPossible() || downstream == null || handset == null) {
            return search.inlet();
        }
        SwitchState heating = search.heating(downstream, handset);
        if (!unit.inletPossible()) {
            return heating;
        }
        heater.house().context().assume("switchPlace", Map.of("heater", heater.title()));
        return SwitchState.worse(search.inlet(), heating);
    }

    private static void report(HeaterCase heater, UnitFlows flows, SwitchState worst) {
        OperatingPoint point = worst.point();
        double strainer = heater.strainer();
        Double handset = heater.house().lowestHandsetM();
        heater.provide(SharedQuantity.SWITCH_MARGIN, worst.marginPa());
        FindingBuilder finding = heater.on(PressureChecks.SWITCH)
                .compare(worst.switchPa(), worst.limitPa())
                .variant(variant(worst))
                .condition(flows.feed().condition(point))
                .argument("flow", Kind.FLOW.amount(point.flowM3PerS()))
                .working(() -> SwitchWorking.of(flows, worst, heater.unit(), strainer, handset == null ? 0 : handset))
                .source(SOURCE);
        if (point.limited() || worst.place() == SwitchPlace.INLET_CHAMBER) {
            finding.remedies(() -> works(heater, point));
        }
        finding.add();
    }

    private static List<Remedy> works(HeaterCase heater, OperatingPoint point) {
        return point.open() > 0
                ? WaterRemedies.lessDisturbance(heater.house().water())
                : WaterRemedies.morePressure(heater.house().water());
    }

    private static String variant(SwitchState worst) {
        if (worst.place() == SwitchPlace.INLET_CHAMBER) {
            return worst.point().open() > 0 ? "inletTap" : "inlet";
        }
        return worst.making() ? "heatingMake" : "heatingBreak";
    }

    private static void activation(HeaterCase heater) {
        if (heater.unit().heater().getActivationFlow() == null) {
            heater.notApplicable(PressureChecks.ACTIVATION, "");
            return;
        }
        if (heater.unit().activationM3PerS() == null) {
            heater.cannotTell(PressureChecks.ACTIVATION, "heater.activationFlow");
            return;
        }
        UnitFlows flows = heater.flows(PressureChecks.ACTIVATION);
        if (flows != null && flows.heats()) {
            activation(heater, flows, flows.smallest());
        } else if (flows != null) {
            heater.notApplicable(PressureChecks.ACTIVATION, "unheated");
        }
    }

    private static void activation(HeaterCase heater, UnitFlows flows, OperatingPoint smallest) {
        double neededM3PerS = heater.unit().heater().getActivationFlow().si();
        FindingBuilder finding = heater.on(PressureChecks.ACTIVATION)
                .compare(smallest.flowM3PerS(), neededM3PerS)
                .variant(smallest.limited() ? "limited" : "")
                .condition(flows.feed().condition(smallest))
                .working(() -> {
                    OperatingPointWorking point = OperatingPointWorking.of(flows, smallest);
                    UnitLines.addFlow(
                            point.lines(),
                            LimitType.SYMBOL,
                            "activationFlow",
                            neededM3PerS,
                            heater.unit().heater(),
                            "activationFlow");
                    return point.addFlow().lines().build();
                })
                .source(SOURCE);
        // Where the heater's power sets the flow, no work on the feed gives more.
        if (smallest.limited()) {
            finding.remedies(() -> works(heater, smallest));
        }
        finding.add();
    }
}
