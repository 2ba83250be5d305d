// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.engine.Influence;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** The search against brute force: every set of works judged, the cheapest that passes taken. */
class RemedySearchTest {
    /** A made-up house: checks with margins, works that move them for better or worse. */
    private static final class World {
        final int checkCount;
        final int workCount;
        final double[] base;
        final double[][] effect;
        final int[] price;
        final boolean[] enquiry;
        final int[] kind;
        final List<Check> checks = new ArrayList<>();

        World(long seed) {
            Random random = new Random(seed);
            checkCount = 1 + random.nextInt(5);
            workCount = 1 + random.nextInt(8);
            base = random.doubles(checkCount, -2, 1).toArray();
            effect = new double[checkCount][workCount];
            for (double[] row : effect) {
                Arrays.setAll(row, i -> random.nextInt(3) == 0 ? random.nextDouble() * 4 - 1 : 0);
            }
            price = random.ints(workCount, 0, 6).toArray();
            enquiry = new boolean[workCount];
            kind = random.ints(workCount, 0, 6).toArray();
            for (int work = 0; work < workCount; work++) {
                enquiry[work] = random.nextInt(6) == 0;
            }
            for (int check = 0; check < checkCount; check++) {
                FindingClass about = random.nextInt(4) == 0 ? FindingClass.ADVICE : FindingClass.SAFETY;
                checks.add(Check.of("made.up" + check, about, LimitType.AT_LEAST, Kind.RATIO));
            }
        }

        Remedy remedy(int work) {
            String id = "w" + work;
            return new Remedy(
                    id,
                    "kind" + kind[work],
                    Map.of(),
                    List.of(),
                    enquiry[work],
                    0,
                    survey -> survey.setNotes((survey.getNotes() == null ? "" : survey.getNotes()) + id + " "));
        }

        void answer(Survey survey, Findings findings) {
            List<String> done = survey.getNotes() == null
                    ? List.of()
                    : List.of(survey.getNotes().trim().split(" "));
            for (int check = 0; check < checkCount; check++) {
                FindingBuilder finding = findings.on(checks.get(check)).compare(margin(check, done), 0);
                for (int work = 0; work < workCount; work++) {
                    if (effect[check][work] > 0) {
                        finding.remedy(remedy(work));
                    }
                }
                finding.add();
            }
        }

        double margin(int check, List<String> done) {
            double margin = base[check];
            for (int work = 0; work < workCount; work++) {
                margin += done.contains("w" + work) ? effect[check][work] : 0;
            }
            return margin;
        }

        WorkCost cost(List<Remedy> works) {
            int enquiries = 0;
            long sum = 0;
            for (Remedy work : works) {
                int index = Integer.parseInt(work.id().substring(1));
                enquiries += enquiry[index] ? 1 : 0;
                sum += enquiry[index] ? 0 : price[index];
            }
            return new WorkCost(enquiries, BigDecimal.valueOf(sum), 0);
        }

        /** Whether no deciding check fails; if advice is spared, none that passed before either. */
        boolean passes(List<String> done, boolean sparesAdvice) {
            for (int check = 0; check < checkCount; check++) {
                boolean fails = margin(check, done) < 0;
                boolean failedBefore = base[check] < 0;
                if (fails && (checks.get(check).deciding() || (sparesAdvice && !failedBefore))) {
                    return false;
                }
            }
            return true;
        }

        /** The least cost of a set that passes. */
        Optional<WorkCost> bruteForce() {
            return bruteForce(false);
        }

        /** Whether no set can be had for nothing more than another, so that every set of the least cost is one of fewest works. */
        boolean everyWorkCosts() {
            for (int work = 0; work < workCount; work++) {
                if (price[work] == 0 && !enquiry[work]) {
                    return false;
                }
            }
            return true;
        }

