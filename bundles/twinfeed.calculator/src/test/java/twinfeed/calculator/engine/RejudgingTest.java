// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantity;
import twinfeed.model.assessment.Supply;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** Judging again where only some readings have moved. */
class RejudgingTest {
    private final Survey survey = survey();
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
        Calculator giver =
                counted("giver", "survey.targetOutlet", null, SharedQuantity.DESIGN_CURRENT, each -> target(each));
        Calculator taker = counted("taker", "survey.customer", SharedQuantity.DESIGN_CURRENT, null, each -> 1);
        Calculator winter = counted(
                "winter", "survey.winterIntake", null, null, each -> Objects.requireNonNull(each.getWinterIntake())
                        .si());
        Runner runner = new Runner(List.of(giver, taker, winter), (mean, spread, month, southern) -> mean);
        Candidate candidate = new Candidate(CatalogueFactory.eINSTANCE.createHeater(), false);
        return runner.rejudging(survey, survey, candidate, grid -> grid, new Readings(survey), Set.of(checks));
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
    void withoutReadingsAsTakenNothingCanMove() {
        assertThrows(IllegalStateException.class, () -> asking("taker.value").moved(each -> true));
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
        Check check = Check.report(id + ".value", Kind.RATIO);
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
                    findings.on(check).report(own + taken).argument("id", id).add();
                };
            }
        };
    }

    private static List<Double> values(List<Finding> findings) {
        return findings.stream()
                .map(finding -> Objects.requireNonNull(finding.figures()).value())
                .toList();
    }

    @Test
    void onlyACalculatorThatReadsWhatMovedIsRunAgain() {
        Rejudging rejudging = rejudging();
        assertEquals(
                List.of(40.0, 41.0, 5.0), values(rejudging.moved(each -> each.reads("survey.customer.vulnerable"))));
        assertEquals(List.of("taker"), ran);
    }

    @Test
    void aCalculatorIsRunAgainWhereAQuantityThatItConsumesChanged() {
        Rejudging rejudging = rejudging();
        survey.setTargetOutlet(Temperature.valueOf("42 °C"));
        assertEquals(List.of(42.0, 43.0, 5.0), values(rejudging.moved(each -> each.reads("survey.targetOutlet"))));
        assertEquals(List.of("giver", "taker"), ran);
    }

    @Test
    void aCalculatorIsNotRunAgainWhereItsQuantitiesStayTheSame() {
        Rejudging rejudging = rejudging();
        assertEquals(List.of(40.0, 41.0, 5.0), values(rejudging.moved(each -> each.reads("survey.targetOutlet"))));
        assertEquals(List.of("giver"), ran);
    }

    @Test
    void allAreRunUnderOtherConditions() {
        Rejudging rejudging = rejudging();
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("236 V"));
        assertEquals(List.of(40.0, 41.0, 5.0), values(rejudging.moved(each -> false)));
        assertEquals(List.of("giver", "taker", "winter"), ran);
    }

    @Test
    void allAreRunWhereAllHasMoved() {
        Rejudging rejudging = rejudging();
        survey.setWinterIntake(Temperature.valueOf("7 °C"));
        assertEquals(List.of(40.0, 41.0, 7.0), values(rejudging.all()));
        assertEquals(List.of("giver", "taker", "winter"), ran);
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
