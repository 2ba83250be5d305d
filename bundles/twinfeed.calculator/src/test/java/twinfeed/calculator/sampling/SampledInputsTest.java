// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Length;
import twinfeed.units.Ratio;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;

/** What is uncertain in a house, and how far: stated tolerances, usual ones of instruments.csv, methods that nobody saw, usual figures. */
class SampledInputsTest {
    private final Survey survey = SampleHouse.fed("240 V");

    private List<SampledInput> inputs() {
        return SampledInputs.of(survey, survey, RuleSets.standard()).list();
    }

    private SampledInput input(String path) {
        return inputs().stream()
                .filter(each -> each.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError(path + " is not among " + paths()));
    }

    private List<String> paths() {
        return inputs().stream().map(SampledInput::path).toList();
    }

    private static CalculatorDescriptor reading(String id, String... paths) {
        return CalculatorDescriptor.of(Calculator.class).id(id).reads(paths).build();
    }

    @Test
    void aStatedToleranceCountsAndOtherwiseThatOfTheUsualInstrument() {
        survey.getWater().setTest(SampleHouse.waterTest("3 bar ± 0 bar", "2 bar", "10 L/min ± 1 L/min"));
        survey.getElectricity().setExternalLoop(Resistance.valueOf("0.5 ohm u 0.02 ohm"));
        survey.setTargetOutlet(Temperature.valueOf("40 °C"));
        assertEquals(
                List.of(
                        "survey.water.test.flow",
                        "survey.water.test.runningPressure",
                        "survey.electricity.supplyVoltage",
                        "survey.electricity.externalLoop"),
                paths().stream()
                        .sorted((one, other) -> order(one) - order(other))
                        .toList());

        SampledInput flow = input("survey.water.test.flow");
        flow.place(1);
        assertEquals(11 / 60_000.0, survey.getWater().getTest().getFlow().si(), 1e-12);
        flow.place(-0.5);
        assertEquals(9.5 / 60_000.0, survey.getWater().getTest().getFlow().si(), 1e-12);
        flow.place(0);
        assertEquals(Spread.RECTANGULAR, flow.spread());
        assertEquals(-1, flow.gauge());

        SampledInput pressure = input("survey.water.test.runningPressure");
        pressure.place(1);
        assertEquals(2.1e5, survey.getWater().getTest().getRunningPressure().si(), 1e-6, "0.1 bar of the gauge");
        assertEquals(0, pressure.gauge());

        SampledInput voltage = input("survey.electricity.supplyVoltage");
        voltage.place(-1);
        assertEquals(237.5, survey.getElectricity().getSupplyVoltage().si(), 1e-12);

        SampledInput loop = input("survey.electricity.externalLoop");
        assertEquals(Spread.NORMAL, loop.spread());
        loop.place(2);
        assertEquals(0.54, survey.getElectricity().getExternalLoop().si(), 1e-12);
        loop.place(-30);
        assertEquals(0, survey.getElectricity().getExternalLoop().si(), "no resistance is negative");

        assertTrue(flow.isReadBy(reading("made-up", "survey.water")));
        assertFalse(flow.isReadBy(reading("made-up", "survey.electricity")));
    }

    private static int order(String path) {
        return List.of(
                        "survey.water.test.flow",
                        "survey.water.test.runningPressure",
                        "survey.electricity.supplyVoltage",
                        "survey.electricity.externalLoop")
                .indexOf(path);
    }

    @Test
    void readingsOfOneGaugeShareItsBias() {
        survey.getWater().setTest(SampleHouse.waterTest("3 bar", "2 bar", "10 L/min ± 0 L/min"));
        SampledInputs found = SampledInputs.of(survey, survey, RuleSets.standard());
        DrawnInputs drawn = found.drawn();
        assertEquals(3, drawn.spreads().size());
        assertEquals(1, drawn.count());
        assertEquals(2, drawn.instruments().stream().filter(gauge -> gauge == 0).count());
        double[] positions = new double[3];
        positions[drawn.instruments().indexOf(0)] = 1;
        found.place(positions);
        assertEquals(
                5.1e5,
                survey.getWater().getTest().getStaticPressure().si()
                        + survey.getWater().getTest().getRunningPressure().si(),
                1e-6);
    }

