// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.time.LocalDate;
import org.eclipse.emf.common.util.EList;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Current;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;

/** A survey of an invented dwelling. */
final class SampleSurvey {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private SampleSurvey() {}

    static Survey make() {
        Survey survey = MAKE.createSurvey();
        survey.setTakenBy("J. Sample");
        survey.setTakenOn(LocalDate.of(2026, 11, 20));
        survey.setTargetOutlet(Temperature.valueOf("40 °C"));
        survey.setCustomer(customer());
        survey.setSite(site());
        Symptom symptom = SampleHouse.symptom("goesColdWhenTapOpens", null);
        symptom.setNote("Goes cold when somebody fills the kettle");
        survey.getSymptoms().add(symptom);
        survey.setWater(water());
        survey.setElectricity(electricity());
        return survey;
    }

    private static Customer customer() {
        Customer customer = MAKE.createCustomer();
        customer.setName("Alderbrook Lettings");
        customer.setAddress("4 Mill Yard; Westermere; WM1 2AB");
        customer.setVulnerable(true);
        return customer;
    }

    private static Site site() {
        Site site = MAKE.createSite();
        site.setName("Rowan Cottage");
        site.setAddress("7 Rowan Lane; Westermere; WM3 4CD");
        site.setKind("terrace house");
        site.setLastInspection(LocalDate.of(2022, 5, 3));
        return site;
    }

    private static WaterFeed water() {
        WaterFeed water = MAKE.createWaterFeed();
        WaterTest test = SampleHouse.waterTest("3.2 bar ± 0.1 bar", "1.8 bar ± 0.1 bar", "9.5 L/min ± 5 %");
        test.setAtPeak(false);
        water.setTest(test);
        EList<PipeSegment> segments = water.getSegments();
        segments.add(pipe("rising main", "22 mm", "8.5 m"));
        segments.add(pipe("branch", "15 mm", "6.2 m ± 0.3 m"));
        water.setIntakeReading(Temperature.valueOf("9 °C u 0.3 K"));
        return water;
    }

    private static PipeSegment pipe(String name, String size, String length) {
        PipeSegment pipe = SampleHouse.pipe(name, PipeMaterial.COPPER, length);
        pipe.setSize(size);
        return pipe;
    }

    private static ElectricalFeed electricity() {
        ElectricalFeed feed = SampleHouse.feed("236 V ± 1 %");
        feed.setEarthing(Earthing.TN_CS);
        feed.setServiceFuse(Current.valueOf("80 A"));
        feed.setExternalLoop(Resistance.valueOf("0.24 ohm"));
        Circuit circuit = MAKE.createCircuit();
        circuit.setDevice(SampleHouse.device("breaker-b", "40 A"));
        circuit.getSegments().add(SampleHouse.cable("hall", "6 mm2", "9 m", "C", Confidence.SEEN));
        circuit.getSegments().add(SampleHouse.cable("loft", "6 mm2", "6.5 m ± 0.5 m", "101", Confidence.ASSUMED));
        feed.setCircuit(circuit);
        return feed;
    }
}
