// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;

/** Water of 45 degC all the year where 40 degC is wanted: what depends on the heat does not apply, and the reason is given. */
class UnheatedHouseTest {
    private static final String NOTHING_TO_HEAT =
            "The cold water is at the target temperature or above it all year: there is nothing to heat.";

    private static Survey warmHouse() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.valueOf("45 °C"));
        survey.setClimate("model");
        survey.setAnnualMeanAir(Temperature.valueOf("45 °C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("0 K"));
        return survey;
    }

    @ParameterizedTest
    @CsvSource({
        "pressure.switch, " + NOTHING_TO_HEAT,
        "pressure.activation, " + NOTHING_TO_HEAT,
        "pressure.throttle, " + NOTHING_TO_HEAT,
        "pressure.dropOut, " + NOTHING_TO_HEAT,
        "pressure.tapOpens, " + NOTHING_TO_HEAT,
        "pressure.scald, " + NOTHING_TO_HEAT,
        "pressure.summer, " + NOTHING_TO_HEAT,
        "pressure.summerLow, " + NOTHING_TO_HEAT,
        "pressure.velocity, 'There is no pipe between the gauge and the heater, or nothing to heat.'",
    })
    void whatDependsOnTheHeatDoesNotApply(String check, String said) {
        Finding finding = Houses.finding(warmHouse(), Samples.heater(), check);
        assertEquals(Outcome.NOT_APPLICABLE, finding.outcome());
        assertEquals(said, Houses.words(finding));
    }
}
