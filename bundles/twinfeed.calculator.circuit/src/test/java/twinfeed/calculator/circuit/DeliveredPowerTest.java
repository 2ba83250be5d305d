// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.circuit.Surveys.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Kind;
import twinfeed.units.Length;
import twinfeed.units.Temperature;

/** What the circuit hands on to those who work out flow and pressure, and what it lacks where it cannot. */
class DeliveredPowerTest {
    private static final String PIECE = "survey.electricity.circuit.segments[board to loft].";

    private final Survey survey = Surveys.suitable();
    private final Heater heater = Surveys.heater("9.5 kW", "240 V");

    /** Keeps what is handed on. */
    private static final class Reader implements Calculator {
        private final List<SharedQuantities> seen = new ArrayList<>();

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Reader.class)
                    .consumes(
                            SharedQuantity.DELIVERED_POWER,
                            SharedQuantity.TERMINAL_VOLTAGE,
                            SharedQuantity.DESIGN_CURRENT)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> seen.add(shared);
        }
    }

    private SharedQuantities handedOn() {
        Reader reader = new Reader();
        new Runner(List.of(new CircuitCalculator(), reader), (mean, spread, day, southern) -> mean)
                .assess(survey, List.of(new Candidate(heater, false)));
        return reader.seen.get(0);
    }

    private void deviation(String value) {
        ParameterValue parameter = SurveyFactory.eINSTANCE.createParameterValue();
        parameter.setCalculator("circuit");
        parameter.setKey("powerDeviation");
        parameter.setValue(value);
        survey.getParameters().add(parameter);
    }

    private static Map<String, Double> values(List<Step> steps) {
        return steps.stream().collect(Collectors.toMap(Step::symbol, Step::value));
    }

    /** Ohm's law for each voltage of the grid; the working of each ends in the power. */
    @Test
    void voltagePowerAndCurrentAreHandedOn() {
        SharedQuantities shared = handedOn();
        assertEquals(9500 / 240.0, shared.get(SharedQuantity.DESIGN_CURRENT)[0], 1e-9);
        double[] volts = shared.get(SharedQuantity.TERMINAL_VOLTAGE);
        double[] watts = shared.get(SharedQuantity.DELIVERED_POWER);
        double elementOhm = 240 * 240 / 9500.0;
        assertEquals(5, watts.length);
        for (int at = 0; at < watts.length; at++) {
            assertEquals(volts[at] * volts[at] / elementOhm, watts[at], 1e-6);
            List<Step> steps =
                    shared.working(SharedQuantity.DELIVERED_POWER, at).steps();
            assertEquals("power", steps.get(steps.size() - 1).meaning());
            assertEquals(watts[at], steps.get(steps.size() - 1).value(), 1e-6);
        }
    }

    /** EN 60335-1 allows 5 % above the rating (memory): 9.975 kW at 240 V, an element of 5.774 ohm; the design current stays. */
    @Test
    void aHeaterAtTheEndOfItsToleranceTakesMore() {
        deviation("1");
        SharedQuantities shared = handedOn();
        assertEquals(9500 / 240.0, shared.get(SharedQuantity.DESIGN_CURRENT)[0], 1e-9);
        double elementOhm = 240 * 240 / 9975.0;
        double[] volts = shared.get(SharedQuantity.TERMINAL_VOLTAGE);
        double[] watts = shared.get(SharedQuantity.DELIVERED_POWER);
        for (int at = 0; at < watts.length; at++) {
            assertEquals(volts[at] * volts[at] / elementOhm, watts[at], 1e-6);
        }
        Finding power = finding(survey, heater, "circuit.deliveredPower");
        Map<String, Double> values = values(power.working().steps());
        assertEquals(1.05, values.get("f"), 1e-12);
        assertEquals(elementOhm, values.get("R"), 1e-9);
        assertEquals(Fixtures.value(power), values.get("P_kW"), 1e-9);
        // 238 V over 5.774 ohm and the 0.0423 ohm of the cable: 40.92 A and 9.67 kW.
        assertEquals(9.67, Fixtures.value(power), 0.01);
    }

    private record Gap(String name, String path, String what, Consumer<CableSegment> change) {}

    private static final List<Gap> GAPS = List.of(
            new Gap("a size that is not made", PIECE + "size", "7 mm²", piece -> piece.setSize(Area.valueOf("7 mm2"))),
            new Gap("a method of no table", PIECE + "method", "X9", piece -> piece.setMethod("X9")),
            new Gap(
                    "a temperature beyond the table",
                    PIECE + "ambient",
                    "board to loft",
                    piece -> piece.setAmbient(Temperature.valueOf("75 °C"))),
            new Gap(
                    "more circuits than the table has",
                    PIECE + "grouped",
                    "board to loft",
                    piece -> piece.setGrouped(60)));

    @TestFactory
    Stream<DynamicTest> whatNoTableHasIsNamedEverywhere() {
        return GAPS.stream()
                .map(gap -> DynamicTest.dynamicTest(gap.name, () -> {
                    Survey house = Surveys.suitable();
                    gap.change.accept(
                            house.getElectricity().getCircuit().getSegments().get(0));
                    for (String key :
                            List.of("capacity", "hiddenMethod", "highestPower", "terminalVoltage", "deliveredPower")) {
                        Finding finding = finding(house, heater, "circuit." + key);
                        assertEquals(Outcome.CANNOT_TELL, finding.outcome(), key);
                        assertEquals(List.of(gap.path), finding.missing(), key);
                        assertEquals("notInTable", finding.variant(), key);
                        assertEquals(gap.what, finding.arguments().get("what"), key);
                    }
                }));
    }

    @Test
    void whoTakesThePowerLearnsWhatNoTableHas() {
        CableSegment piece = survey.getElectricity().getCircuit().getSegments().get(0);
        piece.setMethod("X9");
        assertEquals(List.of(PIECE + "method"), handedOn().missing(SharedQuantity.DELIVERED_POWER));
        assertEquals(List.of(PIECE + "method"), handedOn().missing(SharedQuantity.TERMINAL_VOLTAGE));
        piece.setLength(null);
        assertEquals(List.of(PIECE + "length"), handedOn().missing(SharedQuantity.DELIVERED_POWER));
        heater.setPower(null);
        assertEquals(List.of("heater.power", PIECE + "length"), handedOn().missing(SharedQuantity.DELIVERED_POWER));
        assertEquals(List.of("heater.power"), handedOn().missing(SharedQuantity.DESIGN_CURRENT));
    }

    @Test
    void aSizeThatIsNotMadeHasNoDropAndNoLongestRun() {
        survey.getElectricity().getCircuit().getSegments().get(0).setSize(Area.valueOf("7 mm2"));
        for (String key : List.of("circuit.voltageDrop", "circuit.longestRun")) {
            assertEquals(List.of(PIECE + "size"), finding(survey, heater, key).missing(), key);
            assertEquals("7 mm²", finding(survey, heater, key).arguments().get("what"), key);
        }
    }

    /** A length of less than nothing is none. */
    @Test
    void aNegativeLengthIsNotRead() {
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(Length.valueOf("-3 m"));
        assertEquals(
                List.of(PIECE + "length"),
                finding(survey, heater, "circuit.terminalVoltage").missing());
    }

    @Test
    void whatIsTakenForThePiecesIsSaid() {
        CableSegment old = survey.getElectricity().getCircuit().getSegments().get(0);
        old.setOldCable(twinfeed.model.survey.OldCable.LEAD);
        old.setGrouped(null);
        CableSegment second = survey.getElectricity().getCircuit().getSegments().get(1);
        second.setGrouped(1);
        second.setAmbient(Temperature.valueOf("30 °C"));
        FindingText words = new FindingText(Surveys.RUNNER, Locale.ENGLISH);
        List<String> said = Surveys.assess(survey, heater).assumptions().stream()
                .map(words::assumption)
                .toList();
        assertTrue(
                said.contains(
                        "Voltage and power at the heater are worked out with a new 10 mm² cable in place of the old \"board to loft\""),
                said.toString());
        assertTrue(said.contains("Temperature around the cable \"board to loft\" taken as 30 °C"), said.toString());
        assertTrue(
                said.contains(
                        "The cable \"board to loft\" is taken to run on its own (cables that carry at most 30 % of their grouped rating do not count)"),
                said.toString());
        assertFalse(said.toString().contains("drop to the shower"), said.toString());
    }

    private static double result(Answer answer, String key) {
        return PublishedCasesTest.result(answer, key).si();
    }

    /** H2 of the published cases, in full: 11.5 V / (7.3 mV/A/m x 50 m) = 31.507 A, 7.562 kW at 240 V; 47 A by table 4D5 (memory). */
    @Test
    void theHighestPowerComesWithItsCurrentCapacityAndDrop() {
        Answer byDrop =
                PublishedCasesTest.answer("highest-power", "rating=45A size=6mm2 method=C length=50m rated=240V");
        assertEquals(31.507, result(byDrop, "current"), 0.001);
        assertEquals(47, result(byDrop, "capacity"), 1e-9);
        assertEquals(11.5, result(byDrop, "drop"), 1e-9);
        assertEquals(List.of("boundByDrop"), byDrop.warnings());
        Answer byDevice =
                PublishedCasesTest.answer("highest-power", "rating=40A size=10mm2 method=C length=15m rated=240V");
        assertEquals(40, result(byDevice, "current"), 1e-9);
        assertEquals(4.4e-3 * 15 * 40, result(byDevice, "drop"), 1e-9);
        assertEquals(List.of("boundByDevice"), byDevice.warnings());
    }

    /** 11.5 V / (4.4 mV/A/m x 40 A) = 65.3 m by drop; (1.0925 - 0.2) ohm / (1.2 x 6.44 mohm/m) = 115.5 m by the loop. */
    @Test
    void bothRunsAreGivenWhereBothAreAsked() {
        Answer both = PublishedCasesTest.answer("max-run", "size=10mm2 current=40A rating=40A ze=0.2ohm");
        assertEquals(65.34, result(both, "longestRun"), 0.01);
        assertEquals(65.34, result(both, "runByDrop"), 0.01);
        assertEquals(115.49, result(both, "runByLoop"), 0.01);
        assertEquals(
                List.of("longestRun", "runByLoop"),
                PublishedCasesTest.answer("max-run", "size=10mm2 rating=40A ze=0.2ohm").results().stream()
                        .map(Answer.Result::key)
                        .toList());
        assertEquals(
                List.of("longestRun", "runByDrop"),
                PublishedCasesTest.answer("max-run", "size=10mm2 current=40A").results().stream()
                        .map(Answer.Result::key)
                        .toList());
    }

    /** A factor that was typed has no table behind it. */
    @Test
    void onlyFactorsFromATableNameIt() {
        Map<String, String> sources =
                PublishedCasesTest.answer("capacity", "size=10mm2 method=C ca=0.9").working().steps().stream()
                        .collect(Collectors.toMap(Step::symbol, Step::source));
        assertEquals("", sources.get("Ca"));
        assertTrue(String.valueOf(sources.get("Cg")).contains("4C1"), sources.toString());
        assertTrue(String.valueOf(sources.get("Ci")).contains("52.2"), sources.toString());
    }

    /** Somebody who reports what the circuit hands on, in checks of his own. */
    private static final class Reporter implements Calculator {
        private static final Check CURRENT = Check.report("reporter.current", Kind.CURRENT);
        private static final Check VOLTAGE = Check.report("reporter.voltage", Kind.VOLTAGE);

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Reporter.class)
                    .consumes(SharedQuantity.DESIGN_CURRENT, SharedQuantity.TERMINAL_VOLTAGE)
                    .checks(List.of(CURRENT, VOLTAGE))
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                if (!findings.blocked(CURRENT, shared, SharedQuantity.DESIGN_CURRENT)) {
                    findings.on(CURRENT)
                            .report(shared.get(SharedQuantity.DESIGN_CURRENT)[0])
                            .add();
                }
                if (!findings.blocked(VOLTAGE, shared, SharedQuantity.TERMINAL_VOLTAGE)) {
                    findings.on(VOLTAGE)
                            .report(shared.get(SharedQuantity.TERMINAL_VOLTAGE)[0])
                            .add();
                }
            };
        }
    }

    /** Where only the check of somebody else is asked, the circuit still hands on what that takes. */
    @Test
    void whatOthersTakeIsHandedOnWhateverIsAsked() {
        Runner runner =
                new Runner(List.of(new CircuitCalculator(), new Reporter()), (mean, spread, day, southern) -> mean);
        Candidate candidate = new Candidate(heater, false);
        for (String key : List.of("reporter.current", "reporter.voltage")) {
            Finding all = runner.judge(survey, candidate).finding(key).orElseThrow();
            Finding alone = runner
                    .rejudging(survey, survey, candidate, grid -> grid, new Readings(survey), Set.of(key), null)
                    .all()
                    .stream()
                    .filter(each -> each.check().key().equals(key))
                    .findFirst()
                    .orElseThrow();
            assertEquals(Outcome.PASSES, alone.outcome(), key);
            assertEquals(Fixtures.value(all), Fixtures.value(alone), 1e-12, key);
        }
    }

    /** BS 7671 411.5.3 (memory): 300 ohm and 30 mA are 9 V. */
    @Test
    void anElectrodesTouchVoltageIsItsResistanceTimesTheResidualCurrent() {
        Answer answer = PublishedCasesTest.answer("electrode", "residual=30mA resistance=300ohm");
        assertEquals(9, result(answer, "touchVoltage"), 1e-12);
        assertEquals(50 / 0.03, result(answer, "electrodeLimit"), 1e-9);
        assertEquals(List.of("electrodeUnsteady"), answer.warnings());
    }
}
