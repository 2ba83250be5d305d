// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Flow;
import twinfeed.units.Power;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** An invented survey and heaters. */
final class Samples {
    private Samples() {}

    static Survey survey() {
        SurveyFactory factory = SurveyFactory.eINSTANCE;
        Survey survey = factory.createSurvey();
        Customer customer = factory.createCustomer();
        customer.setVulnerable(true);
        survey.setCustomer(customer);
        PresentUnit unit = factory.createPresentUnit();
        unit.setHeater(heater("7.5 kW", "240 V", "4.0 kW", "3.5 kW"));
        survey.setUnit(unit);
        WaterFeed water = factory.createWaterFeed();
        water.setIntakeReading(Temperature.valueOf("12 °C"));
        survey.setWater(water);
        ElectricalFeed electricity = factory.createElectricalFeed();
        electricity.setSupplyVoltage(Voltage.valueOf("238 V"));
        survey.setElectricity(electricity);
        return survey;
    }

    static Heater heater() {
        Heater heater = heater("9.5 kW", "240 V", "5.0 kW", "4.5 kW");
        heater.setActivationFlow(Flow.valueOf("2.5 L/min"));
        heater.setMaximumIntake(Temperature.valueOf("25 °C"));
        return heater;
    }

    static Heater heater(String power, String voltage, String... elements) {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("sample");
        heater.setTitle("Heater of the test");
        heater.setPower(Power.valueOf(power));
        heater.setVoltage(Voltage.valueOf(voltage));
        for (String each : elements) {
            Element element = CatalogueFactory.eINSTANCE.createElement();
            element.setPower(Power.valueOf(each));
            heater.getElements().add(element);
        }
        return heater;
    }
}
