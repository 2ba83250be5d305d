// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.cache.CheckMargin;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Supply;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** Judging again where only some readings have moved. */
class RejudgingTest {
    private static final double[] NOWHERE = {};

    private final Survey survey = survey();
    private final Heater heater = CatalogueFactory.eINSTANCE.createHeater();
    private final List<String> ran = new ArrayList<>();

    private static Survey survey() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setTargetOutlet(Temperature.valueOf("40 °C"));
        survey.setWinterIntake(Temperature.valueOf("5 °C"));
        survey.setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("240 V"));
        return survey;
    }

    /** Gives the target temperature to the second, which adds 1; the third reports the winter intake. */
    private Rejudging rejudging() {
        Rejudging rejudging =
                asking("giver.value", "taker.value", "winter.value").fromHere();
        ran.clear();
        return rejudging;
    }

    private Rejudging asking(String... checks) {
        return asking(null, checks);
    }

    private Rejudging asking(@Nullable AnswerCache cache, String... checks) {
        Calculator giver =
                counted("giver", "survey.targetOutlet", null, SharedQuantity.DESIGN_CURRENT, each -> target(each));
        Calculator taker = counted("taker", "survey.customer", SharedQuantity.DESIGN_CURRENT, null, each -> 1);
        Calculator winter = counted(
                "winter", "survey.winterIntake", null, null, each -> Objects.requireNonNull(each.getWinterIntake())
                        .si());
        Runner runner = new Runner(List.of(giver, taker, winter), (mean, spread, month, southern) -> mean);
        Candidate candidate = new Candidate(heater, false);
        return runner.rejudging(survey, survey, candidate, grid -> grid, new Readings(survey), Set.of(checks), cache);
    }

    @Test
    void onlyThoseAreRunThatAnswerACheckOrProvideWhatItNeeds() {
        assertEquals(List.of(40.0, 41.0), values(asking("taker.value").all()));
        assertEquals(List.of("giver", "taker"), ran);
        ran.clear();
        assertEquals(List.of(5.0), values(asking("winter.value").all()));
        assertEquals(List.of("winter"), ran);
        ran.clear();
        assertEquals(List.of(40.0), values(asking("giver.value").all()));
        assertEquals(List.of("giver"), ran);
        assertEquals(List.of(), asking("nobodys.value").all());
    }

    @Test
    void nothingButFiguresIsAskedFor() {
        asking("winter.value").all().forEach(finding -> assertEquals(Map.of(), finding.arguments()));
        assertEquals(1, ran.size());
    }

    @Test
    void withoutAnswersAsTakenAllAreRun() {
        assertEquals(List.of(40.0, 41.0), margins(asking("taker.value").moved(each -> NOWHERE)));
        assertEquals(List.of("giver", "taker"), ran);
    }

    private static double target(Survey survey) {
        return Objects.requireNonNull(survey.getTargetOutlet()).si();
    }

    private Calculator counted(
            String id,
            String reads,
            @Nullable SharedQuantity takes,
            @Nullable SharedQuantity gives,
            ToDoubleFunction<Survey> value) {
        Check check = Check.of(id + ".value", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.RATIO);
        return new Calculator() {
            @Override
            public CalculatorDescriptor descriptor() {
                return new CalculatorDescriptor(
                        id,
                        "1",
                        Runner.TEXTS,
                        gives == null ? List.of() : List.of(gives),
                        takes == null ? List.of() : List.of(takes),
                        Supply.NEITHER,
                        List.of(check),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(reads));
            }

            @Override
            public Assessor prepare(Context context) {
                return (candidate, shared, findings) -> {
                    ran.add(id);
                    double own = value.applyAsDouble(context.survey());
                    if (gives != null && shared.asks(List.of(gives))) {
                        shared.put(gives, own);
                    }
                    double taken = takes == null ? 0 : shared.get(takes)[0];
                    findings.on(check)
                            .compare(own + taken, 0)
                            .argument("id", id)
                            .add();
                };
            }
        };
    }

    /** One reading stands elsewhere. */
    private static Function<CalculatorDescriptor, double[]> moving(String path) {
        return calculator -> calculator.reads(path) ? new double[] {1} : NOWHERE;
    }

    private static List<Double> margins(List<CheckMargin> answers) {
        return answers.stream().map(CheckMargin::margin).toList();
    }

    private static List<Double> values(List<Finding> findings) {
        return findings.stream()
                .map(finding -> Objects.requireNonNull(finding.figures()).value())
                .toList();
    }

    @Test
    void onlyACalculatorThatReadsWhatMovedIsRunAgain() {
        Rejudging rejudging = rejudging();
        assertEquals(List.of(40.0, 41.0, 5.0), margins(rejudging.moved(moving("survey.customer.vulnerable"))));
        assertEquals(List.of("taker"), ran);
    }

    @Test
    void aCalculatorIsRunAgainWhereAQuantityThatItConsumesChanged() {
        Rejudging rejudging = rejudging();
        survey.setTargetOutlet(Temperature.valueOf("42 °C"));
        assertEquals(List.of(42.0, 43.0, 5.0), margins(rejudging.moved(moving("survey.targetOutlet"))));
        assertEquals(List.of("giver", "taker"), ran);
    }

    @Test
    void aCalculatorIsNotRunAgainWhereItsQuantitiesStayTheSame() {
        Rejudging rejudging = rejudging();
        assertEquals(List.of(40.0, 41.0, 5.0), margins(rejudging.moved(moving("survey.targetOutlet"))));
        assertEquals(List.of("giver"), ran);
    }

    @Test
    void allAreRunUnderOtherConditions() {
        Rejudging rejudging = rejudging();
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("236 V"));
        assertEquals(List.of(40.0, 41.0, 5.0), margins(rejudging.moved(each -> NOWHERE)));
        assertEquals(List.of("giver", "taker", "winter"), ran);
    }

    @Test
    void allAreRunWhereAllHasMoved() {
        Rejudging rejudging = rejudging();
        survey.setWinterIntake(Temperature.valueOf("7 °C"));
        assertEquals(List.of(40.0, 41.0, 7.0), values(rejudging.all()));
        assertEquals(List.of("giver", "taker", "winter"), ran);
    }

    /** What all three say where the target temperature stands elsewhere. */
    private List<Double> judgedAgain(AnswerCache cache) {
        ran.clear();
        Rejudging rejudging =
                asking(cache, "giver.value", "taker.value", "winter.value").fromHere();
        Temperature taken = survey.getTargetOutlet();
        survey.setTargetOutlet(Temperature.valueOf("42 °C"));
        List<Double> said = margins(rejudging.moved(moving("survey.targetOutlet")));
        survey.setTargetOutlet(taken);
        return said;
    }

    @Test
    void nothingIsRunAgainInAHouseThatWasJudgedBefore() {
        AnswerCache cache = new AnswerCache();
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of("giver", "taker", "winter", "giver", "taker"), ran);
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of(), ran);
    }

    @Test
    void afterAnEditOnlyThoseAreRunThatReadWhatWasEdited() {
        AnswerCache cache = new AnswerCache();
        judgedAgain(cache);
        survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
        survey.getCustomer().setVulnerable(true);
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of("taker", "taker"), ran);
        survey.setNotes("gate sticks");
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of(), ran);
    }

    @Test
    void whoTakesAQuantityIsRunAgainWhereItIsAnother() {
        AnswerCache cache = new AnswerCache();
        judgedAgain(cache);
        survey.setTargetOutlet(Temperature.valueOf("41 °C"));
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of("giver", "taker", "giver"), ran, "at 42 °C the taker has answered before");
    }

    @Test
    void underOtherConditionsAllAreRunAgain() {
        AnswerCache cache = new AnswerCache();
        judgedAgain(cache);
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("236 V"));
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of("giver", "taker", "winter", "giver", "taker"), ran);
    }

    @Test
    void anotherHeaterIsAnotherQuestion() {
        AnswerCache cache = new AnswerCache();
        judgedAgain(cache);
        heater.setMakePressure(Pressure.valueOf("1 bar"));
        assertEquals(List.of(42.0, 43.0, 5.0), judgedAgain(cache));
        assertEquals(List.of("giver", "taker", "winter", "giver", "taker"), ran);
    }

    @Test
    void otherChecksAreAnotherQuestionButOfTheirOwnCalculatorAlone() {
        AnswerCache cache = new AnswerCache();
        asking(cache, "taker.value").fromHere();
        ran.clear();
        asking(cache, "giver.value", "taker.value").fromHere();
        assertEquals(List.of("giver"), ran);
    }

    @Test
    void aFailureIsNotKept() {
        Check check = Check.of("broken.value", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.RATIO);
        Calculator breaking = new SyntheticCalculator("breaking", List.of(check), (house, findings) -> {
            ran.add("breaking");
            if (ran.size() == 1) {
                throw new IllegalStateException("a passing fault");
            }
            findings.on(check).compare(1, 0).add();
        });
        Runner runner = new Runner(List.of(breaking), (mean, spread, month, southern) -> mean);
        AnswerCache cache = new AnswerCache();
        Supplier<List<Double>> judged = () -> margins(runner.rejudging(
                        survey,
                        survey,
                        new Candidate(heater, false),
                        grid -> grid,
                        new Readings(survey),
                        Set.of("broken.value"),
                        cache)
                .moved(each -> NOWHERE));
        assertEquals(List.of(Double.NaN), judged.get());
        assertEquals(List.of(1.0), judged.get());
        assertEquals(List.of(1.0), judged.get());
        assertEquals(List.of("breaking", "breaking"), ran);
    }

    @Test
    void aBeginningOfAPathEndsAtAName() {
        CalculatorDescriptor reader =
                counted("reader", "survey.unit.age", null, null, each -> 0).descriptor();
        assertTrue(reader.reads("survey.unit.age"));
        assertTrue(reader.reads("survey.unit.age[one].value"));
        assertFalse(reader.reads("survey.unit.agent"));
        assertFalse(reader.reads("survey.unit"));
    }
}
