// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
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
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.Series;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.engineering.water.Heat;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Flow;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

class FlowCalculatorTest {
    /** A circuit of one resistance; less than 0 for one that nobody looked at. */
    private record Cable(double ohm) implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Cable.class)
                    .provides(SharedQuantity.DELIVERED_POWER)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                if (ohm < 0) {
                    shared.markMissing(SharedQuantity.DELIVERED_POWER, List.of("survey.electricity.circuit.segments"));
                    return;
                }
                double heaterOhm = Heat.elementResistance(
                        candidate.heater().getPower().si(),
                        candidate.heater().getVoltage().si());
                double[] powers = context.grid().voltages();
                for (int i = 0; i < powers.length; i++) {
                    powers[i] = Heat.powerOfResistance(heaterOhm, powers[i] * heaterOhm / (heaterOhm + ohm));
                }
                shared.put(SharedQuantity.DELIVERED_POWER, powers);
            };
        }
    }

    private static Runner runner(double cableOhm) {
        return new Runner(List.of(new FlowCalculator(), new Cable(cableOhm)), (mean, spread, day, southern) -> mean);
    }

    private static Finding finding(Survey survey, Heater heater, double cableOhm, String check) {
        return assessed(survey, heater, cableOhm)
                .options()
                .get(0)
                .finding(check)
                .orElseThrow();
    }

    private static AssessmentResult assessed(Survey survey, Heater heater, double cableOhm) {
        return runner(cableOhm).assess(survey, List.of(new Candidate(heater, false)));
    }

    /** 9.5 kW at 240 V on 230 V is 8.725 kW: 3.573 kg/min from 5 to 40 degC (IAPWS-IF97 enthalpies, closed form). */
    @Test
    void winterFlowIsThatOfThePowerAtTheSurveysVoltage() {
        Survey survey = Samples.survey();
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("230 V"));
        Finding winter = finding(survey, Samples.heater(), 0, "flow.winter");
        assertEquals(3.573 / 0.9922674, Fixtures.value(winter), 0.005); // density at 40 degC: IAPWS-IF97
        assertEquals(3.573 / 1.0000154, ((Number) winter.arguments().get("inletFlow")).doubleValue(), 0.005);
        assertEquals(Outcome.PASSES, winter.outcome());
    }

    @Test
    void aWeakHeaterIsATrickleInWinter() {
        Finding winter = finding(Samples.survey(), SampleHouse.heater("7.0 kW", "240 V"), 0.1, "flow.winter");
        assertEquals(Outcome.FAILS, winter.outcome());
        assertFalse(winter.rulesOut(), "a trickle is no comfort, but no danger");
    }

    @Test
    void theFlowThatBringsTheHeatOnRulesOut() {
        Heater heater = SampleHouse.heater("7.0 kW", "240 V");
        heater.setActivationFlow(Flow.valueOf("3 L/min"));
        Finding activation = finding(Samples.survey(), heater, 0, "flow.activation");
        assertEquals(Outcome.FAILS, activation.outcome());
        assertTrue(activation.rulesOut());
    }

    @Test
    void theSurveysWinterIntakeCounts() {
        Survey survey = Samples.survey();
        double usual = Fixtures.value(finding(survey, Samples.heater(), 0, "flow.winter"));
        survey.setWinterIntake(Temperature.valueOf("2 °C"));
        double colder = Fixtures.value(finding(survey, Samples.heater(), 0, "flow.winter"));
        assertEquals(usual * (40 - 5) / (40 - 2), colder, 0.01);
    }

    /** The values of a curve in L/min. */
    private static double[] shown(Series curve) {
        return Arrays.stream(curve.y()).map(curve.yAxis().unit()::fromSi).toArray();
    }

    @Test
    void monthsFollowTheIntake() {
        Finding byMonth = finding(Samples.survey(), Samples.heater(), 0, "flow.byMonth");
        Series curve = byMonth.series().get(0);
        assertEquals("Jan", curve.labels().get(0));
        assertEquals("Dec", curve.labels().get(11));
        double[] flows = shown(curve);
        assertEquals(flows[0], Fixtures.value(byMonth), 1e-12, "January is the coldest month of SAP 10.2 Table J1");
        // SAP 10.2 Table J1: 8.0 degC in January, 18.4 degC in July
        assertEquals(flows[0] * (40 - 8.0) / (40 - 18.4), flows[6], 0.02);
    }

    @Test
    void aUnitOfTheSameRatingGivesAsMuch() {
        Survey survey = Samples.survey();
        survey.getUnit().setHeater(Samples.heater());
        Finding comparison = finding(survey, Samples.heater(), 0, "flow.comparison");
        assertEquals(0, Fixtures.value(comparison));
        assertEquals("", comparison.variant());
    }

    /** 9.5 kW would warm 42 L/min by 3.2 K: no shower passes that, and no figure is said. */
    @Test
    void moreThanAShowerPassesIsSaidInWords() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.valueOf("5 °C"));
        survey.setTargetOutlet(Temperature.valueOf("8.2 °C"));
        for (String key : List.of("flow.winter", "flow.atRating")) {
            Finding finding = finding(survey, Samples.heater(), 0, key);
            assertEquals("ample", finding.variant(), key);
            assertEquals(42, Fixtures.value(finding), 1, key);
        }
        survey.setTargetOutlet(Temperature.valueOf("40 °C"));
        assertEquals("", finding(survey, Samples.heater(), 0, "flow.winter").variant());
    }

    @Test
    void aMonthThatNeedsNoHeatHasNoFlow() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("17 °C"));
        Finding byMonth = finding(survey, Samples.heater(), 0, "flow.byMonth");
        // From April to October the water is within 4.3 K of the target, and more than 30 L/min could be heated by
        // that.
        assertEquals(
                List.of("Jan", "Feb", "Mar", "Nov", "Dec"),
                byMonth.series().get(0).labels());
        assertEquals("unheated", byMonth.variant());
    }

    /** SAP 10.2 Table J1: 18.4 degC in July. Over 0.4 K 9.5 kW would heat some 320 L/min, which no pipe of a house brings. */
    @Test
    void aMonthThatNeedsNextToNoHeatHasWordsInsteadOfAFlow() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("18.8 °C"));
        Finding byMonth = finding(survey, Samples.heater(), 0, "flow.byMonth");
        assertEquals("ample", byMonth.variant());
        for (double flow : shown(byMonth.series().get(0))) {
            assertTrue(flow <= 30, "flow " + flow);
        }
    }

    @Test
    void nothingToHeatIsNotApplicable() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("5 °C"));
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, Samples.heater(), 0, "flow.winter").outcome());
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, Samples.heater(), 0, "flow.byMonth").outcome());
    }

    /** The present unit on the same cable: 7.5 kW at 240 V through 0.2 ohm from 238 V, by Ohm's law. */
    @Test
    void thePresentUnitIsComparedOnTheSameCable() {
        double ohm = 240 * 240 / 7500.0;
        double presentW = 238 * 238 * ohm / ((ohm + 0.2) * (ohm + 0.2));
        double flow = Heat.massFlowForOutlet(presentW, 5, 40).value();
        Finding comparison = finding(Samples.survey(), Samples.heater(), 0.2, "flow.comparison");
        assertEquals(
                Heat.volumeFlowAtOutlet(flow, 40) * 60_000,
                ((Number) comparison.arguments().get("present")).doubleValue(),
                1e-9);
        Finding byMonth = finding(Samples.survey(), Samples.heater(), 0.2, "flow.byMonth");
        assertEquals(
                List.of("flow.byMonth", "flow.byMonth.present"),
                byMonth.series().stream().map(Series::key).toList());
    }

    /** The low setting is the smaller element alone: 3 of 9 kW give two thirds of the flow of 4.5 of 9 kW, in whatever order. */
    @Test
    void theLowSettingIsTheSmallerElement() {
        double equal = lowFlow("4.5 kW", "4.5 kW");
        assertEquals(equal * 2 / 3, lowFlow("6 kW", "3 kW"), equal * 1e-9);
        assertEquals(equal * 2 / 3, lowFlow("3 kW", "6 kW"), equal * 1e-9);
        assertTrue(equal > 0);
    }

    private static double lowFlow(String... elements) {
        return Fixtures.value(
                finding(Samples.survey(), SampleHouse.heater("9 kW", "240 V", elements), 0, "flow.lowPower"));
    }

    /** With 6 of 9 kW gone a third of the 35 K from 5 to 40 degC is left. */
    @Test
    void theLargestElementIsTheWorstToLose() {
        Heater heater = SampleHouse.heater("9 kW", "240 V", "6 kW", "3 kW");
        assertEquals(5 + 35.0 / 3, Fixtures.value(finding(Samples.survey(), heater, 0, "flow.oneElement")), 0.2);
    }

    @Test
    void oneElementHasNoLowSettingAndNothingLeft() {
        Heater heater = SampleHouse.heater("9 kW", "240 V", "9 kW");
        for (String check : List.of("flow.lowPower", "flow.oneElement")) {
            assertEquals(
                    Outcome.NOT_APPLICABLE,
                    finding(Samples.survey(), heater, 0, check).outcome());
        }
    }

    /** 9.5 kW with one of two equal elements open brings the flow for 5 to 40 degC to 22.5 degC (closed form). */
    @Test
    void aBurntOutElementLeavesItLukewarm() {
        Heater heater = SampleHouse.heater("9.5 kW", "240 V", "4.75 kW", "4.75 kW");
        assertEquals(22.5, Fixtures.value(finding(Samples.survey(), heater, 0, "flow.oneElement")), 0.2);
    }

    @Test
    void withoutTheCircuitOnlyTheRatingIsTold() {
        AssessmentResult assessed = assessed(Samples.survey(), Samples.heater(), -1);
        for (Finding finding : assessed.options().get(0).findings()) {
            if (List.of("flow.winter", "flow.activation", "flow.byMonth", "flow.lowPower", "flow.oneElement")
                    .contains(finding.check().key())) {
                assertEquals(
                        Outcome.CANNOT_TELL, finding.outcome(), finding.check().key());
                assertEquals(List.of("survey.electricity.circuit.segments"), finding.missing());
            }
        }
        Finding rating = assessed.options().get(0).finding("flow.atRating").orElseThrow();
        assertEquals(3.891 / 0.9922674, Fixtures.value(rating), 0.008); // IAPWS-IF97: 3.891 kg/min at 9.5 kW
    }

    @ParameterizedTest
    @CsvSource({
        "40, false, PASSES, ''",
        "40, true, PASSES, vulnerable",
        "41, false, PASSES, ''",
        "42, false, FAILS, ''",
        "42, true, FAILS, vulnerable",
        "44, false, FAILS, strong",
        "46, true, FAILS, strongVulnerable",
    })
    void hotTargetsAreAdvisedAgainst(double outletC, boolean vulnerable, Outcome outcome, String variant) {
        Survey survey = Samples.survey();
        survey.getCustomer().setVulnerable(vulnerable);
        survey.setTargetOutlet(Temperature.ofSi(outletC));
        Finding outlet = finding(survey, Samples.heater(), 0, "flow.outlet");
        assertEquals(outcome, outlet.outcome());
        assertEquals(variant, outlet.variant());
        assertFalse(outlet.rulesOut());
    }

    @Test
    void warmWaterIsRefusedByTheInstructions() {
        Survey survey = Samples.survey();
        survey.getWater().setIntakeReading(Temperature.valueOf("31 °C"));
        Finding intake = finding(survey, Samples.heater(), 0, "flow.intake");
        assertEquals(Outcome.FAILS, intake.outcome());
        assertEquals(31, Fixtures.value(intake), 1e-9);
        assertTrue(intake.rulesOut());
    }

    @Test
    void temperaturesThatAreNoneOfWaterAreNamed() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("140 °C"));
        for (Finding finding :
                assessed(survey, Samples.heater(), 0).options().get(0).findings()) {
            assertEquals(Outcome.CANNOT_TELL, finding.outcome());
            assertEquals(List.of("survey.targetOutlet"), finding.missing());
        }
    }

    @Test
    void theDefaultOutletIsAnAssumption() {
        FindingText words = new FindingText(runner(0), Locale.ENGLISH);
        assertTrue(assessed(Samples.survey(), Samples.heater(), 0).assumptions().stream()
                .map(words::assumption)
                .anyMatch("No temperature was asked for: 40 °C was taken (common practice)"::equals));
    }

    @Test
    void targetFlowsAreGivenForEveryCondition() {
        AssessmentResult assessed = assessed(Samples.survey(), Samples.heater(), 0);
        assertEquals(13, assessed.grid().intakes().size());
        assertEquals(13 * assessed.grid().voltageCount(), SharedQuantity.TARGET_FLOW.size(assessed.grid()));
    }
}
