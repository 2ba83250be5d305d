// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Series;
import twinfeed.calculator.SharedQuantities;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PresentUnit;
import twinfeed.units.Kind;

/** The flow month by month, and how it compares with the unit that is there. */
final class MonthlyFlow implements CheckGroup {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final Series.Axis MONTH = Series.Axis.of("month", Kind.RATIO);
    private static final Series.Axis FLOW = Series.Axis.of("flow", Kind.FLOW);
    private static final int DESIGN = 0;

    private final TargetOutlet target;
    private final @Nullable Heater present;
    private final List<Integer> heated = new ArrayList<>();

    MonthlyFlow(TargetOutlet target, @Nullable PresentUnit unit) {
        this.target = target;
        Heater heater = unit == null ? null : unit.getHeater();
        this.present = DeliveredPower.rated(heater) ? heater : null;
        for (int i = 1; i < target.grid().intakes().size(); i++) {
            // A month in which nothing has to be heated has no flow to show.
            if (target.heats(i)) {
                heated.add(i);
            }
        }
    }

    @Override
    public List<Check> checks() {
        return List.of(FlowChecks.BY_MONTH, FlowChecks.COMPARISON);
    }

    @Override
    public void check(Candidate candidate, SharedQuantities shared, Findings findings) {
        if (!DeliveredPower.blocked(FlowChecks.BY_MONTH, shared, findings)) {
            byMonth(candidate, shared, findings);
        }
        if (candidate.present()) {
            findings.on(FlowChecks.COMPARISON).outcome(Outcome.NOT_APPLICABLE).add();
        } else if (!DeliveredPower.blocked(FlowChecks.COMPARISON, shared, findings)) {
            comparison(candidate, shared, findings);
        }
    }

    private void byMonth(Candidate candidate, SharedQuantities shared, Findings findings) {
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        int coldest = target.coldest();
        FindingBuilder finding = findings.on(FlowChecks.BY_MONTH).outcome(Outcome.NOT_APPLICABLE);
        if (target.heats(coldest)) {
            finding.report(target.outletFlow(powerW, coldest))
                    .condition(condition(coldest))
                    .argument("most", Kind.FLOW.amount(target.outletFlow(powerW, target.warmest())))
                    .argument("ample", TargetOutlet.AMPLE)
                    .variant(variant(powerW))
                    .working(() -> FlowWorking.outletFlow(HeatCase.nominal(shared, target, coldest)))
                    .series(() -> curve("flow.byMonth", powerW));
            if (present != null && !candidate.present()) {
                finding.series(() -> curve("flow.byMonth.present", presentW(candidate.heater(), powerW, present)));
            }
        }
        finding.add();
    }

    private String variant(double powerW) {
        if (!target.heats(target.warmest())) {
            return TargetOutlet.UNHEATED;
        }
        return TargetOutlet.variant(target.outletFlow(powerW, target.warmest()));
    }

    /** Months in which more could be heated than a shower passes have no flow to show either. */
    private Series curve(String key, double powerW) {
        List<Integer> shown = heated.stream()
                .filter(intake -> target.outletFlow(powerW, intake) <= TargetOutlet.AMPLE.si())
                .toList();
        double[] x = new double[shown.size()];
        double[] y = new double[shown.size()];
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            int intake = shown.get(i);
            int month = target.grid().intakes().get(intake).month();
            labels.add(MONTHS.get(month - 1));
            x[i] = month;
            y[i] = target.outletFlow(powerW, intake);
        }
        return new Series(key, MONTH, FLOW, labels, x, y);
    }

    private double presentW(Heater heater, double powerW, Heater unit) {
        return DeliveredPower.ofOtherW(heater, powerW, originV(), unit);
    }

    private double originV() {
        return target.grid().voltage(target.grid().nominal());
    }

    private Condition condition(int intake) {
        return Condition.of(target.grid().intakes().get(intake), originV(), null);
    }

    private void comparison(Candidate candidate, SharedQuantities shared, Findings findings) {
        double powerW = DeliveredPower.nominalW(shared, target.grid());
        if (present == null) {
            findings.on(FlowChecks.COMPARISON)
                    .cannotTell(List.of("survey.unit.heater.power"))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(FlowChecks.COMPARISON).outcome(Outcome.NOT_APPLICABLE);
        double presentW = presentW(candidate.heater(), powerW, present);
        if (target.heats(DESIGN)) {
            double now = target.outletFlow(presentW, DESIGN);
            // Two units of one rating differ by rounding, which is neither more nor less.
            double gain = LimitType.AT_LEAST.margin(target.outletFlow(powerW, DESIGN), now);
            finding.report(gain)
                    .condition(condition(DESIGN))
                    .variant(gain < 0 ? "less" : "")
                    .argument("flow", Kind.FLOW.amount(now + gain))
                    .argument("present", Kind.FLOW.amount(now))
                    .argument("change", Kind.FLOW.amount(Math.abs(gain)))
                    .working(() -> FlowWorking.difference(
                            HeatCase.nominal(shared, target, DESIGN),
                            presentW,
                            candidate.heater(),
                            present,
                            originV()));
        }
        finding.add();
    }
}
