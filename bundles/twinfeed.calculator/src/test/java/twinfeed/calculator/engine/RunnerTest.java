// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Grid;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.formula.Parameter;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Supply;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;
import twinfeed.units.Voltage;

class RunnerTest {
    private static final Check CHECK =
            Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.FLOW, "survey.water.test.flow");

    private static Calculator linked(String id, List<SharedQuantity> takes, List<SharedQuantity> gives) {
        return new Calculator() {
            @Override
            public CalculatorDescriptor descriptor() {
                return new CalculatorDescriptor(id, "1", Runner.TEXTS, gives, takes, List.of(), List.of(), List.of());
            }

            @Override
            public Assessor prepare(Context context) {
                return (candidate, shared, findings) -> {};
            }
        };
    }

    @Test
    void calculatorsRunAfterThoseThatGiveWhatTheyTake() {
        List<Calculator> all = new ArrayList<>(List.of(
                linked("a", List.of(SharedQuantity.TARGET_FLOW), List.of()),
                linked("b", List.of(SharedQuantity.DELIVERED_POWER), List.of(SharedQuantity.TARGET_FLOW)),
                linked("c", List.of(), List.of(SharedQuantity.DELIVERED_POWER))));
        for (int i = 0; i < 6; i++) {
            Collections.shuffle(all, new Random(i));
            Runner runner = new Runner(all, (mean, spread, month, southern) -> mean);
            assertEquals(
                    List.of("c", "b", "a"),
                    runner.calculators().stream()
                            .map(each -> each.descriptor().id())
                            .toList());
        }
    }

    @Test
    void aCalculatorThatThrowsIsNamedAndTheRestGoesOn() {
        Calculator broken = new SyntheticCalculator("broken", List.of(), (survey, findings) -> {
            throw new IllegalStateException("out of luck");
        });
        Calculator sound = new SyntheticCalculator("sound", List.of(CHECK), (survey, findings) -> findings.on(CHECK)
                .compare(2, 1)
                .add());
        Runner runner = Fixtures.runner(broken, sound);
        OptionResult result = runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate());
        assertEquals(
                List.of(Outcome.CANNOT_TELL, Outcome.PASSES),
                result.findings().stream().map(Finding::outcome).toList());
        String sentence = new FindingText(runner, Locale.ENGLISH)
                .sentence(result.findings().get(0));
        assertTrue(sentence.contains("broken") && sentence.contains("out of luck"), sentence);
    }

    @Test
    void whereNothingDecidingIsAskedNobodyCanTell() {
        Check advice = Check.of("made.advice", FindingClass.ADVICE, LimitType.AT_LEAST, Kind.FLOW);
        Calculator adviser =
                new SyntheticCalculator("adviser", List.of(advice), (survey, findings) -> findings.on(advice)
                        .compare(2, 1)
                        .add());
        for (Runner runner : List.of(Fixtures.runner(), Fixtures.runner(adviser))) {
            OptionResult result = runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate());
            assertEquals(Verdict.CANNOT_TELL, result.verdict());
        }
    }

    @Test
    void aMissingReadingIsNamed() {
        Calculator asking = new SyntheticCalculator("asking", List.of(CHECK), (survey, findings) -> {
            if (!findings.blocked(CHECK)) {
                findings.on(CHECK).compare(1, 1).add();
            }
        });
        Runner runner = Fixtures.runner(asking);
        Finding finding = runner.judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate())
                .findings()
                .get(0);
        assertEquals(Outcome.CANNOT_TELL, finding.outcome());
        assertEquals(List.of("survey.water"), finding.missing());
        assertEquals(
                "Cannot tell yet. Missing: the water supply.",
                new FindingText(runner, Locale.ENGLISH).sentence(finding));
    }

    @Test
    void theGridHoldsTheSurveysOwnVoltageAndTaps() {
        Survey survey = Fixtures.survey("10 L/min", "0.3 ohm");
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("236 V"));
        for (String name : List.of("kitchen tap", "basin", "garden tap")) {
            DrawOff tap = SurveyFactory.eINSTANCE.createDrawOff();
            tap.setName(name);
            survey.getWater().getDrawOffs().add(tap);
        }
        Grid grid = Fixtures.runner().assess(survey, List.of()).grid();
        assertEquals(236, grid.voltage(grid.nominal()));
        assertEquals(5, grid.voltageCount());
        assertEquals(13, grid.intakes().size());
        assertEquals(List.of("kitchen tap", "basin"), grid.drawOffs().get(2).names());
    }

    @Test
    void monthsComeFromTheTableOrTheModel() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        // SAP 10.2 Table J1, "from mains", January and July.
        Grid table = Fixtures.runner().assess(survey, List.of()).grid();
        assertEquals(8.0, table.intakes().get(1).temperatureC());
        assertEquals(18.4, table.intakes().get(7).temperatureC());
        survey.setClimate("model");
        survey.setAnnualMeanAir(Temperature.valueOf("10 C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("4 K"));
        Grid model = Fixtures.runner().assess(survey, List.of()).grid();
        assertEquals(10 + 4 + 12, model.intakes().get(12).temperatureC());
        survey.setClimate(null);
        Grid given = Fixtures.runner().assess(survey, List.of()).grid();
        assertEquals(
                10 + 4 + 12,
                given.intakes().get(12).temperatureC(),
                "air temperatures that are given select the model");
    }

    @Test
    void unknownRulesAndClimatesAreRefusedByName() {
        Survey rules = SurveyFactory.eINSTANCE.createSurvey();
        rules.setRules("nowhere-1900");
        assertTrue(message(rules).contains("nowhere-1900"));
        Survey climate = SurveyFactory.eINSTANCE.createSurvey();
        climate.setClimate("moon");
        assertTrue(message(climate).contains("moon"));
    }

    private static String message(Survey survey) {
        return String.valueOf(assertThrows(
                        IllegalArgumentException.class, () -> Fixtures.runner().assess(survey, List.of()))
                .getMessage());
    }

    /** Reports its height, 2 m unless the survey sets it. */
    private static class HeightCalculator implements Calculator {
        private static final Check HEIGHT = Check.report("made.height", Kind.LENGTH);
        private static final Check VOLTAGES = Check.report("made.voltages", Kind.RATIO);

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(HeightCalculator.class)
                    .supply(Supply.WATER)
                    .checks(HEIGHT, VOLTAGES)
                    .parameters(Parameter.optional("height", Kind.LENGTH, 2, 0, 10))
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                findings.on(VOLTAGES).report(context.grid().voltageCount()).add();
                findings.on(HEIGHT).report(context.parameters().si("height")).add();
            };
        }
    }

    private static Survey height(String calculator, String key, String value) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        ParameterValue parameter = SurveyFactory.eINSTANCE.createParameterValue();
        parameter.setCalculator(calculator);
        parameter.setKey(key);
        parameter.setValue(value);
        survey.getParameters().add(parameter);
        return survey;
    }

    private static double reported(OptionResult result, String check) {
        return Objects.requireNonNull(result.finding(check).orElseThrow().figures())
                .value();
    }

    @Test
    void aCalculatorIsGivenTheParametersThatTheSurveySetsForIt() {
        Runner runner = Fixtures.runner(new HeightCalculator());
        for (String set : List.of("3 m", "3 m", "4.5 m")) {
            OptionResult result = runner.judge(height("height", "height", set), Fixtures.candidate());
            assertEquals(Double.parseDouble(set.replace(" m", "")), reported(result, "made.height"));
        }
        OptionResult other = runner.judge(height("width", "girth", "3 m"), Fixtures.candidate());
        assertEquals(2, reported(other, "made.height"), "set for another");
        assertEquals(4, reported(other, "made.voltages"), "all voltages of the rule set");
        assertEquals(2, other.findings().size(), "each check once, though not in the order declared");
        OptionResult wrong = runner.judge(height("height", "girth", "3 m"), Fixtures.candidate());
        assertEquals(
                Outcome.NOT_CHECKED, wrong.finding("made.height").orElseThrow().outcome());
        String sentence = new FindingText(runner, Locale.ENGLISH)
                .sentence(wrong.findings().get(0));
        assertTrue(sentence.contains("\"girth\" is not known here; known are height"), sentence);
    }

    @Test
    void whatACalculatorAssumesIsRecordedUnderItsId() {
        Calculator assuming = new HeightCalculator() {
            @Override
            public Assessor prepare(Context context) {
                context.assume("tap", Map.of("height", 1.0));
                context.assumeTabulated("bore", Map::of);
                return super.prepare(context);
            }
        };
        List<Assumptions.Assumption> assumed = Fixtures.runner(assuming)
                .assess(SampleHouse.fed("240 V"), List.of())
                .assumptions();
        assertTrue(assumed.contains(new Assumptions.Assumption("height", "tap", Map.of("height", 1.0), false)));
        assertTrue(assumed.contains(new Assumptions.Assumption("height", "bore", Map.of(), true)));
    }

    @Test
    void theRunnerKnowsSupplyAndWordsOfItsCalculators() {
        Calculator height = new HeightCalculator();
        Runner runner = Fixtures.runner(height);
        assertEquals(Supply.WATER, runner.supply("height"));
        assertEquals(Supply.NEITHER, runner.supply("width"));
        assertNotSame(Runner.TEXTS, runner.texts("height"));
        assertSame(Runner.TEXTS, runner.texts("width"));
        String folder = height.getClass()
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath();
        assertTrue(folder.endsWith("/" + runner.source(height) + "/"), runner.source(height));
        assertEquals("", runner.source(new HeightCalculator()), "it is not the runner's");
    }

    @Test
    void calculatorsThatDependOnOneAnotherComeLast() {
        Calculator one = linked("a", List.of(SharedQuantity.TARGET_FLOW), List.of(SharedQuantity.DELIVERED_POWER));
        Calculator other = linked("b", List.of(SharedQuantity.DELIVERED_POWER), List.of(SharedQuantity.TARGET_FLOW));
        Calculator own = linked("c", List.of(SharedQuantity.DESIGN_CURRENT), List.of(SharedQuantity.DESIGN_CURRENT));
        assertEquals(List.of(own, one, other), Fixtures.runner(other, own, one).calculators());
    }

    @ParameterizedTest
    @CsvSource({
        "2.10, 2.9, 1",
        "2.9, 2.10, -1",
        "2.0, 2.0-SNAPSHOT, 1",
        "2, 2.0, 0",
        "2.0.1, 2, 1",
        "1.9.9, 2, -1",
        "2.x, 2.0, -1"
    })
    void versionsAreComparedPartByPart(String one, String other, int order) {
        assertEquals(order, CalculatorSelection.VERSIONS.compare(one, other));
    }
}