    /** A rise may be downwards, a length may not. */
    @Test
    void pipesAreOffByATenthOfTheirLengthAndTwentyCentimetresOfTheirRise() {
        PipeSegment pipe = SampleHouse.pipe("loft", PipeMaterial.COPPER, "13.6 mm", "4 m", "0.1 m");
        survey.getWater().getSegments().add(pipe);
        input("survey.water.segments[loft].length").place(1);
        assertEquals(4.4, pipe.getLength().si(), 1e-12);
        pipe.setRise(Length.valueOf("-0.1 m"));
        input("survey.water.segments[loft].rise").place(-1);
        assertEquals(-0.3, pipe.getRise().si(), 1e-12);
    }

    @Test
    void whatIsLevelMayRiseOrFall() {
        PipeSegment pipe = SampleHouse.pipe("loft", PipeMaterial.COPPER, "13.6 mm", "4 m", "0 m");
        survey.getWater().getSegments().add(pipe);
        input("survey.water.segments[loft].rise").place(-1);
        assertEquals(-0.2, pipe.getRise().si(), 1e-12);
    }

    @Test
    void aMethodThatNobodySawMayBeAnother() {
        survey.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        for (Confidence confidence : Confidence.values()) {
            survey.getElectricity()
                    .getCircuit()
                    .getSegments()
                    .add(SampleHouse.cable(confidence.getLiteral(), "10 mm2", "5 m", "102", confidence));
        }
        CableSegment unstated = SurveyFactory.eINSTANCE.createCableSegment();
        unstated.setMethod("C");
        survey.getElectricity().getCircuit().getSegments().add(unstated);
        CableSegment unknown = SurveyFactory.eINSTANCE.createCableSegment();
        unknown.setName("unknown");
        survey.getElectricity().getCircuit().getSegments().add(unknown);
        assertEquals(
                List.of("segments[assumed].method", "segments[concealed].method", "segments[4].method"),
                paths().stream()
                        .filter(path -> path.endsWith(".method"))
                        .map(path -> path.replace("survey.electricity.circuit.", ""))
                        .toList());
        SampledInput method = input("survey.electricity.circuit.segments[assumed].method");
        assertEquals(Spread.among(2), method.spread(), "102 or 103");
        assertEquals(-1, method.gauge());
        CableSegment assumed =
                survey.getElectricity().getCircuit().getSegments().get(Confidence.ASSUMED.getValue());
        method.place(1);
        assertEquals("103", assumed.getMethod());
        method.place(0);
        assertEquals("102", assumed.getMethod());
        assertTrue(method.isReadBy(reading("made-up", "survey.electricity.circuit")));
        assertFalse(method.isReadBy(reading("made-up", "survey.water")));
    }

    @Test
    void aReadingThatStandsInBothHousesIsDrawnAlikeInBoth() {
        survey.getWater().getSegments().add(SampleHouse.pipe("run", PipeMaterial.COPPER, "13.6 mm", "4 m", "0 m"));
        survey.getWater().getSegments().add(SampleHouse.pipe("run", PipeMaterial.COPPER, "13.6 mm", "6 m", "0 m"));
        survey.getWater().getSegments().add(SampleHouse.pipe("run", PipeMaterial.COPPER, "13.6 mm", "8 m", "0 m"));
        survey.getWater().setLowestHandset(Length.valueOf("1 m"));
        Survey changed = EcoreUtil.copy(survey);
        changed.getWater().setLowestHandset(null);
        changed.getWater().getSegments().add(SampleHouse.pipe("new", PipeMaterial.COPPER, "13.6 mm", "2 m", "0 m"));
        SampledInputs both = SampledInputs.of(survey, changed, RuleSets.standard());
        List<String> lengths = both.list().stream()
                .map(SampledInput::path)
                .filter(path -> path.endsWith(".length"))
                .toList();
        assertEquals(
                List.of(
                        "survey.water.segments[run].length",
                        "survey.water.segments[run].length",
                        "survey.water.segments[run].length",
                        "survey.water.segments[new].length"),
                lengths);
        for (SampledInput input : both.list()) {
            input.place(1);
        }
        for (Survey house : List.of(survey, changed)) {
            assertEquals(4.4, house.getWater().getSegments().get(0).getLength().si(), 1e-12);
            assertEquals(6.6, house.getWater().getSegments().get(1).getLength().si(), 1e-12);
            assertEquals(8.8, house.getWater().getSegments().get(2).getLength().si(), 1e-12);
        }
        assertEquals(2.2, changed.getWater().getSegments().get(3).getLength().si(), 1e-12);
        assertEquals(1.05, survey.getWater().getLowestHandset().si(), 1e-12, "only before the works");
        SampledInput run = both.list().stream()
                .filter(each -> each.path().equals("survey.water.segments[run].length"))
                .findFirst()
                .orElseThrow();
        assertEquals(Spread.RECTANGULAR, run.spread());
        assertEquals(-1, run.gauge());
        assertTrue(run.isReadBy(reading("made-up", "survey.water")));
        assertFalse(run.isReadBy(reading("made-up", "survey.unit")));
    }

