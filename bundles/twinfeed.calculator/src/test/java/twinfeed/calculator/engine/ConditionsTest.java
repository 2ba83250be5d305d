// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assumptions.Assumption;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;

/** The conditions under which a house is judged. Months are those of SAP 10.2 table J1. */
class ConditionsTest {
    private static final Runner RUNNER = new Runner(
            List.of(), (mean, spread, month, southern) -> southern ? mean + spread - month : mean + spread + month);

    private static AssessmentResult assessed(Survey survey) {
        return RUNNER.assess(survey, List.of());
    }

    private static double january(Survey survey) {
        return assessed(survey).grid().intakes().get(1).temperatureC();
    }

    @Test
    void whatASurveyDoesNotSayIsAssumedAndRecorded() {
        AssessmentResult result = assessed(SurveyFactory.eINSTANCE.createSurvey());
        assertEquals(
                List.of(
                        new Assumption("conditions", "supplyVoltage", Map.of("voltage", 230.0), false),
                        new Assumption("conditions", "winterIntake", Map.of("temperature", 5.0), false),
                        new Assumption("conditions", "climate", Map.of("climate", "uk-mains"), true)),
                result.assumptions());
        assertEquals("bs7671-2018-a2", result.rules().id());
        Grid grid = result.grid();
        assertArrayEquals(new double[] {216.2, 230, 240, 253}, grid.voltages());
        assertEquals(1, grid.nominal());
        assertEquals(new Intake(0, 5), grid.intakes().get(0));
        assertEquals(new Intake(1, 8.0), grid.intakes().get(1));
        assertEquals(new Intake(12, 8.5), grid.intakes().get(12));
        assertEquals(List.of(new DrawOffState(0, List.of())), grid.drawOffs());
    }

    @Test
    void nothingIsAssumedOfAHouseThatWasMeasured() {
        Survey survey = SampleHouse.fed("240 V");
        survey.setWinterIntake(Temperature.valueOf("7 °C"));
        survey.setClimate("uk-tank");
        survey.setRules("iec60364-5-52");
        AssessmentResult result = assessed(survey);
        assertEquals(List.of(), result.assumptions());
        assertEquals("iec60364-5-52", result.rules().id());
        assertEquals(240, result.grid().voltage(result.grid().nominal()));
        assertEquals(new Intake(0, 7), result.grid().intakes().get(0));
        assertEquals(11.1, january(survey));
    }

    @Test
    void waterFromATankStandsInTheHouseFirst() {
        Survey survey = SampleHouse.fed("240 V");
        for (WaterSource source : WaterSource.values()) {
            survey.getWater().setSource(source);
            boolean tank = source == WaterSource.TANK || source == WaterSource.PUMPED;
            assertEquals(tank ? 11.1 : 8.0, january(survey), source.getName());
        }
    }

    @Test
    void hotWaterThatFeedsTheUnitIsWarmerThanAnyMonthsColdWaterButNotInWinter() {
        Survey survey = SampleHouse.fed("240 V");
        survey.getWater().setSource(WaterSource.HOT);
        assertEquals(8.0, january(survey), "how hot is not known");
        survey.getWater().setHottestFeed(Temperature.valueOf("35 °C"));
        Grid grid = assessed(survey).grid();
        assertEquals(new Intake(0, 5), grid.intakes().get(0));
        for (int month = 1; month <= 12; month++) {
            assertEquals(new Intake(month, 35), grid.intakes().get(month));
        }
        survey.getWater().setSource(WaterSource.MAINS);
        assertEquals(8.0, january(survey), "it is not fed with hot water any more");
    }

    @Test
    void upToTwoTapsAreOpenAtOnceAndTapsWithoutANameAreNumbered() {
        Survey survey = SampleHouse.fed("240 V");
        for (int tap = 0; tap < 3; tap++) {
            survey.getWater().getDrawOffs().add(SurveyFactory.eINSTANCE.createDrawOff());
        }
        survey.getWater().getDrawOffs().get(0).setName("basin");
        assertEquals(
                List.of(
                        new DrawOffState(0, List.of()),
                        new DrawOffState(1, List.of("basin")),
                        new DrawOffState(2, List.of("basin", "2"))),
                assessed(survey).grid().drawOffs());
    }

    @Test
    void theModelComputesTheMonthsFromTheAirOfItsHemisphere() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setClimate("model");
        String needs = "climate \"model\" needs annualMeanAir and monthlyAirSpread in the survey";
        assertEquals(needs, refusal(survey));
        survey.setAnnualMeanAir(Temperature.valueOf("10 °C"));
        assertEquals(needs, refusal(survey));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("14 K"));
        assertEquals(10 + 14 + 1, january(survey));
        survey.setSouthern(true);
        assertEquals(10 + 14 - 1, january(survey));
        survey.setAnnualMeanAir(null);
        survey.setClimate(null);
        assertEquals(8.0, january(survey), "half of the air's temperatures select no model");
    }

    @Test
    void anUnknownClimateOrRuleSetIsRefusedWithTheKnownOnes() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setClimate("moon");
        assertEquals("unknown climate \"moon\"; known are uk-mains, uk-tank, model", refusal(survey));
        survey.setRules("nowhere-1900");
        assertEquals("unknown rule set \"nowhere-1900\"; known are bs7671-2018-a2, iec60364-5-52", refusal(survey));
    }

    private static String refusal(Survey survey) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, () -> assessed(survey))
                .getMessage());
    }

    @Test
    void theMonthsOfAClimateAreNobodysToChange() {
        double[] months = Climates.read("uk-mains").orElseThrow();
        assertArrayEquals(new double[] {8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}, months);
        double[] again = Climates.months("uk-mains").orElseThrow();
        assertEquals(8.0, again[0]);
        again[0] = 99;
        assertEquals(8.0, Climates.months("uk-mains").orElseThrow()[0]);
        assertEquals(true, Climates.months("moon").isEmpty());
        assertEquals(
                "SAP 10.2 Table J1, cold water temperature by month, \"from mains\" and \"from header tank\"",
                Climates.source());
    }
}
