// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import twinfeed.calculator.SampleHouse;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Concentration;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/** An invented survey and heater that have every reading. */
final class Samples {
    private static final SurveyFactory FACTORY = SurveyFactory.eINSTANCE;

    private Samples() {}

    static Survey survey() {
        Survey survey = SampleHouse.fed("238 V");
        Customer customer = FACTORY.createCustomer();
        customer.setVulnerable(false);
        survey.setCustomer(customer);
        PresentUnit unit = FACTORY.createPresentUnit();
        unit.setMeasuredFlow(Flow.valueOf("7.2 L/min"));
        survey.setUnit(unit);
        survey.setWater(water());
        return survey;
    }

    private static WaterFeed water() {
        WaterFeed water = FACTORY.createWaterFeed();
        water.setTest(SampleHouse.waterTest("3.0 bar", "1.8 bar", "12 L/min"));
        water.getTest().setGaugeAfter("service pipe");
        water.getTest().setGaugeHeight(Length.valueOf("0.3 m"));
        water.getTest().setAtPeak(false);
        water.getSegments()
                .add(SampleHouse.pipe("service pipe", PipeMaterial.PE, "20.4 mm", "14 m", "0.6 m", "stop-valve"));
        water.getSegments()
                .add(SampleHouse.pipe(
                        "rising main", PipeMaterial.COPPER, "13.6 mm", "5.5 m", "2.9 m", "stop-valve", "check-valve"));
        water.getSegments()
                .add(SampleHouse.pipe(
                        "shower branch", PipeMaterial.COPPER, "13.6 mm", "3.2 m", "1.1 m", "isolating-valve"));
        water.getDrawOffs().add(SampleHouse.tap("kitchen tap", "12 L/min", "service pipe", "-0.5 m"));
        water.getDrawOffs().add(SampleHouse.tap("basin", "6 L/min", "rising main", "0.8 m"));
        water.setLowestHandset(Length.valueOf("-0.3 m"));
        water.setHardness(Concentration.valueOf("250 mg/L"));
        water.setIntakeReading(Temperature.valueOf("12 °C"));
        water.setSharedServicePipe(false);
        water.setBackflowProtection("double-check-valve");
        water.setHandsetReachesWc(false);
        return water;
    }

    static Heater heater() {
        Heater heater = SampleHouse.heater("9.5 kW", "240 V");
        heater.setMinimumRunningPressure(Pressure.valueOf("0.7 bar"));
        heater.setRunningPressureFlow(Flow.valueOf("8 L/min"));
        heater.setMaximumStaticPressure(Pressure.valueOf("10 bar"));
        heater.setActivationFlow(Flow.valueOf("2.5 L/min"));
        heater.setSwitchPlace(SwitchPlace.INLET_CHAMBER);
        heater.setMakePressure(Pressure.valueOf("0.3 bar"));
        heater.setBreakPressure(Pressure.valueOf("0.2 bar"));
        heater.setInletLoss(Pressure.valueOf("0.15 bar"));
        heater.setInletLossFlow(Flow.valueOf("8 L/min"));
        heater.setDownstreamPressure(Pressure.valueOf("0.4 bar"));
        heater.setDownstreamFlow(Flow.valueOf("8 L/min"));
        heater.setThrottleMinimum(Pressure.valueOf("0.05 bar"));
        heater.setStabilised(false);
        heater.setCutOutTemperature(Temperature.valueOf("55 °C"));
        heater.setMaximumHardness(Concentration.valueOf("300 mg/L"));
        return heater;
    }
}
