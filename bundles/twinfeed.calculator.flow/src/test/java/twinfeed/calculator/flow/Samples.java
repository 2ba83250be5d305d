// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.SampleHouse;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Flow;
import twinfeed.units.Temperature;

/** An invented survey and heaters. */
final class Samples {
    private Samples() {}

    static Survey survey() {
        SurveyFactory factory = SurveyFactory.eINSTANCE;
        Survey survey = SampleHouse.fed("238 V");
        Customer customer = factory.createCustomer();
        customer.setVulnerable(true);
        survey.setCustomer(customer);
        PresentUnit unit = factory.createPresentUnit();
        unit.setHeater(SampleHouse.heater("7.5 kW", "240 V", "4.0 kW", "3.5 kW"));
        survey.setUnit(unit);
        survey.getWater().setIntakeReading(Temperature.valueOf("12 °C"));
        return survey;
    }

    static Heater heater() {
        Heater heater = SampleHouse.heater("9.5 kW", "240 V", "5.0 kW", "4.5 kW");
        heater.setActivationFlow(Flow.valueOf("2.5 L/min"));
        heater.setMaximumIntake(Temperature.valueOf("25 °C"));
        return heater;
    }
}
