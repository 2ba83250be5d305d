// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.StandInCalculator;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;

/** The margin at the switch is given to other calculators, also where nobody asks for a check of the pressure calculator itself. */
class SwitchMarginForOthersTest {
    private static final Check MARGIN = Check.report("reader.margin", Kind.PRESSURE);

    /** Reports the margin that it is given. */
    private static final class Reader implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Reader.class)
                    .consumes(SharedQuantity.SWITCH_MARGIN)
                    .checks(MARGIN)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                if (!findings.blocked(MARGIN, shared, SharedQuantity.SWITCH_MARGIN)) {
                    findings.on(MARGIN)
                            .report(shared.get(SharedQuantity.SWITCH_MARGIN)[0])
                            .add();
                }
            };
        }
    }

    @Test
    void theMarginIsThatOfTheSwitchCheck() {
        Survey survey = Samples.survey();
        Heater heater = Samples.heater();
        Runner runner = new Runner(
                List.of(
                        new PressureCalculator(),
                        new Reader(),
                        new StandInCalculator(List.of(SharedQuantity.TARGET_FLOW, SharedQuantity.DELIVERED_POWER))),
                (mean, spread, day, southern) -> mean);
        Finding read = runner
                .rejudging(
                        survey,
                        survey,
                        new Candidate(heater, false),
                        grid -> grid,
                        new Readings(survey),
                        Set.of(MARGIN.key()),
                        null)
                .all()
                .stream()
                .filter(finding -> finding.check().equals(MARGIN))
                .findFirst()
                .orElseThrow();
        Finding switched = Houses.finding(survey, heater, "pressure.switch");
        assertEquals(Fixtures.value(switched) - Fixtures.limit(switched), Fixtures.value(read), 1e-9);
    }
}
