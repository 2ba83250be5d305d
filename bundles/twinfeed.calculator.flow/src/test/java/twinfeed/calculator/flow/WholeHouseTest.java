// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Grid;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.Series;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Power;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;
import twinfeed.units.Voltage;

/**
 * One house at 238 V with a heater of 9.5 kW at 240 V: all findings, the lines of their workings and what is handed on.
 *
 * <p>Heat needed per kilogram, from the specific heats of IAPWS-IF97 at 0.2 MPa (4.1888 kJ/(kg K) at 15 degC, 4.1845 at 20, 4.1798 at 30,
 * 4.1783 at 40): from 5 to 40 degC 146.49 kJ (9.5 kW heat 3.891 kg/min), from 18.4 to 40 degC 21.6 K x 4.1806 = 90.30 kJ. Density at 40
 * degC 992.27 kg/m3. Months: SAP 10.2 Table J1, cold water from the mains.
 */
class WholeHouseTest {
    private static final double WINTER_J_PER_KG = 146.49e3;
    private static final double JULY_J_PER_KG = 90.30e3;
    private static final double KG_PER_L = 0.99227;

    /** A circuit of one resistance that says how it finds the power, and somebody who goes on with the flow. */
    private static final class Circuit implements Calculator {
        private final double ohm;

        Circuit(double ohm) {
            this.ohm = ohm;
        }

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Circuit.class)
                    .provides(SharedQuantity.DELIVERED_POWER)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                if (Double.isNaN(ohm)) {
                    shared.markMissing(SharedQuantity.DELIVERED_POWER, List.of("survey.electricity.circuit.segments"));
                    return;
                }
                Grid grid = context.grid();
                double[] powers = new double[grid.voltageCount()];
                Arrays.setAll(powers, at -> power(candidate.heater(), grid.voltage(at))
                        .value("P"));
                shared.put(SharedQuantity.DELIVERED_POWER, powers);
                shared.explain(SharedQuantity.DELIVERED_POWER, at -> power(candidate.heater(), grid.voltage(at))
                        .build());
            };
        }

        private Working.Builder power(Heater heater, double originV) {
            double ratedV = heater.getVoltage().si();
            return Working.start()
                    .input(
                            "R",
                            "elementResistance",
                            ratedV * ratedV / heater.getPower().si(),
                            "Ω",
                            "")
                    .input("r", "cableResistance", ohm, "Ω", "")
                    .input("U_0", "supplyVoltage", originV, "V", "")
                    .step("P", "power", "(U_0 * R / (R + r))^2 / R", "W", "");
        }
    }

    private static final class FlowReader implements Calculator {
        private SharedQuantities seen = new SharedQuantities(new Grid(List.of(), new double[0], 0, List.of()));
        private Grid grid = new Grid(List.of(), new double[0], 0, List.of());

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(FlowReader.class)
                    .consumes(SharedQuantity.TARGET_FLOW)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            grid = context.grid();
            return (candidate, shared, findings) -> seen = shared;
        }
    }

    private final FlowReader reader = new FlowReader();
    private final Runner runner = runner(0);

    private Runner runner(double ohm) {
        // Warmest in January and coldest in July, as south of the equator.
        return new Runner(
                List.of(new FlowCalculator(), new Circuit(ohm), reader),
                (mean, spread, month, southern) -> mean + spread / 2 * Math.cos(Math.toRadians(30 * (month - 1.0))));
    }

    private static Finding finding(Runner runner, Survey survey, Heater heater, String key) {
        return runner.assess(survey, List.of(new Candidate(heater, false)))
                .options()
                .get(0)
                .finding(key)
                .orElseThrow();
    }

    private Finding finding(Survey survey, String key) {
        return finding(runner, survey, Samples.heater(), key);
    }

    private static double argument(Finding finding, String name) {
        Object value = finding.arguments().get(name);
        assertTrue(value instanceof Number, finding.check().key() + " has no number " + name + ": " + value);
        return ((Number) value).doubleValue();
    }

    private static double litresPerMinute(double kw, double joulePerKg) {
        return kw * 1000 / joulePerKg * 60 / KG_PER_L;
    }

    private static Condition atOrigin(Condition condition, int month, double temperatureC) {
        assertEquals(month, condition.intake().month());
        assertEquals(temperatureC, condition.intake().temperatureC(), 1e-12);
        return condition;
    }

    @Test
    void everyFindingHasItsFigures() {
        double kw = 9.5 * 238 * 238 / 240 / 240; // Ohm's law, no cable
        double winter = litresPerMinute(kw, WINTER_J_PER_KG);
        double low = kw * 4.5 / 9.5;

        Finding activation = finding(Samples.survey(), "flow.activation");
        assertEquals(winter * KG_PER_L, Fixtures.value(activation), 0.004, "1 kg of water at 5 degC is 1 L");
        assertEquals(2.5, Fixtures.limit(activation), 1e-9);
        assertEquals("", activation.variant());
        assertEquals(238, atOrigin(activation.condition(), 0, 5).voltageV());

        Finding byMonth = finding(Samples.survey(), "flow.byMonth");
        assertEquals(litresPerMinute(kw, JULY_J_PER_KG), argument(byMonth, "most"), 0.006);
        assertEquals("", byMonth.variant());
        assertEquals(238, atOrigin(byMonth.condition(), 1, 8.0).voltageV());

        Finding comparison = finding(Samples.survey(), "flow.comparison");
        assertEquals(winter * 2 / 9.5, Fixtures.value(comparison), 0.001);
        assertEquals(winter, argument(comparison, "flow"), 0.004);
        assertEquals(winter * 7.5 / 9.5, argument(comparison, "present"), 0.004);
        assertEquals(winter * 2 / 9.5, argument(comparison, "change"), 0.001);
        assertEquals("", comparison.variant());

        Finding rating = finding(Samples.survey(), "flow.atRating");
        assertEquals(9.5, argument(rating, "power"), 1e-9);
        assertEquals(240, argument(rating, "voltage"), 1e-9);
        assertEquals(
                3.891 / 1.0000154, argument(rating, "inletFlow"), 0.004); // IAPWS-IF97, mass flow and density at 5 degC

        Finding lowPower = finding(Samples.survey(), "flow.lowPower");
        assertEquals(litresPerMinute(low, JULY_J_PER_KG), Fixtures.value(lowPower), 0.003);
        assertEquals(low, argument(lowPower, "power"), 1e-9);
        assertEquals(litresPerMinute(low, WINTER_J_PER_KG), argument(lowPower, "winter"), 0.002);
        assertEquals(238, atOrigin(lowPower.condition(), 7, 18.4).voltageV());

        Finding oneElement = finding(Samples.survey(), "flow.oneElement");
        assertEquals(5 + 35 * 4.5 / 9.5, Fixtures.value(oneElement), 0.1);
        assertEquals(low, argument(oneElement, "power"), 1e-9);
        assertEquals(winter, argument(oneElement, "flow"), 0.004);

        Finding intake = finding(Samples.survey(), "flow.intake");
        assertEquals(18.4, Fixtures.value(intake), 1e-9, "12 degC, as measured, is not the warmest of the year");
        assertEquals("", intake.variant());
        atOrigin(intake.condition(), 7, 18.4);
    }

    @Test
    void aWeakerHeaterGivesLessThanThePresentUnit() {
        Finding comparison = finding(runner, Samples.survey(), SampleHouse.heater("7 kW", "240 V"), "flow.comparison");
        assertEquals("less", comparison.variant());
        assertEquals(-argument(comparison, "change"), Fixtures.value(comparison), 1e-12);
        assertEquals(
                argument(comparison, "present") - argument(comparison, "change"), argument(comparison, "flow"), 1e-9);
    }

    private static List<String> meanings(Working working) {
        return working.steps().stream().map(Step::meaning).toList();
    }

    private static Map<String, Double> values(Working working) {
        return working.steps().stream().collect(Collectors.toMap(Step::symbol, Step::value));
    }

    /** 9.5 and 7.5 kW at 240 V behind 0.1 ohm at 238 V: 6.063 and 7.68 ohm, 9.042 kW and 7.187 kW by Ohm's law. */
    @Test
    void theComparisonIsWorkedOutFromTheCable() {
        Working working = finding(runner(0.1), Samples.survey(), Samples.heater(), "flow.comparison")
                .working();
        assertEquals(
                List.of(
                        "elementResistance",
                        "cableResistance",
                        "supplyVoltage",
                        "power",
                        "ratedPower",
                        "ratedVoltage",
                        "ratedPower",
                        "ratedVoltage",
                        "originVoltage",
                        "elementResistance",
                        "elementResistance",
                        "cableResistance",
                        "presentPower",
                        "intake",
                        "outlet",
                        "enthalpyIn",
                        "enthalpyOut",
                        "massFlow",
                        "densityIn",
                        "flowIn",
                        "densityOut",
                        "flowOut",
                        "presentFlow",
                        "flowGain"),
                meanings(working));
        Map<String, Double> values = values(working);
        assertEquals(9500.0, values.get("P_1"));
        assertEquals(240.0, values.get("U_1"));
        assertEquals(7500.0, values.get("P_2"));
        assertEquals(240.0, values.get("U_2"));
        assertEquals(6.0632, values.get("R_1"), 0.0001);
        assertEquals(7.68, values.get("R_2"), 0.0001);
        assertEquals(0.1, values.get("R_c"), 1e-9);
        assertEquals(9042, values.get("P"), 1);
        assertEquals(7187, values.get("P_now"), 1);
        assertEquals(999.9, values.get("rho_in"), 0.2);
        assertEquals(992.27, values.get("rho_out"), 0.05);
    }

    @Test
    void theFlowOfThePipesIsWorkedOutAtTheInlet() {
        List<String> lines = new ArrayList<>(
                meanings(finding(Samples.survey(), "flow.activation").working()));
        assertEquals("flowIn", lines.get(lines.size() - 1));
        assertEquals(
                List.of("densityOut", "flowOut", "densityIn", "flowIn"), lines.subList(lines.size() - 4, lines.size()));
    }

    @Test
    void theFlowIsHandedOnForEveryIntakeAndVoltage() {
        finding(Samples.survey(), "flow.winter");
        Grid grid = reader.grid;
        double[] flows = reader.seen.get(SharedQuantity.TARGET_FLOW);
        assertEquals(13 * grid.voltageCount(), flows.length);
        for (int voltage = 0; voltage < grid.voltageCount(); voltage++) {
            double watt = 9500 * Math.pow(grid.voltage(voltage) / 240, 2);
            handedOn(flows, grid.index(0, voltage), watt / WINTER_J_PER_KG, watt);
            handedOn(flows, grid.index(7, voltage), watt / JULY_J_PER_KG, watt);
        }
    }

    private void handedOn(double[] flows, int at, double expectedKgPerS, double watt) {
        assertEquals(expectedKgPerS, flows[at], expectedKgPerS * 0.001);
        Working working = reader.seen.working(SharedQuantity.TARGET_FLOW, at);
        List<Step> steps = working.steps();
        assertEquals("massFlow", steps.get(steps.size() - 1).meaning());
        assertEquals(flows[at], steps.get(steps.size() - 1).value(), 1e-12);
        assertEquals(watt, values(working).get("P"), 1e-6);
    }

    @Test
    void waterThatIsWarmEnoughNeedsNoFlow() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("17 °C"));
        finding(survey, "flow.winter");
        int july = reader.grid.index(7, 0);
        assertEquals(0, reader.seen.get(SharedQuantity.TARGET_FLOW)[july]);
        List<Step> steps = reader.seen.working(SharedQuantity.TARGET_FLOW, july).steps();
        assertEquals(0, steps.get(steps.size() - 1).value());
    }

    @Test
    void whatTheFlowLacksIsHandedOn() {
        finding(runner(Double.NaN), Samples.survey(), Samples.heater(), "flow.winter");
        assertFalse(reader.seen.has(SharedQuantity.TARGET_FLOW));
        assertEquals(List.of("survey.electricity.circuit.segments"), reader.seen.missing(SharedQuantity.TARGET_FLOW));
        Survey steam = Samples.survey();
        steam.setTargetOutlet(Temperature.valueOf("140 °C"));
        finding(steam, "flow.winter");
        assertEquals(List.of("survey.targetOutlet"), reader.seen.missing(SharedQuantity.TARGET_FLOW));
    }

    @Test
    void intakesThatAreNoneOfWaterAreNamedOnce() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.valueOf("-3 °C"));
        assertEquals(
                List.of("survey.winterIntake"), finding(survey, "flow.winter").missing());
        survey.setAnnualMeanAir(Temperature.valueOf("-40 °C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("10 K"));
        assertEquals(
                List.of("survey.winterIntake", "survey.climate"),
                finding(survey, "flow.winter").missing());
    }

    /** Water is liquid from 0 to 100 degC, both ends included. */
    @Test
    void theEndsOfLiquidWaterCount() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.ofSi(0));
        survey.setTargetOutlet(Temperature.ofSi(100));
        // Enthalpies of water at 0 and 100 degC: 0 and 419 kJ/kg (steam tables, from memory)
        assertEquals(9.3423 / 419 * 60, argument(finding(survey, "flow.winter"), "inletFlow"), 0.005);
    }

    /** South of the equator July is the coldest month, and the warmest is January. */
    @Test
    void theSeasonsFollowTheClimate() {
        Survey survey = Samples.survey();
        survey.setAnnualMeanAir(Temperature.valueOf("15 °C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("10 K"));
        Finding byMonth = finding(survey, "flow.byMonth");
        atOrigin(byMonth.condition(), 7, 10);
        atOrigin(finding(survey, "flow.lowPower").condition(), 1, 20);
        Series curve = byMonth.series().get(0);
        assertEquals(12, curve.y().length);
        assertEquals(Arrays.stream(curve.y()).min().orElseThrow(), curve.y()[6]);
        assertEquals(Arrays.stream(curve.y()).max().orElseThrow(), curve.y()[0]);
        assertEquals(argument(byMonth, "most"), curve.yAxis().unit().fromSi(curve.y()[0]), 1e-9);
    }

    /** The temperature of the design day is a reading of its own: it is not one of the months. */
    @Test
    void theDesignDayIsNoMonth() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.valueOf("22 °C"));
        atOrigin(finding(survey, "flow.intake").condition(), 7, 18.4);
        survey.setWinterIntake(Temperature.valueOf("2 °C"));
        atOrigin(finding(survey, "flow.byMonth").condition(), 1, 8.0);
    }

    @Test
    void measuredWaterThatIsWarmerThanAnyMonthCounts() {
        Survey survey = Samples.survey();
        survey.getWater().setIntakeReading(Temperature.valueOf("24 °C"));
        Finding intake = finding(survey, "flow.intake");
        assertEquals(24, Fixtures.value(intake), 1e-9);
        assertEquals("measured", intake.variant());
        assertEquals(Condition.NONE, intake.condition());
        assertEquals(Outcome.PASSES, intake.outcome());
    }

    /** A rating plate of 0 kW or 0 V is a mistake of whoever typed it. */
    @Test
    void aRatingOfNothingTellsNothing() {
        Survey survey = Samples.survey();
        for (Heater heater : List.of(SampleHouse.heater("0 kW", "240 V"), SampleHouse.heater("9.5 kW", "0 V"))) {
            Finding rating = finding(runner(Double.NaN), survey, heater, "flow.atRating");
            assertEquals(Outcome.CANNOT_TELL, rating.outcome());
            assertEquals(List.of("heater.power"), rating.missing());
        }
        survey.getUnit().getHeater().setPower(Power.valueOf("0 kW"));
        Finding comparison = finding(survey, "flow.comparison");
        assertEquals(Outcome.CANNOT_TELL, comparison.outcome());
        assertEquals(List.of("survey.unit.heater.power"), comparison.missing());
        survey.getUnit().getHeater().setPower(Power.valueOf("7.5 kW"));
        survey.getUnit().getHeater().setVoltage(Voltage.valueOf("0 V"));
        assertEquals(Outcome.CANNOT_TELL, finding(survey, "flow.comparison").outcome());
    }

    @Test
    void elementsOfUnknownPowerTellNothing() {
        Heater heater = Samples.heater();
        heater.getElements().get(1).setPower(Power.valueOf("0 kW"));
        Heater bare = Samples.heater();
        bare.getElements().get(1).setPower(null);
        for (Heater each : List.of(heater, bare)) {
            for (String key : List.of("flow.lowPower", "flow.oneElement")) {
                Finding finding = finding(runner, Samples.survey(), each, key);
                assertEquals(Outcome.NOT_APPLICABLE, finding.outcome(), key);
                assertEquals("", finding.variant(), key);
            }
        }
    }

    /** Where nothing is heated, the reason is said: not that the data name no elements or no flow that brings the heat on. */
    @Test
    void nothingToHeatIsTheReasonThatIsGiven() {
        Survey survey = Samples.survey();
        survey.setTargetOutlet(Temperature.valueOf("5 °C"));
        FindingText words = new FindingText(runner, Locale.ENGLISH);
        String nothing = "The cold water is at the target temperature or above it: there is nothing to heat.";
        assertEquals(nothing, words.sentence(finding(survey, "flow.activation")));
        assertEquals(nothing, words.sentence(finding(survey, "flow.atRating")));
        assertEquals(
                "In the warmest month the cold water is at the target temperature or above it: there is nothing to heat.",
                words.sentence(finding(survey, "flow.lowPower")));
        assertEquals(
                "On a winter day nothing is heated, so a burnt-out element does not show.",
                words.sentence(finding(survey, "flow.oneElement")));
    }

    @Test
    void aBrokenCableCarriesNoPower() {
        Runner broken = runner(1e300);
        Finding oneElement = finding(broken, Samples.survey(), Samples.heater(), "flow.oneElement");
        assertEquals(Outcome.NOT_APPLICABLE, oneElement.outcome());
        assertEquals(0, Fixtures.value(finding(broken, Samples.survey(), Samples.heater(), "flow.winter")));
    }

    @Test
    void aHeaterWithoutAnActivationFlowIsNotAskedForIt() {
        Heater heater = Samples.heater();
        heater.setActivationFlow(null);
        Finding activation = finding(runner, Samples.survey(), heater, "flow.activation");
        assertEquals(Outcome.NOT_APPLICABLE, activation.outcome());
        assertEquals(
                "The instructions name no flow that brings the heat on.",
                new FindingText(runner, Locale.ENGLISH).sentence(activation));
    }
}
