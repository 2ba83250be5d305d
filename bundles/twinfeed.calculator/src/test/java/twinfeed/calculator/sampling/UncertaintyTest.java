// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Check;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;

/** Sampling against closed forms and against plain Monte Carlo. */
class UncertaintyTest {
    private static final int POINTS = 4096;
    private static final Check CHECK = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    /** A linear margin: flow in L/min plus loop impedance in ohm, against a limit. */
    private static Calculator sum(double limit) {
        return new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> findings.on(CHECK)
                .compare(
                        survey.getWater().getTest().getFlow().si() * 60_000
                                + survey.getElectricity().getExternalLoop().si(),
                        limit)
                .add());
    }

    private static PassProbability chance(Calculator calculator, Survey survey) {
        Uncertainty uncertainty = Uncertainty.plain(Fixtures.runner(calculator), POINTS, Uncertainty.SEED);
        PassProbability chance = uncertainty
                .judge(survey, Fixtures.candidate())
                .findings()
                .get(0)
                .chance();
        assertNotNull(chance);
        return chance;
    }

    /** Distribution of the sum of two rectangular deviations of half-widths a >= b: a trapezium, by integration by hand. */
    private static double chanceOfSumAbove(double threshold, double a, double b) {
        double t = -threshold;
        if (t <= -(a + b)) {
            return 0;
        }
        if (t >= a + b) {
            return 1;
        }
        if (t < -(a - b)) {
            return (t + a + b) * (t + a + b) / (8 * a * b);
        }
        if (t > a - b) {
            return 1 - (a + b - t) * (a + b - t) / (8 * a * b);
        }
        return 0.5 + t / (2 * a);
    }

    @ParameterizedTest
    @ValueSource(doubles = {9.2, 9.9, 10.3, 10.6, 11.4})
    void rectangularReadingsGiveTheTrapezium(double limit) {
        Survey survey = Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0.3 ohm");
        double expected = chanceOfSumAbove(limit - 10.5, 1, 0.3);
        assertEquals(expected, chance(sum(limit), survey).passes(), 0.004);
    }

    @Test
    void quantilesOfOneRectangularReading() {
        PassProbability chance = chance(sum(10), Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0 ohm"));
        assertEquals(0.5 - 0.9, chance.interval().low(), 0.003);
        assertEquals(0.5 + 0.9, chance.interval().high(), 0.003);
    }

    @Test
    void aStandardUncertaintyIsNormal() {
        // Table of the normal distribution: P(z <= 1) = 0.8413, 5 % quantile at -1.6449.
        PassProbability chance = chance(sum(9.5), Fixtures.survey("10 L/min u 1 L/min", "0.5 ohm ± 0 ohm"));
        assertEquals(0.8413, chance.passes(), 0.002);
        assertEquals(1 - 1.6449, chance.interval().low(), 0.01);
    }

    @Test
    void agreesWithPlainMonteCarlo() {
        double limit = 10.9;
        PassProbability chance = chance(sum(limit), Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm u 0.2 ohm"));
        Random random = new Random(1);
        int passes = 0;
        int draws = 1_000_000;
        for (int i = 0; i < draws; i++) {
            double value = 10 + (2 * random.nextDouble() - 1) + 0.5 + 0.2 * random.nextGaussian();
            passes += value >= limit ? 1 : 0;
        }
        assertEquals((double) passes / draws, chance.passes(), 0.004);
    }

    @Test
    void namesTheReadingThatContributesMost() {
        assertEquals(
                "survey.water.test.flow",
                chance(sum(10.5), Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0.1 ohm"))
                        .interval()
                        .remeasure());
        assertEquals(
                "survey.electricity.externalLoop",
                chance(sum(10.5), Fixtures.survey("10 L/min ± 0.1 L/min", "0.5 ohm ± 0.4 ohm"))
                        .interval()
                        .remeasure());
    }

    @Test
    void aChanceBetweenTheBoundsIsTooCloseToCall() {
        Uncertainty uncertainty = Uncertainty.plain(Fixtures.runner(sum(10.6)), POINTS, Uncertainty.SEED);
        OptionResult result =
                uncertainty.judge(Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0 ohm"), Fixtures.candidate());
        assertEquals(Outcome.TOO_CLOSE, result.findings().get(0).outcome());
        assertEquals(Verdict.CANNOT_TELL, result.verdict());
    }

    @Test
    void exactReadingsLeaveNoDoubt() {
        Uncertainty uncertainty = Uncertainty.plain(Fixtures.runner(sum(10)), POINTS, Uncertainty.SEED);
        Survey survey = Fixtures.survey("10 L/min ± 0 L/min", "0.5 ohm ± 0 ohm");
        assertNull(uncertainty
                .judge(survey, Fixtures.candidate())
                .findings()
                .get(0)
                .chance());
    }

    @Test
    void theSameSurveyGivesTheSameAnswerAndIsNotChanged() {
        Survey survey = Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0.3 ohm");
        Survey before = EcoreUtil.copy(survey);
        assertEquals(chance(sum(10.7), survey), chance(sum(10.7), survey));
        assertTrue(EcoreUtil.equals(before, survey));
    }

    @Test
    void oneDrawIsNoSample() {
        var runner = Fixtures.runner(sum(10));
        assertThrows(IllegalArgumentException.class, () -> Uncertainty.plain(runner, 1, Uncertainty.SEED));
        assertNotNull(Uncertainty.plain(runner, 2, Uncertainty.SEED));
    }
}
