// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.model.survey.Survey;

/**
 * Says how sure findings are: moves the uncertain readings of a survey within their tolerances, runs the
 * calculators that compare a value with a limit, and gives for each check the chance that it passes, the interval of its margin, and the reading that
 * contributes most to the doubt.
 *
 * <p>The same survey gives the same answer. Each call works on a copy of its own; a survey may be judged by several threads at once.
 */
public final class Uncertainty implements RemedySearch.Judge {
    /** The usual seed. */
    public static final long SEED = 20_260_101L;

    /** With more uncertain readings than this, moving each alone takes longer than drawing all of them together. */
    private static final int MOST_INPUTS = 150;

    /** Draws where there are more. */
    private static final int PLAIN_POINTS = 256;

    private final Runner runner;
    private final Method method;
    private final int points;
    private final long seed;
    private final @Nullable AnswerCache cache;

    private enum Method {
        PLAIN,
        BY_NEED,
        UNTIL_DOUBT
    }

    private Uncertainty(Runner runner, Method method, int points, long seed, @Nullable AnswerCache cache) {
        if (points < 2) {
            throw new IllegalArgumentException("at least 2 draws, not " + points);
        }
        this.runner = runner;
        this.method = method;
        this.points = points;
        this.seed = seed;
        this.cache = cache;
    }

    /**
     * With as many judgements as a sure answer needs: the chance of every check has a standard deviation of at most 0.8 % at the end.
     */
    public static Uncertainty byNeed(Runner runner) {
        return byNeed(runner, null);
    }

    /**
     * The same for a house that is judged again and again with a reading edited in between.
     *
     * @param cache keeps what calculators answer
     */
    public static Uncertainty byNeed(Runner runner, @Nullable AnswerCache cache) {
        return new Uncertainty(runner, Method.BY_NEED, PLAIN_POINTS, SEED, cache);
    }

    /**
     * For sets of works of which only one that leaves nothing too close to call is an answer: it ends as soon as a deciding check
     * is too close for certain, and the chances of the others are then rough.
     */
    public static Uncertainty untilDoubt(Runner runner) {
        return untilDoubt(runner, null);
    }

    /**
     * The same for a house that is judged again and again.
     *
     * @param cache keeps what calculators answer
     */
    public static Uncertainty untilDoubt(Runner runner, @Nullable AnswerCache cache) {
        return new Uncertainty(runner, Method.UNTIL_DOUBT, PLAIN_POINTS, SEED, cache);
    }

    /**
     * With a number of draws, each judged.
     *
     * @param runner judges each draw
     * @param points number of draws, at least 2; a power of 2 spreads them best
     * @param seed seed of the draws
     * @throws IllegalArgumentException if there are fewer
     */
    public static Uncertainty plain(Runner runner, int points, long seed) {
        return new Uncertainty(runner, Method.PLAIN, points, seed, null);
    }

    /** Judges a candidate with the readings as taken, then adds to each finding how sure it is. */
    public OptionResult judge(Survey survey, Candidate candidate) {
        return judge(survey, survey, candidate);
    }

    @Override
    public OptionResult judge(Survey surveyed, Survey changed, Candidate candidate) {
        return judge(surveyed, changed, candidate, runner.judge(surveyed, changed, candidate));
    }

    /**
     * Adds to each finding how sure it is.
     *
     * <p>A reading is moved alike in the house as surveyed and in the changed one, so that what is fitted from it fits both.
     *
     * @param surveyed the house in which the readings were taken; not changed
     * @param changed the survey with the works done, or the same; not changed
     * @param candidate the heater
     * @param nominal the result with the readings as taken, under all conditions
     */
    public OptionResult judge(Survey surveyed, Survey changed, Candidate candidate, OptionResult nominal) {
        return judge(surveyed, changed, candidate, nominal, result -> true);
    }

    /**
     * The same for a set of works.
     *
     * @param promising whether a set may be the answer, by its outcomes, which are sure, and its chances, which may be rough; they stay so where it
     *     is not
     */
    public OptionResult judge(
            Survey surveyed,
            Survey changed,
            Candidate candidate,
            OptionResult nominal,
            Predicate<OptionResult> promising) {
        Survey copy = EcoreUtil.copy(changed);
        Survey before = surveyed == changed ? copy : EcoreUtil.copy(surveyed);
        SampledInputs inputs = SampledInputs.of(before, copy, Runner.rules(changed));
        if (inputs.list().isEmpty()) {
            return nominal;
        }
        Trials trials = new Trials(runner, before, copy, candidate, inputs, nominal, cache);
        Function<List<Finding>, OptionResult> result = sampled -> {
            List<Finding> findings = new ArrayList<>(nominal.findings());
            for (int check = 0; check < sampled.size(); check++) {
                findings.set(trials.index(check), sampled.get(check));
            }
            return OptionResult.of(candidate, findings);
        };
        return result.apply(sampled(trials, inputs.drawn(), sampled -> promising.test(result.apply(sampled))));
    }

    private List<Finding> sampled(Trials trials, DrawnInputs inputs, Predicate<List<Finding>> promising) {
        return method == Method.PLAIN || trials.inputs().list().size() > MOST_INPUTS
                ? new PlainDraws(trials, new Draws(inputs, seed), points).findings()
                : new ChancesByNeed(
                                trials, FirstDraws.of(inputs, seed), method == Method.UNTIL_DOUBT ? promising : null)
                        .findings();
    }
}
