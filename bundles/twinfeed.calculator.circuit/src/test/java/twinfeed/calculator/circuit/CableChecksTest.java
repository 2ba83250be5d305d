// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.Fixtures.limit;
import static twinfeed.calculator.Fixtures.value;
import static twinfeed.calculator.circuit.Surveys.finding;
import static twinfeed.calculator.circuit.Surveys.sentence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.Finding;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.Series;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.circuit.formula.MaximumFormulas;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** Currents, capacity, drop and what arrives; expected values by hand from the tables, sources beside them. */
class CableChecksTest {
    private final Survey survey = Surveys.suitable();
    private final Circuit circuit = survey.getElectricity().getCircuit();
    private final Heater heater = Surveys.heater("9.5 kW", "240 V");

    private CableSegment first() {
        return circuit.getSegments().get(0);
    }

    private void device(String kind, String rating) {
        circuit.getDevice().setKind(kind);
        circuit.getDevice().setRating(Current.valueOf(rating));
    }

    @Test
    void theHouseSuits() {
        assertEquals(
                Verdict.SUITS, Surveys.assess(survey, heater).options().get(0).verdict());
    }

    @Test
    void thePresentUnitIsJudgedByTheSameChecks() {
        List<Finding> present = Surveys.RUNNER
                .assess(survey, List.of(new Candidate(heater, true)))
                .options()
                .get(0)
                .findings();
        assertEquals(
                Surveys.findings(survey, heater).stream()
                        .map(each -> each.check().key() + each.outcome() + each.printed())
                        .toList(),
                present.stream()
                        .map(each -> each.check().key() + each.outcome() + each.printed())
                        .toList());
    }

    /** 9500 W / 240 V; dividing by 230 V (41.3 A) would mix two voltages. */
    @Test
    void designCurrentIsAtTheRatedVoltage() {
        Finding current = finding(survey, heater, "circuit.designCurrent");
        assertEquals(39.583, value(current), 0.001);
        assertEquals(40, limit(current));
        assertTrue(sentence(current).contains("37.9 A at 230 V"), sentence(current));
        assertTrue(current.source().contains("BS 7671"), current.source());
    }

    /** Closed form: 10.5 kW at 240 V draws 46.1 A at 253 V; a caution only. */
    @Test
    void theCurrentAtTheHighestVoltageIsAdvice() {
        device("breaker-b", "45 A");
        Finding current = finding(survey, Surveys.heater("10.5 kW", "240 V"), "circuit.highVoltageCurrent");
        assertEquals(46.12, value(current), 0.01);
        assertEquals(Outcome.FAILS, current.outcome());
        assertFalse(current.rulesOut());
    }

    /** BS 7671 table 4D5 (memory): 10 mm² with method 101 carries 36 A, however short the piece is. */
    @Test
    void theWorstPieceGovernsAndIsNamed() {
        circuit.getSegments().add(1, Surveys.segment("under the loft insulation", "10 mm2", "2 m", "101"));
        Finding capacity = finding(survey, heater, "circuit.capacity");
        assertEquals(36, value(capacity), 1e-9);
        assertEquals(Outcome.FAILS, capacity.outcome());
        assertEquals("under the loft insulation", capacity.condition().subject());
        assertTrue(sentence(capacity).contains("under the loft insulation"));
    }

    /** The factors of tables 4B1, 4C1 and 52.2 (memory): 64 A times each. */
    @ParameterizedTest
    @CsvSource({"40 °C, 1, 0 m, 55.68", "30 °C, 2, 0 m, 51.2", "30 °C, 1, 400 mm, 32.64", "40 °C, 2, 400 mm, 22.717"})
    void factorsOnTheCapacity(String ambient, int grouped, String insulated, double expectedA) {
        first().setAmbient(Temperature.valueOf(ambient));
        first().setGrouped(grouped);
        first().setInsulated(Length.valueOf(insulated));
        assertEquals(expectedA, value(finding(survey, heater, "circuit.capacity")), 0.001);
    }

    /** Nobody knows how warm the place is in summer: a factor above 1 (1.03 at 25 degC in table 4B1, memory) is not taken, nor in the drop. */
    @Test
    void aCoolPlaceDoesNotCountInFavour() {
        first().setAmbient(Temperature.valueOf("25 °C"));
        assertEquals(64, value(finding(survey, heater, "circuit.capacity")), 1e-9);
        List<Double> used = Surveys.findings(survey, heater).stream()
                .flatMap(finding -> finding.working().steps().stream())
                .filter(step -> step.meaning().equals("ambientFactorCapped"))
                .map(Step::value)
                .distinct()
                .toList();
        assertEquals(List.of(1.0), used);
    }

