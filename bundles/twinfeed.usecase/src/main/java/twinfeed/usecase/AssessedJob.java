// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.RemedyPrices;

/**
 * A job that was assessed.
 *
 * @param opened the job
 * @param assessed what the calculators answered
 * @param plans the least costly work for each option, in the same order
 * @param record all of it in the model, with its texts in one language
 */
public record AssessedJob(OpenedJob opened, AssessmentResult assessed, List<WorkPlan> plans, Assessment record) {
    public AssessedJob {
        plans = List.copyOf(plans);
    }

    /** The house with the work of an option of the record done, a copy; as it is where the option has no work. */
    public Survey withWork(OptionAssessment option) {
        Survey changed = EcoreUtil.copy(opened.job().getSurvey());
        int at = record.getOptions().indexOf(option);
        if (at >= 0) {
            plans.get(at).works().forEach(work -> work.edit().accept(changed));
        }
        return changed;
    }

    /** Which works could not be priced and why, in words; empty where every work that might have been the least costly has a price. */
    public List<String> unpriced() {
        return record.getAssumptions().stream()
                .filter(assumption -> RemedyPrices.UNPRICED.equals(assumption.getKey()))
                .map(Assumption::getText)
                .toList();
    }

    /** Whether a calculator left a check without an answer, or broke. */
    public boolean unanswered() {
        return unansweredChecks() > 0;
    }

    /** How many checks, over all options, a calculator left without an answer; one that broke counts as one more. */
    public int unansweredChecks() {
        return (int) assessed.options().stream()
                .flatMap(option -> option.findings().stream())
                .filter(finding -> finding.outcome() == Outcome.NOT_CHECKED
                        || finding.check().key().equals(Runner.BROKEN.key()))
                .count();
    }
}
