// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import java.util.function.BiConsumer;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.survey.Survey;

/** A calculator whose answers a test makes up. */
public record SyntheticCalculator(String id, List<Check> checks, BiConsumer<Survey, Findings> answers)
        implements Calculator {
    @Override
    public CalculatorDescriptor descriptor() {
        return new CalculatorDescriptor(id, "1", Runner.TEXTS, List.of(), List.of(), checks, List.of(), List.of());
    }

    @Override
    public Assessor prepare(Context context) {
        return (candidate, shared, findings) -> answers.accept(context.survey(), findings);
    }
}
