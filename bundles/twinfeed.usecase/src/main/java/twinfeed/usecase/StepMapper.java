// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.AssessmentFactory;

/** Writes a line of a working into the model. */
final class StepMapper {
    private StepMapper() {}

    /**
     * The line with its texts.
     *
     * @param step the line
     * @param meaning what it stands for, in words
     * @param source where value or formula come from, as readers see it; may be empty
     * @param origin which reading it is, see {@link Step#origin()}; may be empty
     */
    static twinfeed.model.assessment.Step record(Step step, String meaning, String source, String origin) {
        twinfeed.model.assessment.Step record = AssessmentFactory.eINSTANCE.createStep();
        record.setSymbol(step.symbol());
        record.setMeaning(meaning);
        record.setValue(step.value());
        record.setUnit(step.unit());
        record.setExpression(step.expression());
        record.setSource(source.isEmpty() ? null : source);
        record.setOrigin(origin.isEmpty() ? null : origin);
        return record;
    }
}