        private Optional<WorkCost> bruteForce(boolean sparesAdvice) {
            Optional<WorkCost> best = Optional.empty();
            for (int bits = 0; bits < 1 << workCount; bits++) {
                Map<String, Remedy> byKind = new LinkedHashMap<>();
                List<Remedy> works = new ArrayList<>();
                for (int work = 0; work < workCount; work++) {
                    if ((bits >> work & 1) == 1) {
                        byKind.put("kind" + kind[work], remedy(work));
                        works.add(remedy(work));
                    }
                }
                if (byKind.size() == works.size()
                        && passes(works.stream().map(Remedy::id).toList(), sparesAdvice)
                        && (best.isEmpty() || cost(works).compareTo(best.get()) < 0)) {
                    best = Optional.of(cost(works));
                }
            }
            return best;
        }
    }

    @Test
    void findsTheCheapestSetThatBruteForceFinds() {
        int needed = 0;
        int none = 0;
        int spared = 0;
        int notSpared = 0;
        for (long seed = 0; seed < 4000; seed++) {
            World world = new World(seed);
            Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", world.checks, world::answer));
            Survey survey = SurveyFactory.eINSTANCE.createSurvey();
            Candidate candidate = Fixtures.candidate();
            WorkPlan plan = new RemedySearch(runner::judge, world::cost)
                    .plan(survey, candidate, runner.judge(survey, candidate));
            Optional<WorkCost> best = world.bruteForce();
            if (plan.verdict() == Verdict.DOES_NOT_SUIT) {
                none++;
                assertTrue(best.isEmpty(), "seed " + seed + ": brute force found " + best);
            } else {
                needed += plan.works().isEmpty() ? 0 : 1;
                assertEquals(best.orElseThrow(), plan.cost(), "seed " + seed);
                assertTrue(world.passes(ids(plan), false), "seed " + seed);
                if (world.everyWorkCosts() && !plan.works().isEmpty()) {
                    boolean sparing = world.bruteForce(true).equals(best);
                    assertEquals(sparing, world.passes(ids(plan), true), "seed " + seed + ": advice that passed");
                    spared += sparing ? 1 : 0;
                    notSpared += sparing ? 0 : 1;
                }
            }
            assertFalse(plan.exhausted());
        }
        // The random houses must not all be easy or hopeless, or the comparison says nothing.
        assertTrue(needed > 400 && none > 400, needed + " need work, " + none + " have none");
        assertTrue(spared > 100 && notSpared > 2, spared + " spare advice, " + notSpared + " cannot");
    }

    /**
     * Of each set the judge can ask whether it may be the answer, for only then its chances have to be fine. Sets that do not pass are not, and after
     * one that makes advice fail only those are that do not.
     */
    @Test
    void onlySetsThatPassMayBeTheAnswer() {
        int several = 0;
        for (long seed = 0; seed < 200; seed++) {
            World world = new World(seed);
            Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", world.checks, world::answer));
            List<Boolean> told = new ArrayList<>();
            RemedySearch.Judge judge = new RemedySearch.Judge() {
                @Override
                public OptionResult judge(Survey surveyed, Survey changed, Candidate candidate) {
                    return runner.judge(surveyed, changed, candidate);
                }

                @Override
                public OptionResult judge(
                        Survey surveyed, Survey changed, Candidate candidate, Predicate<OptionResult> promising) {
                    OptionResult result = judge(surveyed, changed, candidate);
                    told.add(promising.test(result));
                    return result;
                }
            };
            Survey survey = SurveyFactory.eINSTANCE.createSurvey();
            WorkPlan plan = new RemedySearch(judge, world::cost)
                    .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
            if (!plan.works().isEmpty()) {
                several += told.size() > 1 ? 1 : 0;
                assertTrue(told.contains(true), "seed " + seed + ": " + told);
                boolean sparing = world.passes(ids(plan), true);
                long mayBe = told.stream().filter(each -> each).count();
                assertTrue(mayBe <= (sparing ? 2 : 1), "seed " + seed + ": " + told);
                assertTrue(!sparing || told.get(told.size() - 1), "seed " + seed + ": " + told);
            } else {
                assertFalse(told.contains(true), "seed " + seed + ": " + told);
            }
        }
        assertTrue(several > 20, "searches of several sets: " + several);
    }

    @Test
    void theSurveyIsLeftAlone() {
        World world = new World(7);
        Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", world.checks, world::answer));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Survey before = EcoreUtil.copy(survey);
        new RemedySearch(runner::judge, world::cost)
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertTrue(EcoreUtil.equals(before, survey));
    }

