// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** Whatever a calculator does, the others answer, and it is named. */
class ContainmentTest {
    private static final Check BAD = Check.of("bad.check", FindingClass.SAFETY, LimitType.AT_MOST, Kind.RATIO);
    private static final Check GOOD = Check.of("good.check", FindingClass.SAFETY, LimitType.AT_MOST, Kind.RATIO);

    private static final Calculator SOUND =
            new SyntheticCalculator("sound", List.of(GOOD), (survey, findings) -> findings.on(GOOD)
                    .compare(survey.getNotes() == null ? 1 : 9, 2)
                    .add());

    private static Calculator bad(BiConsumer<Survey, Findings> answers) {
        return new SyntheticCalculator("bad", List.of(BAD), answers);
    }

    private static Runner runner(Calculator... calculators) {
        return new Runner(
                List.of(calculators), (mean, spread, month, southern) -> mean, new Containment(Duration.ofMillis(300)));
    }

    private static OptionResult assessed(Runner runner) {
        return runner.assess(SurveyFactory.eINSTANCE.createSurvey(), List.of(Fixtures.candidate()))
                .options()
                .get(0);
    }

    private static String sentences(Runner runner, OptionResult result) {
        FindingText text = new FindingText(runner, Locale.ENGLISH);
        return String.join(" | ", result.findings().stream().map(text::sentence).toList());
    }

    private static void assertContained(Runner runner, String reason) {
        OptionResult result = assessed(runner);
        assertEquals(Outcome.NOT_CHECKED, outcome(result, BAD), "declared and not answered");
        assertEquals(Outcome.PASSES, outcome(result, GOOD), "the others answer");
        assertEquals(Verdict.CANNOT_TELL, result.verdict());
        String said = sentences(runner, result);
        assertTrue(said.contains("bad") && said.contains(reason), said);
        assertFalse(said.contains("[") || said.contains("{") || said.contains("missing ."), said);
        assertTrue(said.contains(CalculatorSource.of(SOUND)), "the file is named: " + said);
    }

