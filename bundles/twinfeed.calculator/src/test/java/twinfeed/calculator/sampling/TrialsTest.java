// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.sampling.MadeUpTrials.CHECK;
import static twinfeed.calculator.sampling.MadeUpTrials.flow;
import static twinfeed.calculator.sampling.MadeUpTrials.loop;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.Kind;

class TrialsTest {
    private static final Check REPORT = Check.report("made.report", Kind.RATIO);
    private static final Check LACKING = of("made.lacking");
    private static final Check IDLE = of("made.idle");
    private static final Check LOOP = of("made.loop");

    private static Check of(String key) {
        return Check.of(key, FindingClass.SAFETY, LimitType.AT_MOST, Kind.RATIO);
    }

    /** The flow at least 9.5; the loop at most 0.6, or without a limit where the flow is large. */
    private static Trials trials() {
        return MadeUpTrials.of(
                MadeUpTrials.house("0.3 ohm"),
                (survey, findings) -> {
                    findings.on(REPORT).report(1).add();
                    findings.on(LACKING).cannotTell(List.of("survey.notes")).add();
                    findings.on(CHECK).compare(flow(survey), 9.5).add();
                    findings.on(IDLE).outcome(Outcome.NOT_APPLICABLE).add();
                    if (loop(survey) > 0.75) {
                        throw new IllegalStateException("made up");
                    }
                    if (flow(survey) > 10.9) {
                        findings.on(LOOP).outcome(Outcome.NOT_APPLICABLE).add();
                    } else {
                        findings.on(LOOP).compare(loop(survey), 0.4).add();
                    }
                },
                REPORT,
                LACKING,
                CHECK,
                IDLE,
                LOOP);
    }

    private static double[] at(Trials trials, double flow, double loop) {
        double[] positions = new double[trials.inputs().list().size()];
        for (int i = 0; i < positions.length; i++) {
            String path = trials.inputs().list().get(i).path();
            positions[i] = path.endsWith("flow") ? flow : path.endsWith("externalLoop") ? loop : 0;
        }
        return positions;
    }

    @Test
    void onlyChecksThatComparedAValueWithALimitAreSampled() {
        Trials trials = trials();
        assertEquals(2, trials.checks());
        assertEquals(2, trials.index(0));
        assertEquals(4, trials.index(1));
        assertEquals(LOOP, trials.nominal(1).check());
        Trial nominal = trials.nominal();
        assertArrayEquals(new boolean[] {true, false}, nominal.passes());
        assertArrayEquals(new double[] {0.5, -0.1}, nominal.margins(), 1e-9);
    }

    @Test
    void aTrialSaysWhatTheChecksSayWithTheInputsElsewhere() {
        Trials trials = trials();
        Trial trial = trials.at(at(trials, -1, -0.5));
        assertArrayEquals(new boolean[] {false, true}, trial.passes());
        assertArrayEquals(new double[] {-0.5, 0.05}, trial.margins(), 1e-9);
        Trial idle = trials.at(at(trials, 1, 0));
        assertArrayEquals(new boolean[] {true, true}, idle.passes(), "what does not apply passes");
        assertTrue(Double.isNaN(idle.margins()[1]));
        Trial broken = trials.at(at(trials, 0, 1));
        assertArrayEquals(new boolean[] {true, false}, broken.passes(), "what a broken calculator leaves open fails");
        assertTrue(Double.isNaN(broken.margins()[1]));
        assertArrayEquals(new double[] {0.5, -0.1}, trials.at(at(trials, 0, 0)).margins(), 1e-9);
    }

    @Test
    void anInputMovedAloneIsPutBack() {
        Trials trials = trials();
        assertArrayEquals(
                new double[] {-0.5, -0.1},
                trials.with(number(trials, "flow"), -1).margins(),
                1e-9);
        assertArrayEquals(
                new double[] {0.5, 0.2},
                trials.with(number(trials, "externalLoop"), -1).margins(),
                1e-9);
    }

    private static int number(Trials trials, String reading) {
        List<String> paths =
                trials.inputs().list().stream().map(SampledInput::path).toList();
        return IntStream.range(0, paths.size())
                .filter(i -> paths.get(i).endsWith(reading))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotAskedForDoesNotPass() {
        Trials some = trials().asking(List.of(1));
        Trial trial = some.at(at(some, 0, -1));
        assertArrayEquals(new boolean[] {false, true}, trial.passes());
        assertTrue(Double.isNaN(trial.margins()[0]));
        assertEquals(0.2, trial.margins()[1], 1e-9);
    }

    @Test
    void aTrialIsRegularWhereTheMarginSaysWhetherItPasses() {
        Trial trial = new Trial(
                new boolean[] {true, true, false, false, true, false, true},
                new double[] {1, 0, -1, 0, -1, Double.NaN, Double.NaN});
        for (int check = 0; check < 3; check++) {
            assertTrue(trial.isRegular(check));
        }
        for (int check = 3; check < 7; check++) {
            assertFalse(trial.isRegular(check));
        }
    }
}