    @Test
    void givingUpIsSaid() {
        World world = null;
        for (long seed = 0; world == null; seed++) {
            World each = new World(seed);
            world = each.bruteForce().isPresent() && !each.passes(List.of(), true) ? each : null;
        }
        Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", world.checks, world::answer));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        WorkPlan plan = new RemedySearch(runner::judge, world::cost, Influence.UNKNOWN, 0)
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertTrue(plan.exhausted());
        assertEquals(Verdict.NOT_AS_IT_IS, plan.verdict());
        assertFalse(plan.unmended().isEmpty());
    }

    /** The third of three works fixes the check: two sets are too few to find it, three are enough. */
    @Test
    void asManySetsAreJudgedAsTheLimitSays() {
        for (int most : new int[] {2, 3}) {
            Runner runner = Fixtures.runner(
                    new SyntheticCalculator("made-up", List.of(LOAD), (survey, findings) -> findings.on(LOAD)
                            .compare(done(survey, "third") ? 1 : -1, 0)
                            .remedy(Fixtures.work("first"))
                            .remedy(Fixtures.work("second"))
                            .remedy(Fixtures.work("third"))
                            .add()));
            Survey survey = SurveyFactory.eINSTANCE.createSurvey();
            WorkPlan plan = new RemedySearch(runner::judge, WorkCost.BY_COUNT, Influence.UNKNOWN, most)
                    .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
            assertEquals(most == 2, plan.exhausted());
            assertEquals(most == 2 ? List.of() : List.of("third"), ids(plan));
            assertEquals(most == 2 ? List.of("made.load") : List.of(), plan.unmended());
        }
    }

