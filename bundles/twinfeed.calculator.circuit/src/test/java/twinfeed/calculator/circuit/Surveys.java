// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import java.util.Locale;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Duration;
import twinfeed.units.LetThrough;
import twinfeed.units.Resistance;

/** An invented house whose circuit suits a heater of 9.5 kW, and what the calculator says about it. */
final class Surveys {
    static final Runner RUNNER = new Runner(List.of(new CircuitCalculator()), (mean, spread, day, southern) -> mean);

    private Surveys() {}

    /** A heater with every datum that the circuit's checks use. */
    static Heater heater(String power, String voltage) {
        Heater heater = SampleHouse.heater(power, voltage);
        heater.setId("h");
        heater.setElectronics(false);
        heater.setMaximumDevice(Current.valueOf("45 A"));
        heater.setMaximumConductor(Area.valueOf("16 mm2"));
        heater.setIngress("IPX4");
        return heater;
    }

    static Survey suitable() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setOutsideZones(true);
        site.setSupplementaryBonding(true);
        survey.setSite(site);
        survey.setElectricity(feed());
        survey.getElectricity().setCircuit(circuit());
        return survey;
    }

    private static ElectricalFeed feed() {
        ElectricalFeed feed = SampleHouse.feed("238 V");
        feed.setEarthing(Earthing.TN_CS);
        feed.setServiceFuse(Current.valueOf("80 A"));
        feed.setExternalLoop(Resistance.valueOf("0.24 ohm"));
        feed.setProspectiveFault(Current.valueOf("1.1 kA"));
        feed.setMainSwitch(Current.valueOf("100 A"));
        feed.setTails(Area.valueOf("25 mm2"));
        feed.setEarthingConductor(Area.valueOf("16 mm2"));
        feed.setMainBonding(Area.valueOf("10 mm2"));
        feed.setSupplyNeutral(Area.valueOf("25 mm2"));
        feed.setSpareWay(true);
        feed.setDeviceApproved(true);
        feed.setAssemblyFaultRating(Current.valueOf("16 kA"));
        return feed;
    }

    private static Circuit circuit() {
        Circuit circuit = SurveyFactory.eINSTANCE.createCircuit();
        ProtectiveDevice device = SampleHouse.device("breaker-b", "40 A");
        device.setBreakingCapacity(Current.valueOf("6 kA"));
        device.setLetThrough(LetThrough.valueOf("54000 A²s"));
        circuit.setDevice(device);
        circuit.setRcd(residual());
        circuit.setIsolator(isolator());
        circuit.getSegments().add(segment("board to loft", "10 mm2", "4 m", "C"));
        circuit.getSegments().add(segment("drop to the shower", "10 mm2", "6.5 m", "C"));
        circuit.setInsulationResistance(Resistance.valueOf("200 Mohm"));
        return circuit;
    }

    private static ResidualDevice residual() {
        ResidualDevice rcd = SurveyFactory.eINSTANCE.createResidualDevice();
        rcd.setKind(RcdKind.RCCB);
        rcd.setType("A");
        rcd.setResidual(Current.valueOf("30 mA"));
        rcd.setRating(Current.valueOf("80 A"));
        rcd.setScope(RcdScope.SEVERAL);
        rcd.setLoad(Current.valueOf("22 A"));
        rcd.setTripTime(Duration.valueOf("28 ms"));
        return rcd;
    }

    private static Isolator isolator() {
        Isolator isolator = SurveyFactory.eINSTANCE.createIsolator();
        isolator.setKind("pull-cord");
        isolator.setRating(Current.valueOf("45 A"));
        isolator.setCondition(IsolatorCondition.SOUND);
        isolator.setMaximumConductor(Area.valueOf("16 mm2"));
        return isolator;
    }

    static CableSegment segment(String name, String size, String length, String method) {
        return SampleHouse.cable(name, size, length, method, Confidence.SEEN);
    }

    static List<Finding> findings(Survey survey, Heater heater) {
        return assess(survey, heater).options().get(0).findings();
    }

    static AssessmentResult assess(Survey survey, Heater heater) {
        return RUNNER.assess(survey, List.of(new Candidate(heater, false)));
    }

    static Finding finding(Survey survey, Heater heater, String key) {
        return findings(survey, heater).stream()
                .filter(finding -> finding.check().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding " + key));
    }

    static String sentence(Finding finding) {
        return new FindingText(RUNNER, Locale.ENGLISH).sentence(finding);
    }
}
