// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.water.Heat;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/** What the rating alone gives, what the low setting gives, and what comes out when an element has burnt out. */
final class ElementFlow implements CheckGroup {
    private static final int DESIGN = 0;

    private final TargetOutlet target;

    ElementFlow(TargetOutlet target) {
        this.target = target;
    }

    @Override
    public List<Check> checks() {
        return List.of(FlowChecks.AT_RATING, FlowChecks.LOW_POWER, FlowChecks.ONE_ELEMENT);
    }

    @Override
    public void check(Candidate candidate, SharedQuantities shared, Findings findings) {
        Heater heater = candidate.heater();
        atRating(heater, findings);
        double[] elementsW = elementsW(heater);
        if (!DeliveredPower.blocked(FlowChecks.LOW_POWER, shared, findings)) {
            lowPower(heater, elementsW, shared, findings);
        }
        if (!DeliveredPower.blocked(FlowChecks.ONE_ELEMENT, shared, findings)) {
            oneElement(heater, elementsW, shared, findings);
        }
    }

    /** So that something can be said of a heater before anybody has seen the cable; it decides nothing. */
    private void atRating(Heater heater, Findings findings) {
        if (findings.blocked(FlowChecks.AT_RATING)) {
            return;
        }
        if (!DeliveredPower.rated(heater)) {
            findings.on(FlowChecks.AT_RATING)
                    .cannotTell(List.of("heater.power"))
                    .add();
            return;
        }
        double ratedW = heater.getPower().si();
        if (!target.heats(DESIGN)) {
            findings.on(FlowChecks.AT_RATING).outcome(Outcome.NOT_APPLICABLE).add();
            return;
        }
        double flow = target.outletFlow(ratedW, DESIGN);
        findings.on(FlowChecks.AT_RATING)
                .report(flow)
                .variant(TargetOutlet.variant(flow))
                .argument("ample", TargetOutlet.AMPLE)
                .condition(Condition.of(target.grid().intakes().get(DESIGN), null, null))
                .argument("power", Kind.POWER.amount(ratedW))
                .argument("voltage", heater.getVoltage().si())
                .argument("inletFlow", Kind.FLOW.amount(target.inletFlow(ratedW, DESIGN)))
                .working(() -> FlowWorking.ratedFlow(new HeatCase(ratedW, Working.none(), target, DESIGN), heater))
                .add();
    }

    /** The listed elements' powers; an element without a power, or only one, tells nothing of a low setting. */
    private static double[] elementsW(Heater heater) {
        List<Element> elements = heater.getElements();
        double[] powers = new double[elements.size()];
        for (int i = 0; i < powers.length; i++) {
            Element element = elements.get(i);
            if (element.getPower() == null || element.getPower().si() <= 0) {
                return new double[0];
            }
            powers[i] = element.getPower().si();
        }
        return powers;
    }

    /** Share of full power of the smallest element alone, by which the low setting heats. */
    private static double leastShare(double... elementsW) {
        double least = Double.MAX_VALUE;
        double sum = 0;
        for (double element : elementsW) {
            least = Math.min(least, element);
            sum += element;
        }
        return least / sum;
    }

    /** Share of full power that is left when the largest element is open: the coldest that one fault can make it. */
    private static double leastShareLeft(double... elementsW) {
        double most = 0;
        double sum = 0;
        for (double element : elementsW) {
            most = Math.max(most, element);
            sum += element;
        }
        return 1 - most / sum;
    }

    private void lowPower(Heater heater, double[] elementsW, SharedQuantities shared, Findings findings) {
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        int warmest = target.warmest();
        if (elementsW.length < 2 || !target.heats(warmest)) {
            notApplicable(FlowChecks.LOW_POWER, elementsW, findings);
            return;
        }
        double share = leastShare(elementsW);
        double flow = target.outletFlow(share * powerW, warmest);
        findings.on(FlowChecks.LOW_POWER)
                .report(flow)
                .variant(TargetOutlet.variant(flow))
                .argument("ample", TargetOutlet.AMPLE)
                .condition(condition(warmest))
                .argument("power", Kind.POWER.amount(share * powerW))
                .argument("winter", Kind.FLOW.amount(target.outletFlow(share * powerW, DESIGN)))
                .working(() -> FlowWorking.shareFlow(HeatCase.nominal(shared, target, warmest), share, heater))
                .add();
    }

    private static void notApplicable(Check check, double[] elementsW, Findings findings) {
        findings.on(check)
                .outcome(Outcome.NOT_APPLICABLE)
                .variant(elementsW.length < 2 ? "" : TargetOutlet.UNHEATED)
                .add();
    }

    private Condition condition(int intake) {
        return Condition.of(
                target.grid().intakes().get(intake),
                target.grid().voltage(target.grid().nominal()),
                null);
    }

    private void oneElement(Heater heater, double[] elementsW, SharedQuantities shared, Findings findings) {
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        if (elementsW.length < 2 || !target.heats(DESIGN) || powerW <= 0) {
            notApplicable(FlowChecks.ONE_ELEMENT, elementsW, findings);
            return;
        }
        double share = leastShareLeft(elementsW);
        double massFlow = target.massFlow(powerW, DESIGN);
        double outletC = Heat.outletTemperature(share * powerW, target.intakeC(DESIGN), massFlow)
                .value();
        findings.on(FlowChecks.ONE_ELEMENT)
                .report(outletC)
                .condition(condition(DESIGN))
                .argument("power", Kind.POWER.amount(share * powerW))
                .argument("flow", Kind.FLOW.amount(target.outletFlow(powerW, DESIGN)))
                .working(() -> FlowWorking.shareOutlet(HeatCase.nominal(shared, target, DESIGN), share, heater))
                .add();
    }
}
