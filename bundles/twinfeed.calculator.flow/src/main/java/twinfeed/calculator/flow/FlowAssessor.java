// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Grid;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;

/** Judges the flow of heaters in one house. */
final class FlowAssessor implements Assessor {
    private final TargetOutlet target;
    private final List<CheckGroup> groups;
    private final TemperatureAdvice advice;

    FlowAssessor(Context context, TargetOutlet target) {
        this.target = target;
        this.advice = new TemperatureAdvice(context, target);
        this.groups = List.of(
                new WinterFlow(target, context.parameters().si("least")),
                new MonthlyFlow(target, context.survey().getUnit()),
                new ElementFlow(target));
    }

    @Override
    public void assess(Candidate candidate, SharedQuantities shared, Findings findings) {
        if (!target.faults().isEmpty()) {
            shared.markMissing(SharedQuantity.TARGET_FLOW, target.faults());
            for (Check check : FlowChecks.ALL) {
                findings.on(check).cannotTell(target.faults()).add();
            }
            return;
        }
        provide(shared);
        for (CheckGroup group : groups) {
            if (findings.asks(group.checks())) {
                group.check(candidate, shared, findings);
            }
        }
        advice.check(candidate, findings);
    }

    private void provide(SharedQuantities shared) {
        if (!shared.has(SharedQuantity.DELIVERED_POWER)) {
            shared.markMissing(SharedQuantity.TARGET_FLOW, shared.missing(SharedQuantity.DELIVERED_POWER));
            return;
        }
        Grid grid = target.grid();
        double[] powerW = shared.get(SharedQuantity.DELIVERED_POWER);
        double[] flows = new double[SharedQuantity.TARGET_FLOW.size(grid)];
        for (int intake = 0; intake < grid.intakes().size(); intake++) {
            for (int voltage = 0; voltage < powerW.length; voltage++) {
                flows[grid.index(intake, voltage)] = target.massFlow(powerW[voltage], intake);
            }
        }
        shared.put(SharedQuantity.TARGET_FLOW, flows);
        shared.explain(
                SharedQuantity.TARGET_FLOW,
                at -> FlowWorking.massFlow(
                        HeatCase.at(shared, target, at / grid.voltageCount(), at % grid.voltageCount())));
    }
}
