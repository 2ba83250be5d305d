// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Concentration;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** An invented survey and heater that have every reading. */
final class Samples {
    private static final SurveyFactory FACTORY = SurveyFactory.eINSTANCE;

    private Samples() {}

    static Survey survey() {
        Survey survey = FACTORY.createSurvey();
        Customer customer = FACTORY.createCustomer();
        customer.setVulnerable(false);
        survey.setCustomer(customer);
        ElectricalFeed electricity = FACTORY.createElectricalFeed();
        electricity.setSupplyVoltage(Voltage.valueOf("238 V"));
        survey.setElectricity(electricity);
        PresentUnit unit = FACTORY.createPresentUnit();
        unit.setMeasuredFlow(Flow.valueOf("7.2 L/min"));
        survey.setUnit(unit);
        survey.setWater(water());
        return survey;
    }

    private static WaterFeed water() {
        WaterFeed water = FACTORY.createWaterFeed();
        water.setTest(test("3.0 bar", "1.8 bar", "12 L/min"));
        water.getTest().setGaugeAfter("service pipe");
        water.getTest().setGaugeHeight(Length.valueOf("0.3 m"));
        water.getTest().setAtPeak(false);
        water.getSegments().add(pipe("service pipe", PipeMaterial.PE, "20.4 mm", "14 m", "0.6 m", "stop-valve"));
        water.getSegments()
                .add(pipe(
                        "rising main", PipeMaterial.COPPER, "13.6 mm", "5.5 m", "2.9 m", "stop-valve", "check-valve"));
        water.getSegments()
                .add(pipe("shower branch", PipeMaterial.COPPER, "13.6 mm", "3.2 m", "1.1 m", "isolating-valve"));
        water.getDrawOffs().add(tap("kitchen tap", "12 L/min", "service pipe", "-0.5 m"));
        water.getDrawOffs().add(tap("basin", "6 L/min", "rising main", "0.8 m"));
        water.setLowestHandset(Length.valueOf("-0.3 m"));
        water.setHardness(Concentration.valueOf("250 mg/L"));
        water.setIntakeReading(Temperature.valueOf("12 °C"));
        water.setSharedServicePipe(false);
        water.setBackflowProtection("double-check-valve");
        water.setHandsetReachesWc(false);
        return water;
    }

    static WaterTest test(String staticPressure, String running, String flow) {
        WaterTest test = FACTORY.createWaterTest();
        test.setStaticPressure(Pressure.valueOf(staticPressure));
        test.setRunningPressure(Pressure.valueOf(running));
        test.setFlow(Flow.valueOf(flow));
        return test;
    }

    static PipeSegment pipe(
            String name, PipeMaterial material, String bore, String length, String rise, String... fittings) {
        PipeSegment pipe = FACTORY.createPipeSegment();
        pipe.setName(name);
        pipe.setMaterial(material);
        pipe.setBore(Length.valueOf(bore));
        pipe.setLength(Length.valueOf(length));
        pipe.setRise(Length.valueOf(rise));
        for (String kind : fittings) {
            Fitting fitting = FACTORY.createFitting();
            fitting.setKind(kind);
            pipe.getFittings().add(fitting);
        }
        return pipe;
    }

    static DrawOff tap(String name, String flow, String teeAfter, String height) {
        DrawOff tap = FACTORY.createDrawOff();
        tap.setName(name);
        tap.setFlow(Flow.valueOf(flow));
        tap.setTeeAfter(teeAfter);
        tap.setHeight(Length.valueOf(height));
        tap.getSegments().add(pipe(name + " branch", PipeMaterial.COPPER, "13.6 mm", "2.5 m", "0 m"));
        return tap;
    }

    static Heater heater() {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("sample");
        heater.setTitle("Heater of the test");
        heater.setPower(Power.valueOf("9.5 kW"));
        heater.setVoltage(Voltage.valueOf("240 V"));
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
