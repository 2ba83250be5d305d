// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Readings;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.cache.CheckMargin;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Rejudging;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;

/** One heater in one house, judged with the uncertain inputs wherever they are put. */
final class Trials {
    private final House house;
    private final SampledInputs inputs;
    private final OptionResult nominal;
    private final int[] sampled;
    private final int[] asked;
    private final Rejudging rejudging;
    private final Map<String, int[]> read;

    /** What is judged. */
    private record House(
            Runner runner,
            Survey surveyed,
            Survey changed,
            Candidate candidate,
            GridFocus focus,
            Readings readings,
            @Nullable AnswerCache cache) {
        Rejudging asking(Set<String> checks) {
            return runner.rejudging(surveyed, changed, candidate, focus, readings, checks, cache);
        }
    }

    /**
     * Trials.
     *
     * @param surveyed a private copy of the house in which the readings were taken
     * @param changed a private copy of the house with works done, or the same
     * @param inputs the uncertain inputs of both
     * @param nominal the result with the readings as taken
     * @param cache keeps what calculators answer; absent where nobody asks again
     */
    Trials(
            Runner runner,
            Survey surveyed,
            Survey changed,
            Candidate candidate,
            SampledInputs inputs,
            OptionResult nominal,
            @Nullable AnswerCache cache) {
        this.inputs = inputs;
        this.read = new HashMap<>();
        this.nominal = nominal;
        // Inputs that are put elsewhere change readings; none is taken or forgotten.
        this.house =
                new House(runner, surveyed, changed, candidate, new GridFocus(nominal), new Readings(changed), cache);
        this.sampled = IntStream.range(0, nominal.findings().size())
                .filter(i -> isSampled(nominal.findings().get(i)))
                .toArray();
        this.asked = IntStream.range(0, sampled.length).toArray();
        this.rejudging = house.asking(keys()).fromHere();
    }

    private Trials(Trials all, Collection<Integer> checks) {
        this.house = all.house;
        this.inputs = all.inputs;
        this.read = all.read;
        this.nominal = all.nominal;
        this.sampled = all.sampled;
        this.asked = checks.stream().mapToInt(Integer::intValue).sorted().toArray();
        this.rejudging = house.asking(keys());
    }

    private Set<String> keys() {
        return Arrays.stream(asked)
                .mapToObj(check -> nominal(check).check().key())
                .collect(Collectors.toSet());
    }

    /** The same for {@link #at} and some of the checks only, about which others have nothing to say: they count as not passing. */
    Trials asking(Collection<Integer> checks) {
        inputs.place(new double[inputs.list().size()]);
        return new Trials(this, checks);
    }

    /** Whether tolerances can change what a finding says: a value was compared with a limit. */
    private static boolean isSampled(Finding nominal) {
        boolean decided = nominal.outcome() == Outcome.PASSES || nominal.outcome() == Outcome.FAILS;
        return decided && nominal.check().limitType() != LimitType.REPORT;
    }

    /** How many checks are sampled. */
    int checks() {
        return sampled.length;
    }

    /** Where a sampled check stands among the nominal findings. */
    int index(int check) {
        return sampled[check];
    }

    /** What a sampled check says with the readings as taken. */
    Finding nominal(int check) {
        return nominal.findings().get(sampled[check]);
    }

    SampledInputs inputs() {
        return inputs;
    }

    /** What the checks say with the readings as taken. */
    Trial nominal() {
        return trial(nominal.findings().stream().map(CheckMargin::of).toList());
    }

    /** What the checks say with all inputs at given positions. */
    Trial at(double[] positions) {
        inputs.place(positions);
        return moved(positions);
    }

    /**
     * What the checks say with one input elsewhere and all others as taken; it is put back.
     *
     * @param number of the input
     */
    Trial with(int number, double position) {
        SampledInput input = inputs.list().get(number);
        double[] positions = new double[inputs.list().size()];
        positions[number] = position;
        input.place(position);
        Trial trial = moved(positions);
        input.place(0);
        return trial;
    }

    /** What the checks say with the inputs where they have been put. */
    private Trial moved(double[] positions) {
        return trial(rejudging.moved(calculator -> positions(calculator, positions)));
    }

    /** The positions of those inputs that a calculator reads. */
    private double[] positions(CalculatorDescriptor calculator, double[] all) {
        int[] numbers = read.computeIfAbsent(calculator.id(), id -> IntStream.range(0, all.length)
                .filter(i -> inputs.list().get(i).isReadBy(calculator))
                .toArray());
        double[] positions = new double[numbers.length];
        for (int i = 0; i < positions.length; i++) {
            positions[i] = all[numbers[i]];
        }
        return positions;
    }

    private Trial trial(List<CheckMargin> said) {
        boolean[] passes = new boolean[sampled.length];
        double[] margins = new double[sampled.length];
        Arrays.fill(margins, Double.NaN);
        int from = 0;
        for (int check : asked) {
            int found = find(said, nominal(check).check().key(), from);
            // A calculator that breaks on a draw leaves findings out: the check then counts as not passing.
            if (found >= 0) {
                from = found + 1;
                passes[check] = said.get(found).passes();
                margins[check] = said.get(found).margin();
            }
        }
        return new Trial(passes, margins);
    }

    /** Margins come in the order of the nominal findings. */
    private static int find(List<CheckMargin> said, String key, int from) {
        for (int i = from; i < said.size(); i++) {
            if (said.get(i).check().equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
