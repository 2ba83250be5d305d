// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
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
final class MonthlyFlow implements FlowAnswer {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final Series.Axis MONTH = Series.Axis.of("month", Kind.RATIO);
    private static final Series.Axis FLOW = Series.Axis.of("flow", Kind.FLOW);
    private static final int DESIGN = 0;

    private final Wish wish;
    private final @Nullable Heater present;
    private final List<Integer> heated = new ArrayList<>();

    MonthlyFlow(Wish wish, @Nullable PresentUnit unit) {
        this.wish = wish;
        Heater heater = unit == null ? null : unit.getHeater();
        this.present = DeliveredPower.rated(heater) ? heater : null;
        for (int i = 1; i < wish.grid().intakes().size(); i++) {
            // A month in which nothing has to be heated has no flow to show.
            if (wish.heats(i)) {
                heated.add(i);
            }
        }
    }

    @Override
    public void answer(Candidate candidate, SharedQuantities exchange, Findings findings) {
        if (!DeliveredPower.blocked(FlowChecks.BY_MONTH, exchange, findings)) {
            byMonth(candidate, exchange, findings);
        }
        if (candidate.present()) {
            findings.on(FlowChecks.COMPARISON).outcome(Outcome.NOT_APPLICABLE).add();
        } else if (!DeliveredPower.blocked(FlowChecks.COMPARISON, exchange, findings)) {
            comparison(candidate, exchange, findings);
        }
    }

    private void byMonth(Candidate candidate, SharedQuantities exchange, Findings findings) {
        double powerW = DeliveredPower.nominalW(exchange, wish.grid());
        int coldest = wish.coldest();
        FindingBuilder finding = findings.on(FlowChecks.BY_MONTH).outcome(Outcome.NOT_APPLICABLE);
        if (wish.heats(coldest)) {
            finding.report(wish.outletFlow(powerW, coldest))
                    .condition(condition(coldest))
                    .argument("most", Kind.FLOW.amount(wish.outletFlow(powerW, wish.warmest())))
                    .argument("ample", Wish.AMPLE)
                    .variant(variant(powerW))
                    .working(() -> FlowWorking.outletFlow(HeatCase.nominal(exchange, wish, coldest)))
                    .series(curve("flow.byMonth", powerW));
            if (present != null && !candidate.present()) {
                finding.series(curve("flow.byMonth.present", presentW(candidate.heater(), powerW, present)));
            }
        }
        finding.add();
    }

    private String variant(double powerW) {
        if (!wish.heats(wish.warmest())) {
            return "unheated";
        }
        return Wish.variant(wish.outletFlow(powerW, wish.warmest()));
    }

    /** Months in which more could be heated than a shower passes have no flow to show either. */
    private Series curve(String key, double powerW) {
        List<Integer> shown = heated.stream()
                .filter(intake -> wish.outletFlow(powerW, intake) <= Wish.AMPLE.si())
                .toList();
        double[] x = new double[shown.size()];
        double[] y = new double[shown.size()];
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            int intake = shown.get(i);
            int month = wish.grid().intakes().get(intake).month();
            labels.add(MONTHS.get(month - 1));
            x[i] = month;
            y[i] = wish.outletFlow(powerW, intake);
        }
        return new Series(key, MONTH, FLOW, labels, x, y);
    }

    private double presentW(Heater heater, double powerW, Heater unit) {
        return DeliveredPower.ofOtherW(heater, powerW, originV(), unit);
    }

    private double originV() {
        return wish.grid().voltage(wish.grid().nominal());
    }

    private Condition condition(int intake) {
        return Condition.of(wish.grid().intakes().get(intake), originV(), null);
    }

    private void comparison(Candidate candidate, SharedQuantities exchange, Findings findings) {
        double powerW = DeliveredPower.nominalW(exchange, wish.grid());
        if (present == null) {
            findings.on(FlowChecks.COMPARISON)
                    .cannotTell(List.of("survey.unit.heater.power"))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(FlowChecks.COMPARISON).outcome(Outcome.NOT_APPLICABLE);
        double presentW = presentW(candidate.heater(), powerW, present);
        if (wish.heats(DESIGN)) {
            double now = wish.outletFlow(presentW, DESIGN);
            // Two units of one rating differ by rounding, which is neither more nor less.
            double gain = LimitType.AT_LEAST.margin(wish.outletFlow(powerW, DESIGN), now);
            finding.report(gain)
                    .condition(condition(DESIGN))
                    .variant(gain < 0 ? "less" : "")
                    .argument("flow", Kind.FLOW.amount(now + gain))
                    .argument("present", Kind.FLOW.amount(now))
                    .argument("change", Kind.FLOW.amount(Math.abs(gain)))
                    .working(() -> FlowWorking.difference(
                            HeatCase.nominal(exchange, wish, DESIGN),
                            presentW,
                            candidate.heater(),
                            present,
                            originV()));
        }
        finding.add();
    }
}
