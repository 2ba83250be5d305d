// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SharedQuantity;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;

/**
 * Whether the heat comes on and stays on in the worst condition of the year: by the pressure at the switch or, where the
 * instructions name a flow instead, by that flow.
 */
final class SwitchAnswer implements PressureAnswer {
    /** Loss of a clean strainer with its solenoid valve where the instructions do not say, Pa: judgement, from memory. */
    private static final double USUAL_STRAINER_PA = 5000;

    private static final double USUAL_STRAINER_FLOW = 12 / FeedWorking.L_PER_MIN;
    private static final String SOURCE = "maker's instructions; the worst condition by month, voltage and open taps";

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

    private static SwitchPoint worst(HeaterCase heater, UnitFlows flows, PressureSwitch limits) {
        UnitData unit = heater.unit();
        SwitchSearch search = new SwitchSearch(flows.feed(), flows, limits, strainer(heater));
        Double downstream = unit.downstream();
        Double handset = heater.house().lowestHandsetM();
        if (!unit.heatingPossible() || downstream == null || handset == null) {
            return search.inlet();
        }
        SwitchPoint heating = search.heating(downstream, handset);
        if (!unit.inletPossible()) {
            return heating;
        }
        heater.house().context().assume("switchPlace", Map.of("heater", heater.title()));
        return SwitchPoint.worse(search.inlet(), heating);
    }

    /** Loss of strainer and solenoid valve over the square of the flow; without data a clean one's, as an assumption. */
    static double strainer(HeaterCase heater) {
        Double known = heater.unit().strainer();
        if (known != null || !heater.unit().inletPossible()) {
            return known == null ? 0 : known;
        }
        heater.house()
                .context()
                .assume(
                        "inletLoss",
                        Map.of(
                                "heater",
                                heater.title(),
                                "pressure",
                                USUAL_STRAINER_PA / FeedWorking.BAR,
                                "flow",
                                USUAL_STRAINER_FLOW * FeedWorking.L_PER_MIN));
        return USUAL_STRAINER_PA / (USUAL_STRAINER_FLOW * USUAL_STRAINER_FLOW);
    }

    private static void report(HeaterCase heater, UnitFlows flows, SwitchPoint worst) {
        FlowPoint point = worst.point();
        double strainer = strainer(heater);
        Double downstream = heater.unit().downstream();
        Double handset = heater.house().lowestHandsetM();
        heater.give(SharedQuantity.SWITCH_MARGIN, worst.marginPa());
        FindingBuilder finding = heater.on(PressureChecks.SWITCH)
                .compare(worst.switchPa() / FeedWorking.BAR, worst.limitPa() / FeedWorking.BAR)
                .variant(variant(worst))
                .condition(flows.feed().condition(point))
                .argument("flow", point.flowM3PerS() * FeedWorking.L_PER_MIN)
                .working(() -> SwitchWorking.of(flows, worst, strainer, downstream, handset == null ? 0 : handset))
                .source(SOURCE);
        if (worst.marginPa() < 0 && (point.limited() || worst.place() == SwitchPlace.INLET_CHAMBER)) {
            works(heater, point).forEach(finding::remedy);
        }
        finding.add();
    }

    private static List<Remedy> works(HeaterCase heater, FlowPoint point) {
        return point.open() > 0 ? WaterWorks.lessDisturbance(heater.house()) : WaterWorks.morePressure(heater.house());
    }

    private static String variant(SwitchPoint worst) {
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

    private static void activation(HeaterCase heater, UnitFlows flows, FlowPoint smallest) {
        double neededM3PerS = heater.unit().heater().getActivationFlow().si();
        FindingBuilder finding = heater.on(PressureChecks.ACTIVATION)
                .compare(smallest.flowM3PerS() * FeedWorking.L_PER_MIN, neededM3PerS * FeedWorking.L_PER_MIN)
                .variant(smallest.limited() ? "limited" : "")
                .condition(flows.feed().condition(smallest))
                .working(() -> PointWorking.flow(flows.feed(), smallest, flows.fullBore()))
                .source(SOURCE);
        // Where the heater's power sets the flow, no work on the feed gives more.
        if (smallest.limited() && smallest.flowM3PerS() < neededM3PerS) {
            works(heater, smallest).forEach(finding::remedy);
        }
        finding.add();
    }
}