    @Test
    void aMethodThatIsMistakenForNoOtherIsCertain() {
        survey.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        CableSegment cable = SurveyFactory.eINSTANCE.createCableSegment();
        cable.setMethod("A2");
        survey.getElectricity().getCircuit().getSegments().add(cable);
        assertEquals(
                List.of("survey.electricity.supplyVoltage", "heater.realPower"),
                SampledInputs.of(survey, survey, RuleSets.find("iec60364-5-52").orElseThrow()).list().stream()
                        .map(SampledInput::path)
                        .toList());
    }

    /** The power on a rating plate has a tolerance of its own, which a calculator knows. */
    @Test
    void ratingsOfTheUnitAreNoReadings() {
        survey.setUnit(SurveyFactory.eINSTANCE.createPresentUnit());
        survey.getUnit().setHeater(SampleHouse.heater("9.5 kW ± 0.5 kW", "240 V ± 10 V"));
        assertEquals(List.of("survey.electricity.supplyVoltage"), paths());
    }

    private List<String> figures() {
        return paths().stream()
                .filter(path -> path.startsWith("tables.") || path.startsWith("heater."))
                .toList();
    }

    @Test
    void figuresOfTablesTakePartWhereTheyStandInForReadings() {
        assertEquals(List.of(), figures());
        survey.setWater(null);
        assertEquals(List.of(), figures());
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        PipeSegment pipe = SampleHouse.pipe("loft", PipeMaterial.COPPER, "13.6 mm", "4 m", "0 m", "elbow");
        survey.getWater().getSegments().add(pipe);
        assertEquals(List.of("tables.fittings", "tables.roughness"), figures());
        forget();
        pipe.getFittings().get(0).setK(Ratio.valueOf("0.9"));
        pipe.setRoughness(Length.valueOf("0.0015 mm"));
        assertEquals(List.of(), figures());
        pipe.setBore(null);
        assertEquals(List.of("tables.bores"), figures());
    }

    private void forget() {
        survey.getParameters().clear();
    }

    @Test
    void aFigureIsAParameterOfACalculatorUnlessTheSurveySetsIt() {
        survey.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        PipeSegment pipe = SampleHouse.pipe("loft", PipeMaterial.COPPER, "4 m");
        survey.getWater().getSegments().add(pipe);
        parameter("pressure", "table-roughness", "1.2");
        parameter("circuit", "table-bores", "1");
        List<SampledInput> figures = inputs().stream()
                .filter(each -> each instanceof SampledParameter)
                .toList();
        assertEquals(
                List.of("heater.realPower", "tables.bores"),
                figures.stream().map(SampledInput::path).toList());
        ParameterValue power = survey.getParameters().get(2);
        ParameterValue bores = survey.getParameters().get(3);
        assertEquals("circuit powerDeviation 0.0", said(power), "as it usually is");
        assertEquals("pressure table-bores 1.0", said(bores));
        figures.get(0).place(-0.5);
        assertEquals("circuit powerDeviation -0.5", said(power));
        figures.get(1).place(1);
        assertEquals("pressure table-bores 1.03", said(bores));
        assertEquals(-1, figures.get(1).gauge());
        assertEquals(Spread.RECTANGULAR, figures.get(1).spread());
        assertTrue(figures.get(1).isReadBy(reading("pressure", "survey.unit")));
        assertFalse(figures.get(1).isReadBy(reading("circuit")));
    }

    private void parameter(String calculator, String key, String value) {
        ParameterValue parameter = SurveyFactory.eINSTANCE.createParameterValue();
        parameter.setCalculator(calculator);
        parameter.setKey(key);
        parameter.setValue(value);
        survey.getParameters().add(parameter);
    }

    private static String said(ParameterValue value) {
        return value.getCalculator() + " " + value.getKey() + " " + value.getValue();
    }
}
