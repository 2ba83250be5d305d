// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
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

    /** Judgements before the first draw: two of the readings as taken, and each of the two readings at its two probes. */
    private static final int BEFORE_DRAWS = 6;

    /** How many draws of a check without figures it takes until enough is known, of those that were judged; sixteen are judged anyway. */
    private static int needed(List<Boolean> passing, Predicate<CountedDraws> enough) {
        double[] nothingPredicted = new double[4096];
        Arrays.fill(nothingPredicted, Double.NaN);
        CountedDraws draws = new CountedDraws(nothingPredicted);
        int known = 0;
        while (known < passing.size() && (known < 16 || !enough.test(draws))) {
            draws.learn(known, Double.NaN, passing.get(known));
            known++;
        }
        assertTrue(enough.test(draws), "not known well enough after " + known);
        return known;
    }

    private static boolean isKnown(CountedDraws draws, double deviation) {
        return draws.deviation() <= deviation * 4096;
    }

    /** On which side of 5 in a hundred the smaller of chance and counter-chance lies, by four standard deviations. */
    private static boolean isCertain(CountedDraws draws) {
        double chance = draws.passes() / 4096;
        return Math.abs(Math.min(chance, 1 - chance) - 0.05) > 4 * draws.deviation() / 4096 || isKnown(draws, 0.005);
    }

    /** What a check without figures said, judgement by judgement. */
    private static final class Answers {
        private final List<Boolean> passing = new ArrayList<>();
        private final Calculator calculator;

        Answers(double loopLimit) {
            calculator = new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> {
                boolean passes = survey.getElectricity().getExternalLoop().si() <= loopLimit;
                passing.add(passes);
                findings.on(CHECK)
                        .outcome(passes ? Outcome.PASSES : Outcome.FAILS)
                        .add();
            });
        }

        List<Boolean> ofDraws() {
            return passing.subList(BEFORE_DRAWS, passing.size());
        }
    }

    /** Of the loops from 0.2 to 0.8 ohm 98.5, 94.5 and 50 in a hundred pass; the last would take more draws than the most that are judged. */
    @Test
    void asManyDrawsAreJudgedAsAStandardDeviationOfHalfAPercentNeeds() {
        for (double limit : new double[] {0.791, 0.767}) {
            Answers answers = new Answers(limit);
            byNeed(answers.calculator);
            assertEquals(
                    needed(answers.ofDraws(), draws -> isKnown(draws, 0.005)),
                    answers.ofDraws().size());
            assertTrue(answers.ofDraws().size() > 100);
        }
        Answers even = new Answers(0.5);
        byNeed(even.calculator);
        assertEquals(2048, even.ofDraws().size());
    }

    /** Whether a set of works may be the answer is asked when each check is certain. The last that is offered is known to 0.4 %, unless a check is too close. */
    @Test
    void asManyDrawsAreJudgedOfASetOfWorksAsItsPlaceAmongTheAnswersNeeds() {
        Answers offered = new Answers(0.799);
        List<Integer> asked = works(offered, true);
        assertEquals(List.of(needed(offered.ofDraws(), ChancesByNeedTest::isCertain)), asked);
        assertEquals(
                needed(offered.ofDraws(), draws -> isKnown(draws, 0.004)),
                offered.ofDraws().size());
        Answers close = new Answers(0.767);
        works(close, true);
        assertEquals(
                needed(close.ofDraws(), draws -> isKnown(draws, 0.005)),
                close.ofDraws().size());
        Answers hopeless = new Answers(0.799);
        assertEquals(asked, works(hopeless, false));
        assertEquals(asked, List.of(hopeless.ofDraws().size()), "then no more is");
    }

    /** Judges a set of works; the answer is how many draws had been judged whenever it was asked whether it may be the answer. */
    private static List<Integer> works(Answers answers, boolean promising) {
        Survey survey = survey();
        OptionResult nominal = Fixtures.runner(answers.calculator).judge(survey, survey, Fixtures.candidate());
        List<Integer> asked = new ArrayList<>();
        Uncertainty.untilDoubt(Fixtures.runner(answers.calculator))
                .judge(survey, survey, Fixtures.candidate(), nominal, result -> {
                    asked.add(answers.ofDraws().size());
                    return promising;
                });
        return asked;
    }

    /** The flow of 10 L/min within 1 never comes near 5. */
    @Test
    void aCalculatorWhoseChecksAreDecidedIsNotAskedForTheDraws() {
        Check flow = Check.of("made.flow", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        AtomicInteger asked = new AtomicInteger();
        Calculator sure = new SyntheticCalculator("sure", List.of(flow), (survey, findings) -> {
            asked.incrementAndGet();
            findings.on(flow)
                    .compare(survey.getWater().getTest().getFlow().si() * 60_000, 5)
                    .add();
        });
        Answers answers = new Answers(0.6);
        Uncertainty.byNeed(Fixtures.runner(sure, answers.calculator)).judge(survey(), Fixtures.candidate());
        assertEquals(BEFORE_DRAWS, asked.get());
        assertTrue(answers.ofDraws().size() > 100);
    }

    /** The sixteen truths with which the response is compared count among those of the draws near the limit. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 5, 6})
    void theTruthsThatTheResponseIsComparedWithCount(double limit) {
        Trials trials = product(limit);
        judgements.set(0);
        FirstDraws draws = FirstDraws.of(trials.inputs().drawn(), 7);
        Finding finding = new ChancesByNeed(trials, draws, null).findings().get(0);
        int needed = judgements.get();

        Trials again = product(limit);
        judgements.set(0);
        Response response = Response.of(again).get(0);
        Trial[] compared = new Trial[16];
        Arrays.setAll(compared, draw -> again.at(draws.first(4096)[draw]));
        OpenCheck open = new OpenCheck(0, true, response, response.margins(draws.columns(4096), 4096), compared);
        for (int draw = 0; draw < 16; draw++) {
            open.learn(draw, compared[draw]);
        }
        while (open.deviation() > 0.005) {
            int next = open.next();
            assertTrue(next >= 16, "asked once more: " + next);
            open.learn(next, again.at(draws.first(4096)[next]));
        }
        assertEquals(open.chance(), chance(finding).passes(), 1e-12);
        assertEquals(judgements.get(), needed);
    }

    private Trials product(double limit) {
        return MadeUpTrials.of(
                survey(),
                (survey, findings) -> {
                    judgements.incrementAndGet();
                    findings.on(CHECK)
                            .compare(MadeUpTrials.flow(survey) * MadeUpTrials.loop(survey), limit)
                            .add();
                },
                CHECK);
    }

    /** The flow was read as 10 L/min within 1 before works that make another of it. */
    @Test
    void whatIsFittedFromTheHouseAsSurveyedMovesWithItsReadings() {
        Calculator surveyed = new Calculator() {
            @Override
            public CalculatorDescriptor descriptor() {
                return new SyntheticCalculator("made-up", List.of(CHECK), (survey, findings) -> {}).descriptor();
            }

            @Override
            public Assessor prepare(Context context) {
                return (candidate, shared, findings) -> findings.on(CHECK)
                        .compare(MadeUpTrials.flow(context.surveyed()), 9.5)
                        .add();
            }
        };
        Survey changed = Fixtures.survey("20 L/min ± 1 L/min", "0.5 ohm ± 0.3 ohm");
        Finding finding = Uncertainty.byNeed(Fixtures.runner(surveyed))
                .judge(survey(), changed, Fixtures.candidate())
                .findings()
                .get(0);
        assertEquals(0.75, chance(finding).passes(), 0.01);
    }
}