    /** Neither neighbours nor insulation: clipping it anew would change nothing. */
    @Test
    void apartAlreadyIsNotToBeClippedApart() {
        first().setSize(Area.valueOf("2.5 mm2"));
        Finding capacity = finding(survey, heater, "circuit.capacity");
        assertEquals(Outcome.FAILS, capacity.outcome());
        assertFalse(capacity.remedies().stream().anyMatch(work -> work.id().equals("clip-cable")));
        first().setGrouped(2);
        assertTrue(finding(survey, heater, "circuit.capacity").remedies().stream()
                .anyMatch(work -> work.id().equals("clip-cable")));
    }

    /** A method that contains the insulation takes no factor for it again (notes of table 4D5; memory). */
    @Test
    void insulationIsNotCountedTwice() {
        first().setMethod("100");
        first().setInsulated(Length.valueOf("3 m"));
        assertEquals(45, value(finding(survey, heater, "circuit.capacity")), 1e-9);
    }

    /** 30 degC, with 40 degC said beside it; 64 A x 0.87 of table 4B1 (40 degC read). */
    @Test
    void aHotLoftIsAdviceWhereACableLiesFree() {
        first().setLoft(true);
        assertEquals(64, value(finding(survey, heater, "circuit.capacity")), 1e-9);
        Finding hot = finding(survey, heater, "circuit.loftAmbient");
        assertEquals(64 * 0.87, value(hot), 1e-9);
        assertEquals("", hot.variant());
        first().setSize(Area.valueOf("6 mm2"));
        device("breaker-b", "45 A");
        hot = finding(survey, heater, "circuit.loftAmbient");
        assertEquals("short", hot.variant());
        assertEquals(Outcome.PASSES, hot.outcome(), "said, never a failure");
        first().setAmbient(Temperature.valueOf("25 °C"));
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, heater, "circuit.loftAmbient").outcome());
    }

    /** Of two pieces in the loft the one that carries less is named, wherever it lies: 47 A x 0.87 = 40.9 A (table 4B1; memory). */
    @Test
    void theHotPieceThatCarriesLeastIsNamed() {
        circuit.getSegments().forEach(segment -> segment.setLoft(true));
        for (CableSegment thin : circuit.getSegments()) {
            circuit.getSegments().forEach(segment -> segment.setSize(Area.valueOf("10 mm2")));
            thin.setSize(Area.valueOf("6 mm2"));
            Finding hot = finding(survey, heater, "circuit.loftAmbient");
            assertEquals(47 * 0.87, value(hot), 1e-9);
            assertEquals(thin.getName(), hot.condition().subject());
        }
    }

    /** Under the insulation the ceiling below sets the temperature: 30 degC, and formula and survey agree. */
    @ParameterizedTest
    @CsvSource({"100, 40 A", "101, 32 A", "102, 40 A", "103, 32 A"})
    void underTheInsulationItIsThirtyDegrees(String method, String rating) {
        first().setMethod(method);
        first().setLoft(true);
        circuit.getSegments().remove(1);
        device("breaker-b", rating);
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, heater, "circuit.loftAmbient").outcome());
        double byFormula = FormulaCall.answer(
                        MaximumFormulas.POWER,
                        "rating=" + rating.replace(" ", "") + " size=10mm2 rated=240V length=4m method=" + method,
                        " ")
                .results()
                .get(0)
                .si();
        assertEquals(byFormula / 1000, value(finding(survey, heater, "circuit.highestPower")), 1e-9);
    }

    /** BS 7671:2018 433.1.202 (memory): 0.725 on the cable, 47 A x 0.725 = 34.1 A. */
    @Test
    void aRewirableFuseTakesItsFactor() {
        device("fuse-3036", "30 A");
        circuit.getSegments().forEach(segment -> segment.setSize(Area.valueOf("6 mm2")));
        Finding capacity = finding(survey, Surveys.heater("7.2 kW", "240 V"), "circuit.capacity");
        assertEquals(34.075, value(capacity), 1e-3);
        assertEquals("rewirable", capacity.variant());
    }

    /** Ib <= Iz < In stays a failure; the designer's decision is a text, never a pass. */
    @Test
    void theDesignersDecisionIsOnlyMentioned() {
        device("breaker-b", "50 A");
        circuit.getSegments().forEach(segment -> segment.setSize(Area.valueOf("6 mm2")));
        Finding capacity = finding(survey, heater, "circuit.capacity");
        assertEquals(Outcome.FAILS, capacity.outcome());
        assertEquals("recordedDecision", capacity.variant());
        assertTrue(sentence(capacity).contains("recorded decision"));
    }

    @ParameterizedTest
    @CsvSource({"7 mm2, C, 7 mm²", "10 mm2, X9, X9"})
    void whatIsInNoTableIsNamed(String size, String method, String named) {
        first().setSize(Area.valueOf(size));
        first().setMethod(method);
        Finding capacity = finding(survey, heater, "circuit.capacity");
        assertEquals(Outcome.CANNOT_TELL, capacity.outcome());
        assertTrue(sentence(capacity).contains(named), sentence(capacity));
    }

    @Test
    void ambientBeyondTheTableIsNotGuessed() {
        first().setAmbient(Temperature.valueOf("75 °C"));
        assertEquals(
                Outcome.CANNOT_TELL, finding(survey, heater, "circuit.capacity").outcome());
    }

    /** A hidden piece of method C may lie in an insulated wall: 47 A by table 4D5 instead of 64 A. */
    @Test
    void hiddenPiecesAreJudgedInTheWorstPlausibleWay() {
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, heater, "circuit.hiddenMethod").outcome());
        first().setConfidence(Confidence.CONCEALED);
        Finding hidden = finding(survey, heater, "circuit.hiddenMethod");
        assertEquals(47, value(hidden), 1e-9);
        assertEquals(Outcome.PASSES, hidden.outcome());
    }

    /** 4.4 mV/A/m x 10.5 m x 39.583 A = 1.829 V; limit 5 % of 230 V. */
    @Test
    void voltageDrop() {
        Finding drop = finding(survey, heater, "circuit.voltageDrop");
        assertEquals(1.8288, value(drop), 1e-4);
        assertEquals(11.5, limit(drop), 1e-9);
    }

    /** 238 V less 4.4 mV/A/m x 39.583 A for each metre: 0.17417 V/m; the last point is the origin less the drop that is judged. */
    @Test
    void voltageAlongTheCable() {
        Finding drop = finding(survey, heater, "circuit.voltageDrop");
        Series along = drop.series().get(0);
        assertEquals(FeedProfile.VOLTAGE, along.key());
        assertEquals(circuit.getSegments().size() + 1, along.y().length);
        assertEquals(FeedProfile.START, along.labels().get(0));
        assertEquals(first().getName(), along.labels().get(1));
        assertEquals(238, along.y()[0], 1e-9);
        double soFarM = 0;
        for (int i = 0; i < circuit.getSegments().size(); i++) {
            soFarM += circuit.getSegments().get(i).getLength().si();
            assertEquals(soFarM, along.x()[i + 1], 1e-9);
            assertEquals(238 - 0.17417 * soFarM, along.y()[i + 1], 1e-3);
        }
        assertEquals(238 - value(drop), along.y()[along.y().length - 1], 1e-9);
    }

    /** BS 7671:2018 table 4D5, 7.3 mV/A/m (memory): 40 m of 6 mm² at 45 A drop 13.14 V, over 5 % of 230 V. */
    @Test
    void publishedDropThatFails() {
        circuit.getSegments().clear();
        circuit.getSegments().add(Surveys.segment("run", "6 mm2", "40 m", "C"));
        Finding drop = finding(survey, Surveys.heater("10.8 kW", "240 V"), "circuit.voltageDrop");
        assertEquals(13.14, value(drop), 0.01);
        assertEquals(Outcome.FAILS, drop.outcome());
    }

    /** Fully insulated, so Ct = 1 and the answer is plain: U = 238 x 6.0632 / (6.0632 + 0.0462), P = U^2 / R. */
    @Test
    void deliveredPowerWithFullConductorTemperature() {
        circuit.getSegments().forEach(segment -> segment.setInsulated(Length.valueOf("1 m")));
        assertEquals(236.200, value(finding(survey, heater, "circuit.terminalVoltage")), 0.001);
        assertEquals(9.2016, value(finding(survey, heater, "circuit.deliveredPower")), 0.0001);
    }

    /** A cooler conductor drops less: more arrives than with full temperature, less than without a cable. */
    @Test
    void deliveredPowerFollowsTheConductorsTemperature() {
        double power = value(finding(survey, heater, "circuit.deliveredPower"));
        assertTrue(power > 9.2016, "cooler than full temperature: " + power);
        assertTrue(power < 9.5 * 238 * 238 / 240 / 240, "less than without a cable: " + power);
    }

    @Test
    void thePowerIsGivenForEveryVoltage() {
        Taker taker = new Taker();
        new Runner(List.of(new CircuitCalculator(), taker), (mean, spread, day, southern) -> mean)
                .assess(survey, List.of(new Candidate(heater, false)));
        assertEquals(5, taker.power.size(), "four of the rule set and the one measured");
        for (int at = 1; at < taker.power.size(); at++) {
            assertTrue(taker.power.get(at) > taker.power.get(at - 1));
        }
    }

    @Test
    void withoutAKnownCableNothingIsGivenAndTheReasonIsHandedOn() {
        circuit.getSegments().clear();
        Taker taker = new Taker();
        new Runner(List.of(new CircuitCalculator(), taker), (mean, spread, day, southern) -> mean)
                .assess(survey, List.of(new Candidate(heater, false)));
        assertTrue(taker.power.isEmpty());
        assertEquals(List.of("survey.electricity.circuit.segments"), taker.lacking);
        assertEquals(
                Outcome.CANNOT_TELL,
                finding(survey, heater, "circuit.deliveredPower").outcome());
    }

    @Test
    void whatIsLackingIsNamedPieceByPiece() {
        first().setLength(null);
        circuit.getSegments().get(1).setMethod(null);
        assertEquals(
                List.of(
                        "survey.electricity.circuit.segments[board to loft].length",
                        "survey.electricity.circuit.segments[drop to the shower].method"),
                finding(survey, heater, "circuit.deliveredPower").missing());
    }

    /** L1n: 11.5 V / (4.4 mV/A/m x 45 A) = 58.1 m, closed form. */
    @Test
    void longestRun() {
        assertEquals(58.1, value(finding(survey, Surveys.heater("10.8 kW", "240 V"), "circuit.longestRun")), 0.05);
    }

    @Test
    void highestPowerIsTheDevices() {
        assertEquals(9.6, value(finding(survey, heater, "circuit.highestPower")), 1e-9);
        first().setLength(Length.valueOf("90 m"));
        Finding byDrop = finding(survey, heater, "circuit.highestPower");
        assertEquals("byDrop", byDrop.variant());
        assertEquals(240 * 11.5 / (4.4e-3 * 96.5) / 1000, value(byDrop), 1e-9);
    }

    @Test
    void otherRuleSetsJudgeByTheirOwnTables() {
        survey.setRules("iec60364-5-52");
        assertEquals(63, value(finding(survey, heater, "circuit.capacity")), 1e-9);
        first().setMethod("A2");
        assertEquals(43, value(finding(survey, heater, "circuit.capacity")), 1e-9);
    }

    @Test
    void everyMissingReadingHasWords() {
        FindingText words = new FindingText(Surveys.RUNNER, Locale.ENGLISH);
        Survey empty = SurveyFactory.eINSTANCE.createSurvey();
        Survey bare = Surveys.suitable();
        bare.getElectricity().getCircuit().getSegments().set(0, SurveyFactory.eINSTANCE.createCableSegment());
        bare.getElectricity().getCircuit().setRcd(SurveyFactory.eINSTANCE.createResidualDevice());
        for (Survey each : List.of(empty, bare)) {
            for (Finding finding : Surveys.findings(each, heater)) {
                finding.missing()
                        .forEach(path -> assertFalse(words.reading(path).startsWith("survey."), path));
            }
        }
    }

    @Test
    void zeroIsNotAbsent() {
        first().setLength(Length.valueOf("0 m"));
        circuit.getSegments().get(1).setLength(Length.valueOf("0 m"));
        assertEquals(0, value(finding(survey, heater, "circuit.voltageDrop")));
        assertEquals(238, value(finding(survey, heater, "circuit.terminalVoltage")), 1e-9);
    }

    @Test
    void aRatingOfZeroIsNoRating() {
        heater.setVoltage(Voltage.valueOf("0 V"));
        circuit.getDevice().setRating(Current.valueOf("0 A"));
        circuit.setMeasuredLoop(Resistance.valueOf("0 ohm"));
        for (Finding each : Surveys.findings(survey, heater)) {
            assertFalse(each.check().equals(Runner.BROKEN), () -> String.valueOf(each.arguments()));
        }
        assertEquals(
                Outcome.CANNOT_TELL,
                finding(survey, heater, "circuit.designCurrent").outcome());
        heater.setVoltage(Voltage.valueOf("240 V"));
        assertEquals(
                List.of("survey.electricity.circuit.device.rating"),
                finding(survey, heater, "circuit.isolatorRating").missing());
    }

    /** Takes what the circuit gives. */
    private static final class Taker implements Calculator {
        private final List<Double> power = new ArrayList<>();
        private List<String> lacking = List.of();

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Taker.class)
                    .consumes(SharedQuantity.DELIVERED_POWER)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                lacking = shared.missing(SharedQuantity.DELIVERED_POWER);
                if (shared.has(SharedQuantity.DELIVERED_POWER)) {
                    for (double watt : shared.get(SharedQuantity.DELIVERED_POWER)) {
                        power.add(watt);
                    }
                }
            };
        }
    }
}
