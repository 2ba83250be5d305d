// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Ratio;
import twinfeed.units.Temperature;

/** Power tolerance of heating appliances over 200 W, +5 % and -10 %: EN 60335-1, from memory. 40 degC: common practice. */
class UsualValuesTest {
    private final Heater heater = CatalogueFactory.eINSTANCE.createHeater();

    @Test
    void usualValuesStandWhereNothingIsSaid() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        assertEquals(40, UsualValues.targetOutletC(survey));
        survey.setTargetOutlet(Temperature.ofSi(38));
        assertEquals(38, UsualValues.targetOutletC(survey));
        assertEquals(0.05, UsualValues.powerUp(heater));
        assertEquals(0.10, UsualValues.powerDown(heater));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "0.03, 0.03, 0.03", "0.5, 0.5, 0.5", "0.51, 0.05, 0.10", "-0.01, 0.05, 0.10"})
    void statedToleranceCountsWhereItCanBe(double stated, double up, double down) {
        heater.setPowerToleranceUp(Ratio.ofSi(stated));
        heater.setPowerToleranceDown(Ratio.ofSi(stated));
        assertEquals(up, UsualValues.powerUp(heater));
        assertEquals(down, UsualValues.powerDown(heater));
    }
}
