// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Readings;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Rejudging;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Working;
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

    /** What is judged. */
    private record House(
            Runner runner, Survey surveyed, Survey changed, Candidate candidate, GridFocus focus, Readings readings) {
        Rejudging asking(Set<String> checks) {
            return runner.rejudging(surveyed, changed, candidate, focus, readings, checks);
        }
    }

    /**
     * Trials.
     *
     * @param surveyed a private copy of the house in which the readings were taken
     * @param changed a private copy of the house with works done, or the same
     * @param inputs the uncertain inputs of both
     * @param nominal the result with the readings as taken
     */
    Trials(
            Runner runner,
            Survey surveyed,
            Survey changed,
            Candidate candidate,
            SampledInputs inputs,
            OptionResult nominal) {
        this.inputs = inputs;
        this.nominal = nominal;
        // Inputs that are put elsewhere change readings; none is taken or forgotten.
        this.house = new House(runner, surveyed, changed, candidate, new GridFocus(nominal), new Readings(changed));
        this.sampled = IntStream.range(0, nominal.findings().size())
                .filter(i -> isSampled(nominal.findings().get(i)))
                .toArray();
        this.asked = IntStream.range(0, sampled.length).toArray();
        this.rejudging = house.asking(keys()).fromHere();
    }

    private Trials(Trials all, Collection<Integer> checks) {
        this.house = all.house;
        this.inputs = all.inputs;
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
        return trial(nominal.findings(), true);
    }

    /** What the checks say with all inputs at given positions. */
    Trial at(double[] positions) {
        inputs.place(positions);
        return trial(rejudging.all(), false);
    }

    /** What the checks say with one input elsewhere and all others as taken; it is put back. */
    Trial with(SampledInput input, double position) {
        input.place(position);
        Trial trial = trial(rejudging.moved(input::isReadBy), false);
        input.place(0);
        return trial;
    }

    private Trial trial(List<Finding> findings, boolean isNominal) {
        boolean[] passes = new boolean[sampled.length];
        double[] margins = new double[sampled.length];
        Arrays.fill(margins, Double.NaN);
        int from = 0;
        for (int check : asked) {
            Finding finding = nominal(check);
            if (!isNominal) {
                int found = find(findings, finding.check().key(), from);
                from = found < 0 ? from : found + 1;
                // A calculator that breaks on a draw leaves findings out: the check then counts as not passing.
                finding = found < 0 ? UNANSWERED : findings.get(found);
            }
            Finding.Figures figures = finding.figures();
            passes[check] = finding.outcome() == Outcome.PASSES || finding.outcome() == Outcome.NOT_APPLICABLE;
            margins[check] = figures == null ? Double.NaN : figures.margin();
        }
        return new Trial(passes, margins);
    }

    /** Findings come in the order of the nominal ones. */
    private static int find(List<Finding> findings, String key, int from) {
        for (int i = from; i < findings.size(); i++) {
            if (findings.get(i).check().key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private static final Finding UNANSWERED = new Finding(
            "",
            Runner.BROKEN,
            Outcome.CANNOT_TELL,
            null,
            Condition.NONE,
            "",
            java.util.Map.of(),
            List.of(),
            "",
            Working::none,
            List.of(),
            List.of(),
            null);
}
