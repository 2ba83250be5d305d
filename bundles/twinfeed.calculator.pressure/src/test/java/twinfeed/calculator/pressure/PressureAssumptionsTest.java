// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Ratio;

/** What was assumed is told to the reader, and nothing that was not. */
class PressureAssumptionsTest {
    private static final String CUT_OUT =
            "A thermal cut-out is taken to act 5 s after its temperature is passed, with 0.3 L in"
                    + " the heating can (engineering judgement)";
    private static final String MAIN =
            "The cold main is taken to give at least the pressure measured on the hot supply: test"
                    + " the main before the pipe is laid";

    private final Survey survey = Samples.survey();
    private final Heater heater = Samples.heater();

    private List<String> told() {
        return Houses.assumptions(survey, heater);
    }

    /** Table of the program (judgement): a stop valve of globe form has K = 10. */
    @Test
    void aLossCoefficientFromTheTableIsTold() {
        String stopValve = "Loss coefficient of a fitting \"stop valve\" taken as 10.00";
        assertTrue(told().contains(stopValve), told().toString());
        survey.getWater().getSegments().forEach(pipe -> pipe.getFittings()
                .forEach(fitting -> fitting.setK(Ratio.valueOf("8"))));
        assertFalse(told().stream().anyMatch(text -> text.startsWith("Loss coefficient")));
    }

    /** EN 1057: 15 mm tube has a bore of 13.6 mm; nine tenths of it are 12.24 mm. Drawn tube has a roughness of 0.0015 mm. */
    @Test
    void aShareOfTheTablesIsAShareOfTheirFigures() {
        survey.getWater().getSegments().get(1).setBore(null);
        survey.getWater().getSegments().get(1).setSize("15 mm");
        Houses.parameter(survey, "table-losses", "2");
        Houses.parameter(survey, "table-roughness", "2");
        Houses.parameter(survey, "table-bores", "0.9");
        List<String> told = told();
        assertTrue(told.contains("Loss coefficient of a fitting \"stop valve\" taken as 20.00"), told.toString());
        assertTrue(told.contains("Wall roughness of copper pipe taken as 0.0030 mm"), told.toString());
        assertTrue(told.contains("Bore of copper pipe 15 mm taken as 12.2 mm"), told.toString());
    }

    @Test
    void theDelayOfACutOutIsToldWhereOneActs() {
        assertTrue(told().contains(CUT_OUT), told().toString());
        heater.setCutOutTemperature(null);
        assertFalse(told().contains(CUT_OUT));
    }

    @Test
    void thatTheMainIsAsStrongAsTheHotSupplyIsToldUntilItIsTested() {
        survey.getWater().setSource(WaterSource.HOT);
        assertTrue(told().contains(MAIN), told().toString());
        survey.getWater().setMainTest(SampleHouse.waterTest("3.2 bar", "2.4 bar", "14 L/min"));
        assertFalse(told().contains(MAIN));
    }

    @Test
    void aHeaterWithoutATitleIsNamedByItsId() {
        heater.unsetSwitchPlace();
        heater.setTitle(null);
        assertTrue(told().stream()
                .anyMatch(text -> text.startsWith("It is not known where the pressure switch of \"sample\" is:")));
    }
}