    private static Outcome outcome(OptionResult result, Check check) {
        return result.finding(check.key()).map(Finding::outcome).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"exception", "assertion", "linkage", "stack"})
    void whatIsThrownIsContained(String what) {
        Runner runner = runner(
                bad((survey, findings) -> {
                    switch (what) {
                        case "exception" -> throw new IllegalStateException("thrown on purpose");
                        case "assertion" -> throw new AssertionError("thrown on purpose");
                        case "linkage" -> throw new NoClassDefFoundError("thrown on purpose");
                        default -> endless(1);
                    }
                }),
                SOUND);
        assertContained(runner, what.equals("stack") ? "StackOverflowError" : "thrown on purpose");
        assertEquals(
                Outcome.NOT_CHECKED,
                outcome(runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate()), BAD),
                "in draws too");
    }

    private static int endless(int depth) {
        return depth == 0 ? 0 : endless(depth + 1) + 1;
    }

    @Test
    void memoryThatRunsOutIsNobodysToContain() {
        Runner runner = runner(bad((survey, findings) -> {
            throw new OutOfMemoryError("made up");
        }));
        assertThrows(OutOfMemoryError.class, () -> assessed(runner));
    }

    @Test
    void aCalculatorThatNeverEndsIsRejected() {
        Runner runner = runner(
                bad((survey, findings) -> {
                    long spins = 0;
                    while (spins >= 0) {
                        spins = (spins + 1) % 1000;
                    }
                }),
                SOUND);
        assertContained(runner, "did not answer within");
        assertEquals(
                List.of(CalculatorProblem.Kind.TOO_SLOW),
                runner.problems().stream().map(CalculatorProblem::kind).toList());
        long start = System.nanoTime();
        assertContained(runner, "did not answer within");
        assertTrue(System.nanoTime() - start < Duration.ofMillis(280).toNanos(), "not asked again");
        assertEquals(
                Outcome.NOT_CHECKED,
                outcome(runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate()), BAD),
                "nor in draws");
    }

    @Test
    void eachAnswerHasTheTimeLimitToItself() {
        AtomicInteger slept = new AtomicInteger();
        Runner runner = runner(
                bad((survey, findings) -> {
                    sleep(120);
                    slept.incrementAndGet();
                    findings.on(BAD).compare(1, 2).add();
                }),
                SOUND);
        List<Candidate> four = Collections.nCopies(4, Fixtures.candidate());
        List<OptionResult> options =
                runner.assess(SurveyFactory.eINSTANCE.createSurvey(), four).options();
        assertEquals(4, slept.get(), "480 ms in all, with a limit of 300 for each");
        options.forEach(option -> assertEquals(Verdict.SUITS, option.verdict()));
    }

    @Test
    void afterOneThatTookTooLongNobodyElseIsAskedOnItsThread() throws InterruptedException {
        Set<Thread> asked = Collections.synchronizedSet(new HashSet<>());
        CountDownLatch ended = new CountDownLatch(1);
        Runner runner = runner(
                bad((survey, findings) -> {
                    long end = System.nanoTime() + Duration.ofMillis(500).toNanos();
                    while (System.nanoTime() < end) {
                        Thread.onSpinWait();
                    }
                    asked.add(Thread.currentThread());
                    ended.countDown();
                }),
                new SyntheticCalculator("sound", List.of(GOOD), (survey, findings) -> {
                    assertFalse(asked.contains(Thread.currentThread()));
                    asked.add(Thread.currentThread());
                    findings.on(GOOD).compare(1, 2).add();
                }));
        assertContained(runner, "did not answer within");
        assertTrue(ended.await(10, TimeUnit.SECONDS));
        asked.forEach(ContainmentTest::join);
        assertEquals(2, asked.size(), "the slow one's thread and the one on which the rest was asked again");
    }

    private static void sleep(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join(10_000);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void oneThatChangesTheSurveyChangesOnlyItsOwn() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Runner runner = runner(
                bad((given, findings) -> {
                    given.setNotes("changed");
                    findings.on(BAD).compare(1, 2).add();
                }),
                SOUND);
        OptionResult result =
                runner.assess(survey, List.of(Fixtures.candidate())).options().get(0);
        assertEquals(null, survey.getNotes());
        assertEquals(Outcome.PASSES, outcome(result, GOOD));
        assertEquals(Outcome.NOT_CHECKED, outcome(result, BAD), "what it said of another survey does not count");
        assertEquals(
                List.of(CalculatorProblem.Kind.CHANGED_SURVEY),
                runner.problems().stream().map(CalculatorProblem::kind).toList());
    }

    @Test
    void aDeclaredCheckThatIsNeverAnsweredIsNotChecked() {
        assertContained(runner(bad((survey, findings) -> {}), SOUND), "did not answer");
    }

    @Test
    void ofTwoWithOneIdTheNewerIsUsedAndTheOtherNamed() {
        Calculator old = new Versioned("2.9.0", 9);
        Calculator recent = new Versioned("2.10.0", 1);
        for (Runner runner : List.of(runner(old, recent), runner(recent, old))) {
            assertEquals(List.of(recent), runner.calculators());
            assertEquals(Outcome.PASSES, outcome(assessed(runner), BAD));
            CalculatorProblem problem = runner.problems().get(0);
            String text = problem.text(Locale.ENGLISH);
            assertEquals(CalculatorProblem.Kind.OLDER, problem.kind());
            assertTrue(text.contains("2.9.0") && text.contains("2.10.0"), text);
            assertTrue(problem.source().endsWith(" (same 2.9.0)"), problem.source());
            assertTrue(problem.detail().endsWith(" (2.10.0)"), problem.detail());
        }
    }

    /** Such a class comes from no file, and is known by its name; its calculators are equal to none, not even to themselves. */
    @Test
    void eachOfTwoWithOneIdIsNamedByWhereItCameFrom() {
        Calculator old = new Versioned("2.9.0", 9);
        Calculator recent = new Versioned("2.10.0", 1);
        Calculator made = (Calculator) Proxy.newProxyInstance(
                Calculator.class.getClassLoader(),
                new Class<?>[] {Calculator.class},
                (proxy, method, arguments) -> method.invoke(recent, arguments));
        for (Runner runner : List.of(runner(old, made), runner(made, old))) {
            CalculatorProblem problem = runner.problems().get(0);
            assertFalse(problem.source().contains("$Proxy"), problem.source());
            assertTrue(problem.detail().contains("$Proxy"), problem.detail());
            assertEquals(1, runner.calculators().size(), "it is run all the same");
        }
    }

    @Test
    void ofTwoWithOneIdAndVersionTheFirstIsUsed() {
        Calculator first = new Versioned("2.9", 1);
        Runner runner = runner(first, new Versioned("2.9", 9));
        assertEquals(List.of(first), runner.calculators());
        assertEquals(CalculatorProblem.Kind.OLDER, runner.problems().get(0).kind());
    }

    /** A thread that waits for something is woken; it is a daemon, so that the program can end while one still runs. */
    @Test
    void oneThatWaitsTooLongIsWoken() throws InterruptedException {
        CountDownLatch woken = new CountDownLatch(1);
        Runner runner = runner(
                bad((survey, findings) -> {
                    assertTrue(Thread.currentThread().isDaemon());
                    try {
                        Thread.sleep(60_000);
                    } catch (InterruptedException e) {
                        woken.countDown();
                    }
                }),
                SOUND);
        assertContained(runner, "did not answer within");
        assertTrue(woken.await(5, TimeUnit.SECONDS));
    }

    @Test
    void memoryThatRunsOutWhilePreparingIsNobodysToContainEither() {
        Calculator unprepared = new Versioned("1", 1) {
            @Override
            public Assessor prepare(Context context) {
                throw new OutOfMemoryError("made up");
            }
        };
        Runner runner = runner(unprepared);
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        assertThrows(OutOfMemoryError.class, () -> runner.judge(survey, Fixtures.candidate()));
    }

    /** What is fitted from readings is fitted in the house as it was when they were taken. */
    @Test
    void aCalculatorSeesTheHouseBeforeTheWorksAndAfterThem() {
        Survey before = SurveyFactory.eINSTANCE.createSurvey();
        before.setNotes("before");
        Survey after = SurveyFactory.eINSTANCE.createSurvey();
        after.setNotes("after");
        List<String> seen = new ArrayList<>();
        Calculator looking = new Versioned("1", 1) {
            @Override
            public Assessor prepare(Context context) {
                seen.add(context.surveyed().getNotes() + " " + context.survey().getNotes());
                return super.prepare(context);
            }
        };
        Runner runner = runner(looking);
        runner.judge(before, after, Fixtures.candidate());
        runner.assess(after, List.of(Fixtures.candidate()));
        assertEquals(List.of("before after", "after after"), seen);
    }

    /** A calculator of a class that no file holds is named by its class. */
    @Test
    void oneThatIsRejectedIsNamedByItsOwnFileAndId() {
        Calculator slow = bad((survey, findings) -> survey.setNotes("changed"));
        Calculator elsewhere = (Calculator) Proxy.newProxyInstance(
                Calculator.class.getClassLoader(),
                new Class<?>[] {Calculator.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "equals" -> proxy == arguments[0];
                    case "hashCode" -> 1;
                    default -> method.invoke(slow, arguments);
                });
        Calculator first = new SyntheticCalculator("a-sound", List.of(GOOD), (survey, findings) -> findings.on(GOOD)
                .compare(1, 2)
                .add());
        Runner runner = runner(first, elsewhere);
        assertEquals(Outcome.NOT_CHECKED, outcome(assessed(runner), BAD));
        CalculatorProblem problem = runner.problems().get(0);
        assertEquals(elsewhere.getClass().getName() + " (bad)", problem.source());
        assertEquals(problem.source() + " was rejected: it changed the survey", problem.text(Locale.ENGLISH));
    }

    @Test
    void oneThatBreaksWhileItIsPreparedIsNamed() {
        Calculator unprepared = new Versioned("1", 1) {
            @Override
            public Assessor prepare(Context context) {
                throw new IllegalStateException("no\n\tluck " + "x".repeat(300));
            }
        };
        Runner runner = runner(unprepared, SOUND);
        String reason = "IllegalStateException: no luck " + "x".repeat(200 - 31) + "…";
        for (OptionResult result :
                List.of(assessed(runner), runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate()))) {
            assertEquals(Outcome.NOT_CHECKED, outcome(result, BAD));
            assertEquals(Outcome.PASSES, outcome(result, GOOD));
            assertTrue(sentences(runner, result).contains(reason), sentences(runner, result));
        }
        assertEquals("Error", Containment.reason(new Error()));
        assertEquals(200, Containment.reason(new Error("y".repeat(193))).length(), "it just fits");
    }

    /** Whoever waits may be interrupted: the answer comes all the same, and the interruption is passed on. */
    @Test
    void anInterruptionIsPassedOnAfterTheAnswer() {
        Runner runner = runner(
                bad((survey, findings) -> {
                    sleep(50);
                    findings.on(BAD).compare(1, 2).add();
                }),
                SOUND);
        Thread.currentThread().interrupt();
        OptionResult result = assessed(runner);
        assertTrue(Thread.interrupted());
        assertEquals(Outcome.PASSES, outcome(result, GOOD));
    }

    @Test
    void oneWithoutAnIdIsLeftOut() {
        Runner runner = runner(new SyntheticCalculator("", List.of(BAD), (survey, findings) -> {}), SOUND);
        assertEquals(List.of(SOUND), runner.calculators());
        assertEquals(
                CalculatorProblem.Kind.NO_DESCRIPTOR, runner.problems().get(0).kind());
        assertTrue(runner.problems().get(0).detail().endsWith("its id is empty"));
    }

    @Test
    void oneThatCannotSayWhatItIsIsLeftOut() {
        Calculator speechless = new Calculator() {
            @Override
            public CalculatorDescriptor descriptor() {
                throw new IllegalStateException("speechless");
            }

            @Override
            public Assessor prepare(Context context) {
                throw new IllegalStateException();
            }
        };
        Runner runner = runner(speechless, SOUND);
        assertEquals(List.of(SOUND), runner.calculators());
        assertTrue(runner.problems().get(0).text(Locale.ENGLISH).contains("speechless"));
        assertEquals(Verdict.SUITS, assessed(runner).verdict());
    }

    /** The same calculator in a version. */
    private static class Versioned implements Calculator {
        private final String version;
        private final double value;

        Versioned(String version, double value) {
            this.version = version;
            this.value = value;
        }

        @Override
        public CalculatorDescriptor descriptor() {
            return new CalculatorDescriptor(
                    "same", version, Runner.TEXTS, List.of(), List.of(), List.of(BAD), List.of(), List.of());
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) ->
                    findings.on(BAD).compare(value, 2).add();
        }
    }
}
