// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/** The flow at the winter design intake: enough to shower, enough to bring the heat on, and what the rating would give. */
final class WinterFlow implements CheckGroup {
    private static final int DESIGN = 0;
    private static final String LEAST_SOURCE = "judgement: a weaker flow is felt as a trickle";
    private static final String INSTRUCTIONS = "maker's instructions";

    private final TargetOutlet target;
    private final double leastM3PerS;

    WinterFlow(TargetOutlet target, double leastM3PerS) {
        this.target = target;
        this.leastM3PerS = leastM3PerS;
    }

    @Override
    public List<Check> checks() {
        return List.of(FlowChecks.WINTER, FlowChecks.ACTIVATION);
    }

    @Override
    public void check(Candidate candidate, SharedQuantities shared, Findings findings) {
        winter(shared, findings);
        activation(candidate.heater(), shared, findings);
    }

    private void winter(SharedQuantities shared, Findings findings) {
        if (DeliveredPower.blocked(FlowChecks.WINTER, shared, findings)) {
            return;
        }
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        FindingBuilder finding = start(findings, powerW);
        if (target.heats(DESIGN)) {
            double flow = target.outletFlow(powerW, DESIGN);
            finding.compare(flow, leastM3PerS)
                    .variant(TargetOutlet.variant(flow))
                    .argument("ample", TargetOutlet.AMPLE)
                    .working(() -> FlowWorking.outletFlow(HeatCase.nominal(shared, target, DESIGN)));
        }
        finding.source(LEAST_SOURCE).add();
    }

    private FindingBuilder start(Findings findings, double powerW) {
        return findings.on(FlowChecks.WINTER)
                .outcome(Outcome.NOT_APPLICABLE)
                .condition(condition())
                .argument("power", Kind.POWER.amount(powerW))
                .argument("intake", target.intakeC(DESIGN))
                .argument("outlet", target.outletC())
                .argument("inletFlow", Kind.FLOW.amount(target.inletFlow(powerW, DESIGN)));
    }

    private Condition condition() {
        return Condition.of(
                target.grid().intakes().get(DESIGN),
                target.grid().voltage(target.grid().nominal()),
                null);
    }

    /** The sensor sits in the cold inlet, so the volume at the inlet counts. */
    private void activation(Heater heater, SharedQuantities shared, Findings findings) {
        if (heater.getActivationFlow() == null) {
            findings.on(FlowChecks.ACTIVATION).outcome(Outcome.NOT_APPLICABLE).add();
            return;
        }
        if (DeliveredPower.blocked(FlowChecks.ACTIVATION, shared, findings)) {
            return;
        }
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        FindingBuilder finding = findings.on(FlowChecks.ACTIVATION)
                .outcome(Outcome.NOT_APPLICABLE)
                .variant(TargetOutlet.UNHEATED);
        if (target.heats(DESIGN)) {
            finding.compare(
                            target.inletFlow(powerW, DESIGN),
                            heater.getActivationFlow().si())
                    .variant("")
                    .argument("outlet", target.outletC())
                    .working(() -> FlowWorking.inletFlow(HeatCase.nominal(shared, target, DESIGN)));
        }
        finding.condition(condition()).source(INSTRUCTIONS).add();
    }
}
