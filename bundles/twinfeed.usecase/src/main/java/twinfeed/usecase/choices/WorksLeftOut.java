// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;

/** Costs of works by which those that the estimator does not want are the last resort: any other set that does is taken before. */
public record WorksLeftOut(WorkCost.Source costs, List<String> ids) implements WorkCost.Source {
    private static final int LAST = 1000;

    /** The costs as they are, where nothing is left out. */
    public static WorkCost.Source of(WorkCost.Source costs, QuoteChoices choices) {
        return choices.without().isEmpty() ? costs : new WorksLeftOut(costs, choices.without());
    }

    @Override
    public WorkCost.Source with(Candidate candidate) {
        return new WorksLeftOut(costs.with(candidate), ids);
    }

    @Override
    public WorkCost of(List<Remedy> works) {
        WorkCost cost = costs.of(works);
        int unwanted =
                (int) works.stream().filter(work -> ids.contains(work.id())).count();
        return new WorkCost(cost.enquiries() + LAST * unwanted, cost.price(), cost.leadDays());
    }
}
