// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks.sample;

import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.model.assessment.FindingClass;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Texts;

/** Reports one number for any heater; no reading is needed. */
public final class CupboardCalculator implements Calculator {
    private static final Check ROOM = Check.of("cupboard.room", FindingClass.ADVICE, LimitType.AT_LEAST, "m");

    private static final CalculatorDescriptor STATEMENT = new CalculatorDescriptor(
            "cupboard",
            "7.0",
            new Texts(CupboardCalculator.class, "Cupboard"),
            List.of(),
            List.of(),
            List.of(ROOM),
            List.of(),
            List.of());

    @Override
    public CalculatorDescriptor statement() {
        return STATEMENT;
    }

    @Override
    public Assessor prepare(Context context) {
        return (candidate, exchange, findings) ->
                findings.on(ROOM).compare(2, 1).add();
    }
}