    private static final Check LOAD = Check.of("made.load", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
    private static final Check OTHER = Check.of("made.other", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    /** Without prices, of one work and one work the one with fewer parts: changing the breaker, not the whole consumer unit. */
    @Test
    void withoutPricesThePlainerWorkIsTaken() {
        WorkPlan plan = plan(List.of(LOAD), (survey, findings) -> findings.on(LOAD)
                .compare(survey.getNotes() == null ? -1 : 1, 0)
                .remedy(parts("a-new-consumer-unit", 3))
                .remedy(parts("breaker", 2))
                .add());
        assertEquals(List.of("breaker"), plan.works().stream().map(Remedy::id).toList());
    }

    private static Remedy parts(String id, int count) {
        return new Remedy(
                id,
                id,
                Map.of(),
                Collections.nCopies(count, Remedy.Item.of("part", 1)),
                false,
                0,
                survey -> survey.setNotes(id));
    }

    private static WorkPlan plan(BiConsumer<Survey, Findings> answers) {
        return plan(List.of(LOAD, OTHER), answers);
    }

    private static WorkPlan plan(List<Check> checks, BiConsumer<Survey, Findings> answers) {
        return plan(WorkCost.BY_COUNT, checks, answers);
    }

    private static WorkPlan plan(WorkCost.Source costs, List<Check> checks, BiConsumer<Survey, Findings> answers) {
        Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", checks, answers));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        return new RemedySearch(runner::judge, costs)
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
    }

    private static boolean done(Survey survey, String id) {
        return survey.getNotes() != null && survey.getNotes().contains(id);
    }

    @Test
    void aWorkThatOpensADoubtIsFollowedByTheOneThatClosesIt() {
        WorkPlan plan = plan((survey, findings) -> {
            boolean carries = done(survey, "device");
            findings.on(LOAD)
                    .compare(carries ? 1 : -1, 0)
                    .remedy(Fixtures.work("device"))
                    .remedy(Fixtures.work("cable"))
                    .add();
            FindingBuilder other = findings.on(OTHER).compare(1, 0);
            if (done(survey, "device") && !done(survey, "cable")) {
                other.cannotTell(List.of("survey.electricity"));
            }
            other.add();
        });
        assertEquals(
                List.of("cable", "device"),
                plan.works().stream().map(Remedy::id).toList());
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
    }

    @Test
    void whatNothingMendsIsNamed() {
        WorkPlan plan = plan((survey, findings) -> {
            findings.on(LOAD)
                    .compare(done(survey, "device") ? 1 : -1, 0)
                    .remedy(Fixtures.work("device"))
                    .add();
            findings.on(OTHER).compare(done(survey, "device") ? -2 : -1, 0).add();
        });
        assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict());
        assertEquals(List.of(), plan.works());
        assertEquals(List.of("made.other"), plan.unmended());
    }

    @Test
    void aPricedSetGoesBeforeOneOnEnquiry() {
        assertTrue(new WorkCost(0, BigDecimal.valueOf(9000), 90).compareTo(new WorkCost(1, BigDecimal.ONE, 0)) < 0);
    }

    /** A flow test that has to be taken again keeps no work from being found for the rest; whether the heater suits stays open. */
    @Test
    void aDoubtThatNoWorkMendsLeavesTheRestToBeMended() {
        Check doubtful = Check.of("made.doubt", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        Check mendable = Check.of("made.mendable", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        Remedy work = new Remedy("work", "work", Map.of(), List.of(), false, 0, survey -> survey.setNotes("done"));
        Runner runner =
                Fixtures.runner(new SyntheticCalculator("made-up", List.of(doubtful, mendable), (survey, findings) -> {
                    findings.on(doubtful)
                            .compare(1, 0)
                            .outcome(Outcome.TOO_CLOSE)
                            .add();
                    double margin = "done".equals(survey.getNotes()) ? 1 : -1;
                    findings.on(mendable).compare(margin, 0).remedy(work).add();
                }));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        WorkPlan plan = new RemedySearch(runner::judge, WorkCost.BY_COUNT)
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertEquals(List.of(work), plan.works());
        assertEquals(Verdict.NOT_AS_IT_IS, plan.verdict());
    }

    /** An advice too close to call, which the draws of the changed house turn to a failure, is no new failure. */
    @Test
    void anAdviceThatWasTooCloseToCallKeepsNoWorkFromBeingOffered() {
        Check advice = Check.of("made.advice", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.RATIO);
        WorkPlan plan = plan(List.of(LOAD, advice), (survey, findings) -> {
            boolean work = done(survey, "work");
            findings.on(LOAD)
                    .compare(work ? 1 : -1, 0)
                    .remedy(Fixtures.work("work"))
                    .add();
            findings.on(advice)
                    .compare(-1, 0)
                    .outcome(work ? Outcome.FAILS : Outcome.TOO_CLOSE)
                    .add();
        });
        assertEquals(List.of("work"), plan.works().stream().map(Remedy::id).toList());
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
    }

    /** Of two works that cost as much, the one is taken that makes no advice fail which passed. */
    @Test
    void anAdviceThatPassedIsSparedWhereAnotherWorkCostsNoMore() {
        WorkPlan plan = advised(true, true);
        assertEquals(List.of("other"), ids(plan));
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
    }

    /** Advice is worth no money: a dearer work is not taken for its sake. */
    @Test
    void aDearerWorkIsNotTakenForAdvice() {
        WorkPlan plan = advised(
                true,
                true,
                works -> new WorkCost(
                        0,
                        BigDecimal.valueOf(works.stream()
                                .mapToInt(work -> work.id().equals("other") ? 11 : 10)
                                .sum()),
                        0));
        assertEquals(List.of("first"), ids(plan));
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
        assertEquals(
                Outcome.FAILS, plan.after().finding("made.advice").orElseThrow().outcome());
    }

    /** Advice rules no heater out: where no other work serves, it fails with the work done, and is said. */
    @Test
    void anAdviceThatPassedDoesNotDecide() {
        WorkPlan plan = advised(true, false);
        assertEquals(List.of("first"), ids(plan));
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
        assertEquals(
                Outcome.FAILS, plan.after().finding("made.advice").orElseThrow().outcome());
    }

    /** A worse reading that advice alone uses changes no verdict, for better or worse. */
    @Test
    void theVerdictIsTheSameWhetherTheAdvicePassesOrFails() {
        for (boolean other : new boolean[] {true, false}) {
            assertEquals(advised(true, other).verdict(), advised(false, other).verdict());
        }
    }

    private static WorkPlan advised(boolean passes, boolean another) {
        return advised(passes, another, WorkCost.BY_COUNT);
    }

    private static WorkPlan advised(boolean passes, boolean another, WorkCost.Source costs) {
        Check advice = Check.of("made.advice", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.RATIO);
        return plan(costs, List.of(LOAD, advice), (survey, findings) -> {
            boolean first = done(survey, "first");
            var load = findings.on(LOAD)
                    .compare(first || done(survey, "other") ? 1 : -1, 0)
                    .remedy(Fixtures.work("first"));
            (another ? load.remedy(Fixtures.work("other")) : load).add();
            findings.on(advice).compare(passes && !first ? 1 : -1, 0).add();
        });
    }

    private static List<String> ids(WorkPlan plan) {
        return plan.works().stream().map(Remedy::id).toList();
    }

    /** Two works, or one that comes later in the alphabet: nothing tells their costs apart. */
    @Test
    void ofSetsThatCostAlikeTheOneWithFewerWorksIsTaken() {
        Runner runner = Fixtures.runner(
                new SyntheticCalculator("made-up", List.of(LOAD), (survey, findings) -> findings.on(LOAD)
                        .compare(
                                done(survey, "z-one") || (done(survey, "a-pipe") && done(survey, "b-pump")) ? 1 : -1, 0)
                        .remedy(Fixtures.work("a-pipe"))
                        .remedy(Fixtures.work("b-pump"))
                        .remedy(Fixtures.work("z-one"))
                        .add()));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        WorkPlan plan = new RemedySearch(runner::judge, works -> new WorkCost(0, BigDecimal.ZERO, 0))
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertEquals(List.of("z-one"), ids(plan));
    }

    /** The booster is offered once the pump is there: with the tank alone it would pass too, but it was never offered so. */
    @Test
    void aWorkOfferedUnderAnotherIsNotTakenWithoutIt() {
        Calculator water = new SyntheticCalculator("water", List.of(LOAD), (survey, findings) -> {
            FindingBuilder load = findings.on(LOAD)
                    .compare(done(survey, "tank") ? 1 : -1, 0)
                    .remedy(Fixtures.work("pump"))
                    .remedy(Fixtures.work("tank"));
            (done(survey, "pump") ? load.remedy(Fixtures.work("booster")) : load).add();
        });
        Calculator other = new SyntheticCalculator("other", List.of(OTHER), (survey, findings) -> findings.on(OTHER)
                .compare(done(survey, "booster") ? 1 : -1, 0)
                .add());
        Runner runner = Fixtures.runner(water, other);
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        WorkPlan plan = new RemedySearch(runner::judge, WorkCost.BY_COUNT)
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertEquals(List.of("booster", "pump", "tank"), ids(plan));
    }

    /** The doubt that the new device opens is closed by a cable, which without the device makes another check fail for good. */
    @Test
    void aDoubtIsClosedByWhatTheSameCalculatorOfferedForAnotherCheck() {
        Check third = Check.of("made.third", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        Calculator circuit = new SyntheticCalculator("circuit", List.of(LOAD, OTHER), (survey, findings) -> {
            boolean device = done(survey, "device");
            findings.on(LOAD)
                    .compare(device ? 1 : -1, 0)
                    .remedy(Fixtures.work("device"))
                    .remedy(Fixtures.work("cable"))
                    .add();
            FindingBuilder other = findings.on(OTHER).compare(1, 0);
            (device && !done(survey, "cable") ? other.outcome(Outcome.NOT_CHECKED) : other).add();
        });
        Calculator apart = new SyntheticCalculator("apart", List.of(third), (survey, findings) -> findings.on(third)
                .compare(done(survey, "cable") && !done(survey, "device") ? -1 : 1, 0)
                .add());
        Runner runner = Fixtures.runner(circuit, apart);
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        WorkPlan plan = new RemedySearch(runner::judge, WorkCost.BY_COUNT, runner.influence())
                .plan(survey, Fixtures.candidate(), runner.judge(survey, Fixtures.candidate()));
        assertEquals(List.of("cable", "device"), ids(plan));
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
    }

    @Test
    void theWorksComeInTheOrderOfTheirIdsNotOfTheirOffers() {
        WorkPlan plan = plan((survey, findings) -> {
            findings.on(LOAD)
                    .compare(done(survey, "way") ? 1 : -1, 0)
                    .remedy(Fixtures.work("way"))
                    .add();
            findings.on(OTHER)
                    .compare(done(survey, "cable") ? 1 : -1, 0)
                    .remedy(Fixtures.work("cable"))
                    .remedy(Fixtures.work("longer-cable"))
                    .add();
        });
        assertEquals(List.of("cable", "way"), ids(plan));
    }

    @Test
    void aCheckThatNoneOfItsWorksFixesIsNamedAndOneThatAWorkFixesIsNot() {
        WorkPlan plan = plan((survey, findings) -> {
            findings.on(LOAD)
                    .compare(-1, 0)
                    .remedy(Fixtures.work("cable"))
                    .remedy(Fixtures.work("device"))
                    .add();
            findings.on(OTHER)
                    .compare(done(survey, "valve") ? 1 : -1, 0)
                    .remedy(Fixtures.work("valve"))
                    .add();
        });
        assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict());
        assertEquals(List.of("made.load"), plan.unmended());
        assertFalse(plan.exhausted());
    }

    /** A larger and a smaller device are one kind of work: only one of them can be there. */
    @Test
    void checksThatOnlyContradictoryWorksFixAreAllNamed() {
        WorkPlan plan = plan((survey, findings) -> {
            for (Check check : List.of(LOAD, OTHER)) {
                findings.on(check)
                        .compare(done(survey, check == LOAD ? "larger" : "smaller") ? 1 : -1, 0)
                        .remedy(device("larger"))
                        .remedy(device("smaller"))
                        .add();
            }
        });
        assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict());
        assertEquals(List.of("made.load", "made.other"), plan.unmended());
    }

    private static Remedy device(String id) {
        return new Remedy(id, "device", Map.of(), List.of(), false, 0, survey -> survey.setNotes(id));
    }

    /** The cheaper work leaves it too close to call, the dearer one passes. */
    @Test
    void aWorkAfterWhichACheckIsTooCloseToCallDoesNotServe() {
        WorkPlan plan = plan(List.of(LOAD), (survey, findings) -> {
            FindingBuilder load = findings.on(LOAD)
                    .compare(done(survey, "b-work") ? 1 : -1, 0)
                    .remedy(Fixtures.work("a-work"))
                    .remedy(Fixtures.work("b-work"));
            (done(survey, "a-work") ? load.outcome(Outcome.TOO_CLOSE) : load).add();
        });
        assertEquals(List.of("b-work"), ids(plan));
    }

    @Test
    void adviceThatBecomesTooCloseToCallDoesNotStandInTheWay() {
        Check advice = Check.of("made.advice", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.RATIO);
        WorkPlan plan = plan(List.of(LOAD, advice), (survey, findings) -> {
            boolean work = done(survey, "work");
            findings.on(LOAD)
                    .compare(work ? 1 : -1, 0)
                    .remedy(Fixtures.work("work"))
                    .add();
            findings.on(advice)
                    .compare(1, 0)
                    .outcome(work ? Outcome.TOO_CLOSE : Outcome.PASSES)
                    .add();
        });
        assertEquals(List.of("work"), ids(plan));
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
    }

    @Test
    void worksOnEnquiryAndTheLongestDeliveryAreCounted() {
        Remedy pump = new Remedy("pump", "pump", Map.of(), List.of(), true, 21, survey -> {});
        Remedy valve = new Remedy("valve", "valve", Map.of(), List.of(), false, 3, survey -> {});
        assertEquals(new WorkCost(1, BigDecimal.valueOf(2), 21), WorkCost.BY_COUNT.of(List.of(valve, pump)));
        assertEquals(new WorkCost(0, BigDecimal.ZERO, 0), WorkCost.BY_COUNT.of(List.of()));
    }
}
