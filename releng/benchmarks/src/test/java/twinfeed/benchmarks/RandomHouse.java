// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.Random;
import twinfeed.calculator.Candidate;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Flow;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/**
 * An invented house and a heater for it.
 *
 * @param survey the house
 * @param candidate the heater
 */
public record RandomHouse(Survey survey, Candidate candidate) {
    /** The house of a seed. */
    public static RandomHouse of(long seed) {
        Pick pick = new Pick(new Random(seed));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setTargetOutlet(Temperature.valueOf("40 °C"));
        survey.setWinterIntake(Temperature.valueOf(pick.reading(4, 8, "°C")));
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setOutsideZones(true);
        site.setSupplementaryBonding(true);
        survey.setSite(site);
        survey.setWater(RandomWater.of(pick));
        survey.setElectricity(RandomCircuit.of(pick));
        return new RandomHouse(survey, new Candidate(heater(pick), false));
    }

    private static Heater heater(Pick pick) {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("h");
        String half = pick.of("3.75 kW", "4.25 kW", "4.5 kW", "4.75 kW", "5.25 kW");
        heater.setPower(Power.ofSi(2 * Power.valueOf(half).si()));
        for (int i = 0; i < 2; i++) {
            Element element = CatalogueFactory.eINSTANCE.createElement();
            element.setPower(Power.valueOf(half));
            heater.getElements().add(element);
        }
        heater.setVoltage(Voltage.valueOf(pick.of("240 V", "240 V", "230 V")));
        heater.setElectronics(pick.is(30));
        heater.setMaximumDevice(Current.valueOf(pick.of("45 A", "50 A")));
        heater.setMaximumConductor(Area.valueOf("16 mm2"));
        heater.setIngress("IPX4");
        heater.setMaximumIntake(Temperature.valueOf("25 °C"));
        heater.setCutOutTemperature(Temperature.valueOf("55 °C"));
        hydraulics(pick, heater);
        return heater;
    }

    private static void hydraulics(Pick pick, Heater heater) {
        heater.setMinimumRunningPressure(Pressure.valueOf(pick.of("0.7 bar", "1.0 bar", "1.5 bar")));
        heater.setRunningPressureFlow(Flow.valueOf("8 L/min"));
        heater.setMaximumStaticPressure(Pressure.valueOf(pick.of("8 bar", "10 bar")));
        heater.setSwitchPlace(pick.of(SwitchPlace.INLET_CHAMBER, SwitchPlace.HEATING_CHAMBER));
        boolean inlet = heater.getSwitchPlace() == SwitchPlace.INLET_CHAMBER;
        heater.setMakePressure(Pressure.valueOf(inlet ? "0.30 bar" : "0.12 bar"));
        heater.setBreakPressure(Pressure.valueOf(inlet ? "0.20 bar" : "0.06 bar"));
        heater.setInletLoss(Pressure.valueOf("0.15 bar"));
        heater.setInletLossFlow(Flow.valueOf("8 L/min"));
        heater.setDownstreamPressure(Pressure.valueOf(inlet ? "0.25 bar" : "0.90 bar"));
        heater.setDownstreamFlow(Flow.valueOf("8 L/min"));
        heater.setThrottleMinimum(Pressure.valueOf("0.05 bar"));
        heater.setStabilised(pick.is(30));
        heater.setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
    }
}
