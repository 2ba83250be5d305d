// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;

/** Chances by few judgements against plain draws, where margins bend, have corners, or are not there at all. */
class ChancesByNeedTest {
    private static final Check CHECK = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
    private static final int DRAWS = 65_536;

    private final AtomicInteger judgements = new AtomicInteger();

    private Calculator of(DoubleBinaryOperator value, double limit) {
        return new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> {
            judgements.incrementAndGet();
            double flow = survey.getWater().getTest().getFlow().si() * 60_000;
            double loop = survey.getElectricity().getExternalLoop().si();
            findings.on(CHECK).compare(value.applyAsDouble(flow, loop), limit).add();
        });
    }

    private static Survey survey() {
        return Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± 0.3 ohm");
    }

    private Finding byNeed(Calculator calculator) {
        judgements.set(0);
        return Uncertainty.byNeed(Fixtures.runner(calculator))
                .judge(survey(), Fixtures.candidate())
                .findings()
                .get(0);
    }

    private static PassProbability plain(Calculator calculator) {
        return chance(Uncertainty.plain(Fixtures.runner(calculator), DRAWS, 7)
                .judge(survey(), Fixtures.candidate())
                .findings()
                .get(0));
    }

    private static PassProbability chance(Finding finding) {
        PassProbability chance = finding.chance();
        assertNotNull(chance);
        return chance;
    }

    @ParameterizedTest
    @ValueSource(doubles = {9.2, 9.9, 10.3, 10.6, 11.4})
    void sumsAgreeWithPlainDraws(double limit) {
        Calculator sum = of(Double::sum, limit);
        assertEquals(plain(sum).passes(), chance(byNeed(sum)).passes(), 0.01);
        // One nominal judgement, two for each reading, sixteen to compare; the sum itself leaves nothing open.
        assertTrue(judgements.get() <= 25, "judgements: " + judgements);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.5, 4, 5, 6, 7.5})
    void productsAgreeWithPlainDraws(double limit) {
        Calculator product = of((flow, loop) -> flow * loop, limit);
        assertEquals(plain(product).passes(), chance(byNeed(product)).passes(), 0.02);
    }

    @ParameterizedTest
    @ValueSource(doubles = {9.3, 9.6, 9.9})
    void theLesserOfTwoAgreesWithPlainDraws(double limit) {
        Calculator lesser = of((flow, loop) -> Math.min(flow, 9.2 + 2 * loop), limit);
        assertEquals(plain(lesser).passes(), chance(byNeed(lesser)).passes(), 0.02);
    }

    /** The flow test comes out stiffer than the street gives in a part of the draws, and then there is no figure. */
    @Test
    void drawsWithoutFiguresCountAsTheyAreAnswered() {
        Calculator gap = new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> {
            double flow = survey.getWater().getTest().getFlow().si() * 60_000;
            double loop = survey.getElectricity().getExternalLoop().si();
            if (loop > 0.7) {
                findings.on(CHECK).outcome(Outcome.FAILS).add();
            } else {
                findings.on(CHECK).compare(flow, 9.5).add();
            }
        });
        double expected = 0.75 * (0.5 / 0.6);
        assertEquals(expected, plain(gap).passes(), 0.002);
        assertEquals(expected, chance(byNeed(gap)).passes(), 0.025);
    }

    @Test
    void aMarginOutOfReachOfAllTolerancesTakesNoDraw() {
        Finding finding = byNeed(of(Double::sum, 8));
        assertEquals(1, chance(finding).passes());
        assertEquals(Outcome.PASSES, finding.outcome());
        assertEquals(
                6,
                judgements.get(),
                "one nominal judgement, one under the conditions that govern, two for each of two readings");
    }

    @Test
    void theReadingThatContributesMostIsNamed() {
        assertEquals(
                "survey.water.test.flow",
                chance(byNeed(of(Double::sum, 10.5))).interval().remeasure());
        assertEquals(
                "survey.electricity.externalLoop",
                chance(byNeed(of((flow, loop) -> flow + 10 * loop, 15)))
                        .interval()
                        .remeasure());
    }

    @Test
    void marginsAreThoseOfPlainDraws() {
        Calculator sum = of(Double::sum, 10);
        PassProbability plain = plain(sum);
        PassProbability quick = chance(byNeed(sum));
        assertEquals(plain.interval().low(), quick.interval().low(), 0.05);
        assertEquals(plain.interval().high(), quick.interval().high(), 0.05);
    }

    /** A check that fails without a figure where the loop is above a limit. */
    private Calculator failingAbove(double loopLimit) {
        return new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> {
            judgements.incrementAndGet();
            boolean fails = survey.getElectricity().getExternalLoop().si() > loopLimit;
            findings.on(CHECK).outcome(fails ? Outcome.FAILS : Outcome.PASSES).add();
        });
    }

    private Finding untilDoubt(Calculator calculator) {
        judgements.set(0);
        return Uncertainty.untilDoubt(Fixtures.runner(calculator))
                .judge(survey(), Fixtures.candidate())
                .findings()
                .get(0);
    }

    /** The loop is from 0.2 to 0.8 ohm: below 0.6 in two of three draws, and below 0.791 in 98.5 of a hundred. */
    @Test
    void aSetOfWorksIsGivenUpOnceACheckIsTooCloseForCertain() {
        Calculator close = failingAbove(0.6);
        assertEquals(2 / 3.0, chance(byNeed(close)).passes(), 0.02);
        int needed = judgements.get();
        Finding doubtful = untilDoubt(close);
        assertEquals(Outcome.TOO_CLOSE, doubtful.outcome());
        assertTrue(judgements.get() < needed / 2, judgements + " instead of " + needed);
        Finding sure = untilDoubt(failingAbove(0.791));
        assertEquals(Outcome.PASSES, sure.outcome());
        assertEquals(0.985, chance(sure).passes(), 0.01);
    }

    /** What is no answer for another reason needs only to be known on which side of the doubt it lies. */
    @Test
    void theChancesOfASetOfWorksThatIsNoAnswerStayRough() {
        Calculator sure = failingAbove(0.799);
        untilDoubt(sure);
        int needed = judgements.get();
        judgements.set(0);
        Uncertainty chances = Uncertainty.untilDoubt(Fixtures.runner(sure));
        Survey survey = survey();
        OptionResult nominal = Fixtures.runner(sure).judge(survey, survey, Fixtures.candidate());
        List<Outcome> told = new ArrayList<>();
        Finding rough = chances.judge(survey, survey, Fixtures.candidate(), nominal, result -> {
                    told.add(result.findings().get(0).outcome());
                    return false;
                })
                .findings()
                .get(0);
        assertEquals(List.of(Outcome.PASSES), told, "it is asked once, with outcomes that are sure");
        assertEquals(Outcome.PASSES, rough.outcome());
        assertTrue(judgements.get() < needed * 2 / 3, judgements + " instead of " + needed);
    }
}
