// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.hipparchus.random.SobolSequenceGenerator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Readings;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.model.survey.Survey;

/**
 * Says how sure findings are: draws all uncertain readings of a survey many times within their tolerances, runs the
 * calculators that compare a value with a limit on each draw, and gives for each check the chance that it passes, the interval of its margin, and the reading that
 * contributes most to the doubt.
 *
 * <p>The draws are a Sobol sequence with a seeded shift modulo 1, so the same survey gives the same answer. Each call works on a
 * copy of its own; a survey may be judged by several threads at once.
 */
public final class Uncertainty implements RemedySearch.Judge {
    /** The usual number of draws. */
    public static final int POINTS = 4096;

    /** The number of draws for a set of works, of which a search judges dozens. */
    private static final int WORK_POINTS = 1024;

    /** The usual seed. */
    public static final long SEED = 20_260_101L;

    /**
     * After so many draws a check whose answers are all alike is decided: were its chance of the other answer 5 %, all would be
     * alike in one case of 700. One that a good share of them passes and a good share fails is too close to call without more of them.
     */
    public static final int FIRST_POINTS = 128;

    private final Runner runner;
    private final int firstPoints;
    private final int points;
    private final long seed;
    private final boolean stopsAtDoubt;

    /** With the usual number of draws for every check. */
    public Uncertainty(Runner runner) {
        this(runner, POINTS, SEED);
    }

    /** With the usual number of draws only where the first ones leave open whether a deciding check is too close to call. */
    public static Uncertainty whereInDoubt(Runner runner) {
        return new Uncertainty(runner, FIRST_POINTS, POINTS, SEED);
    }

    /**
     * For sets of works of which only one that leaves nothing too close to call is an answer: the draws end as soon as a deciding check
     * is too close for certain, and the chances of the others are then rough.
     */
    public static Uncertainty untilDoubt(Runner runner) {
        return new Uncertainty(runner, FIRST_POINTS, WORK_POINTS, SEED, true);
    }

    /**
     * With a number of draws and a seed.
     *
     * @param runner judges each draw
     * @param points number of draws; a power of 2 spreads them best
     * @param seed seed of the shift
     */
    public Uncertainty(Runner runner, int points, long seed) {
        this(runner, points, points, seed);
    }

    private Uncertainty(Runner runner, int firstPoints, int points, long seed) {
        this(runner, firstPoints, points, seed, false);
    }

    private Uncertainty(Runner runner, int firstPoints, int points, long seed, boolean stopsAtDoubt) {
        this.stopsAtDoubt = stopsAtDoubt;
        if (points < 2) {
            throw new IllegalArgumentException("at least 2 draws, not " + points);
        }
        this.runner = runner;
        this.firstPoints = firstPoints;
        this.points = points;
        this.seed = seed;
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
     * <p>A reading is drawn alike in the house as surveyed and in the changed one, so that what is fitted from it fits both.
     *
     * @param surveyed the house in which the readings were taken; not changed
     * @param changed the survey with the works done, or the same; not changed
     * @param candidate the heater
     * @param nominal the result with the readings as taken, under all conditions
     */
    public OptionResult judge(Survey surveyed, Survey changed, Candidate candidate, OptionResult nominal) {
        Survey copy = EcoreUtil.copy(changed);
        Survey before = surveyed == changed ? copy : EcoreUtil.copy(surveyed);
        SampledInputs inputs = SampledInputs.of(before, copy, Runner.rules(changed));
        if (inputs.list().isEmpty()) {
            return nominal;
        }
        Margins margins = sample(before, copy, candidate, inputs, nominal);
        List<Finding> findings = new ArrayList<>();
        for (int check = 0; check < nominal.findings().size(); check++) {
            findings.add(margins.judged(check));
        }
        return OptionResult.of(candidate, findings);
    }

    private Margins sample(
            Survey before, Survey copy, Candidate candidate, SampledInputs inputs, OptionResult nominal) {
        GridFocus focus = new GridFocus(nominal);
        Runner sampled = sampledCalculators(nominal);
        Margins margins = new Margins(nominal, inputs.list(), points);
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(inputs.dimensions());
        double[] shift = shift(inputs.dimensions());
        // A draw changes readings; it neither takes nor forgets one.
        Readings readings = new Readings(copy);
        for (int draw = 0; draw < points; draw++) {
            double[] point = shifted(sobol.nextVector(), shift);
            inputs.draw(point);
            margins.record(point, sampled.judge(before, copy, candidate, focus, readings));
            if (enough(draw + 1, margins)) {
                break;
            }
        }
        return margins;
    }

    /** Asked at powers of 2, where the points of the sequence are spread evenly. */
    private boolean enough(int drawn, Margins margins) {
        return drawn >= firstPoints
                && Integer.bitCount(drawn) == 1
                && (margins.settled() || stopsAtDoubt && margins.doubtful());
    }

    /** The calculators that compare a value with a limit in this house, and those that they depend on: only these are run on draws. */
    private Runner sampledCalculators(OptionResult nominal) {
        Set<String> comparing = nominal.findings().stream()
                .filter(Margins::isSampled)
                .map(Finding::calculator)
                .collect(Collectors.toSet());
        return runner.restrictedTo(id -> comparing.contains(id)
                || comparing.stream().anyMatch(other -> runner.influence().reaches(id, other)));
    }

    private double[] shift(int dimensions) {
        Random random = new Random(seed);
        double[] shift = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            shift[i] = random.nextDouble();
        }
        return shift;
    }

    private static double[] shifted(double[] point, double[] shift) {
        for (int i = 0; i < point.length; i++) {
            double moved = point[i] + shift[i];
            point[i] = moved >= 1 ? moved - 1 : moved;
        }
        return point;
    }
}
