// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.sampling.Uncertainty;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.survey.Survey;

/**
 * Finds the least costly work for each option, tolerances of the readings counted. Options do not depend on one another and are
 * planned side by side where that is wanted, each on a copy of the survey of its own.
 */
final class Planning implements RemedySearch.Judge {
    private final Runner runner;
    private final Uncertainty uncertainty;
    private final Uncertainty ofWorks;
    private final RemedySearch search;
    private final boolean sideBySide;
    private final BooleanSupplier wanted;

    /**
     * Planning.
     *
     * @param sideBySide whether several options may be planned at once
     * @param wanted whether somebody still waits for the answer; asked before each house that is judged
     * @param cache keeps what calculators answer for the next time; absent where nobody asks again
     */
    Planning(
            Runner runner,
            WorkCost.Source costs,
            boolean sideBySide,
            BooleanSupplier wanted,
            @Nullable AnswerCache cache) {
        this.wanted = wanted;
        this.sideBySide = sideBySide;
        this.runner = runner;
        this.uncertainty = Uncertainty.byNeed(runner, cache);
        this.ofWorks = Uncertainty.untilDoubt(runner, cache);
        this.search = new RemedySearch(this, costs, runner.influence());
    }

    List<WorkPlan> plans(Survey survey, List<OptionResult> options) {
        List<Survey> copies =
                options.stream().map(option -> EcoreUtil.copy(survey)).toList();
        IntStream all = IntStream.range(0, options.size());
        return (sideBySide ? all.parallel() : all)
                .mapToObj(i -> plan(copies.get(i), options.get(i)))
                .toList();
    }

    private WorkPlan plan(Survey survey, OptionResult nominal) {
        goOn();
        Candidate candidate = nominal.candidate();
        return search.plan(survey, candidate, uncertainty.judge(survey, survey, candidate, nominal));
    }

    @Override
    public OptionResult judge(Survey surveyed, Survey edited, Candidate candidate) {
        return judge(surveyed, edited, candidate, result -> true);
    }

    /** A set of works that fails with the readings as taken need not be drawn: it is no answer whatever the tolerances. */
    @Override
    public OptionResult judge(Survey surveyed, Survey edited, Candidate candidate, Predicate<OptionResult> promising) {
        goOn();
        OptionResult result = runner.judge(surveyed, edited, candidate);
        return result.findings().stream().anyMatch(Finding::stands)
                ? result
                : ofWorks.judge(surveyed, edited, candidate, result, promising);
    }

    private void goOn() {
        if (!wanted.getAsBoolean()) {
            throw new NoLongerWantedException();
        }
    }
}
