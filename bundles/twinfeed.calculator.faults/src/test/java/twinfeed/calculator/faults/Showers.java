// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.survey.Survey;

/** Findings of this calculator for the invented visits. */
final class Showers {
    private Showers() {}

    static Finding finding(Survey survey, String key) {
        return finding(survey, key, List.of());
    }

    /** With a margin at the switch as the pressure calculator would give it, Pa. */
    static Finding finding(Survey survey, String key, double marginPa) {
        return finding(survey, key, List.of(margin(marginPa)));
    }

    private static Calculator margin(double marginPa) {
        return new Calculator() {
            @Override
            public CalculatorDescriptor descriptor() {
                List<SharedQuantity> gives = List.of(SharedQuantity.SWITCH_MARGIN);
                return new CalculatorDescriptor(
                        "margin", "1", Runner.TEXTS, gives, List.of(), List.of(), List.of(), List.of());
            }

            @Override
            public Assessor prepare(Context context) {
                return (candidate, shared, findings) -> shared.put(SharedQuantity.SWITCH_MARGIN, marginPa);
            }
        };
    }

    private static Finding finding(Survey survey, String key, List<Calculator> others) {
        List<Calculator> all = new ArrayList<>(others);
        all.add(new FaultsCalculator());
        return new Runner(all, (mean, spread, month, southern) -> mean)
                .assess(survey, List.of(new Candidate(survey.getUnit().getHeater(), true)))
                .options()
                .get(0)
                .finding(key)
                .orElseThrow();
    }
}
