// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Voltage;

/** The parts of invented houses, from readings as a person types them: what the tests of all bundles make their surveys of. */
public final class SampleHouse {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private SampleHouse() {}

    /** A house with a water feed and an electrical feed of which only the voltage is known. */
    public static Survey fed(String supplyVoltage) {
        Survey survey = MAKE.createSurvey();
        survey.setWater(MAKE.createWaterFeed());
        survey.setElectricity(feed(supplyVoltage));
        return survey;
    }

    /** A house with a circuit of which nothing is known. */
    public static Survey wired() {
        Survey survey = MAKE.createSurvey();
        survey.setElectricity(MAKE.createElectricalFeed());
        survey.getElectricity().setCircuit(MAKE.createCircuit());
        return survey;
    }

    /** An electrical feed. */
    public static ElectricalFeed feed(String supplyVoltage) {
        ElectricalFeed feed = MAKE.createElectricalFeed();
        feed.setSupplyVoltage(Voltage.valueOf(supplyVoltage));
        return feed;
    }

    /** A protective device of a kind of the rule set, such as {@code breaker-b}. */
    public static ProtectiveDevice device(String kind, String rating) {
        ProtectiveDevice device = MAKE.createProtectiveDevice();
        device.setKind(kind);
        device.setRating(Current.valueOf(rating));
        return device;
    }

    /** A stretch of cable by one reference method. */
    public static CableSegment cable(String name, String size, String length, String method, Confidence confidence) {
        CableSegment cable = MAKE.createCableSegment();
        cable.setName(name);
        cable.setSize(Area.valueOf(size));
        cable.setLength(Length.valueOf(length));
        cable.setMethod(method);
        cable.setConfidence(confidence);
        return cable;
    }

    /** A load of the house. */
    public static Load load(String name, LoadKind kind, String current) {
        Load load = MAKE.createLoad();
        load.setName(name);
        load.setKind(kind);
        load.setCurrent(Current.valueOf(current));
        return load;
    }

    /** A test of the water supply at two points. */
    public static WaterTest waterTest(String staticPressure, String running, String flow) {
        WaterTest test = MAKE.createWaterTest();
        test.setStaticPressure(Pressure.valueOf(staticPressure));
        test.setRunningPressure(Pressure.valueOf(running));
        test.setFlow(Flow.valueOf(flow));
        return test;
    }

    /** A pipe of which name, material and length are known. */
    public static PipeSegment pipe(String name, PipeMaterial material, String length) {
        PipeSegment pipe = MAKE.createPipeSegment();
        pipe.setName(name);
        pipe.setMaterial(material);
        pipe.setLength(Length.valueOf(length));
        return pipe;
    }

    /** A pipe with its bore, its rise and its fittings. */
    public static PipeSegment pipe(
            String name, PipeMaterial material, String bore, String length, String rise, String... fittings) {
        PipeSegment pipe = pipe(name, material, length);
        pipe.setBore(Length.valueOf(bore));
        pipe.setRise(Length.valueOf(rise));
        for (String kind : fittings) {
            Fitting fitting = MAKE.createFitting();
            fitting.setKind(kind);
            pipe.getFittings().add(fitting);
        }
        return pipe;
    }

    /** A tap with 2.5 m of pipe of its own. */
    public static DrawOff tap(String name, String flow, String teeAfter, String height) {
        DrawOff tap = MAKE.createDrawOff();
        tap.setName(name);
        tap.setFlow(Flow.valueOf(flow));
        tap.setTeeAfter(teeAfter);
        tap.setHeight(Length.valueOf(height));
        tap.getSegments().add(pipe(name + " branch", PipeMaterial.COPPER, "13.6 mm", "2.5 m", "0 m"));
        return tap;
    }

    /** What somebody says of the unit; the answer is absent where it was told unasked. */
    public static Symptom symptom(String key, @Nullable FaultAnswer answer) {
        Symptom symptom = MAKE.createSymptom();
        symptom.setKey(key);
        if (answer != null) {
            symptom.setAnswer(answer);
        }
        return symptom;
    }

    /** A heater with the powers of its elements, if any are given. */
    public static Heater heater(String power, String voltage, String... elements) {
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
