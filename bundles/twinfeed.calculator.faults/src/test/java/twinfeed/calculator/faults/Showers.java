// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.units.Flow;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;
import twinfeed.units.Voltage;

/** An invented survey of a faulty unit, and a heater. */
final class Showers {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private Showers() {}

    static Heater heater() {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("sample");
        heater.setTitle("Heater of the test");
        heater.setPower(Power.valueOf("8.5 kW"));
        heater.setVoltage(Voltage.valueOf("240 V"));
        heater.setCoilResistance(Resistance.valueOf("3900 ohm ± 10 %"));
        heater.setMinimumRunningPressure(Pressure.valueOf("0.7 bar"));
        for (String each : List.of("4.5 kW", "4.0 kW")) {
            Element element = CatalogueFactory.eINSTANCE.createElement();
            element.setPower(Power.valueOf(each));
            heater.getElements().add(element);
        }
        return heater;
    }

    static Survey survey(String... symptoms) {
        Survey survey = MAKE.createSurvey();
        PresentUnit unit = MAKE.createPresentUnit();
        unit.setHeater(heater());
        survey.setUnit(unit);
        for (String key : symptoms) {
            say(survey, key, null);
        }
        return survey;
    }

    static void say(Survey survey, String key, FaultAnswer answer) {
        Symptom symptom = MAKE.createSymptom();
        symptom.setKey(key);
        if (answer != null) {
            symptom.setAnswer(answer);
        }
        survey.getSymptoms().add(symptom);
    }

    static FaultFinding record(Survey survey) {
        if (survey.getFaultFinding() == null) {
            survey.setFaultFinding(MAKE.createFaultFinding());
        }
        return survey.getFaultFinding();
    }

    /** Resistances in ohm; a negative one is open. */
    static void elements(Survey survey, double... ohms) {
        for (double ohm : ohms) {
            ElementReading reading = MAKE.createElementReading();
            if (ohm < 0) {
                reading.setOpen(true);
            } else {
                reading.setResistance(Resistance.ofSi(ohm));
            }
            record(survey).getElements().add(reading);
        }
    }

    static void isolate(Survey survey, String... steps) {
        for (String step : steps) {
            IsolationTick tick = MAKE.createIsolationTick();
            tick.setStep(step);
            tick.setBy("Demonstration engineer");
            tick.setAt("2026-10-06 09:45");
            record(survey).getIsolation().add(tick);
        }
    }

    static void isolate(Survey survey) {
        isolate(survey, Isolation.PROCEDURE.toArray(new String[0]));
    }

    /** Everything that can be said and measured. */
    static Survey full() {
        Survey survey = survey("halfHeatSlowestSetting");
        isolate(survey);
        elements(survey, 12.8, -1);
        FaultFinding record = record(survey);
        record.setCoil(Resistance.valueOf("3850 ohm"));
        record.setCutOutCloses(true);
        record.setSwitchCloses(true);
        record.setFlowHottest(Flow.valueOf("3 L/min"));
        record.setFlowColdest(Flow.valueOf("8 L/min"));
        record.setRunningPressure(Pressure.valueOf("1.5 bar"));
        return survey;
    }

    static Evidence evidence(Survey survey) {
        return Evidence.of(survey, survey.getUnit().getHeater(), Feeds.UNKNOWN, FaultData.own());
    }

    static Finding finding(Survey survey, String key) {
        return finding(survey, key, List.of());
    }

    /** With a margin at the switch as the pressure calculator would give it, Pa. */
    static Finding finding(Survey survey, String key, double marginPa) {
        return finding(survey, key, List.of(margin(marginPa)));
    }

    private static Calculator margin(double marginPa) {
        return new Calculator() {
            @Override
            public CalculatorDescriptor statement() {
                List<SharedQuantity> gives = List.of(SharedQuantity.SWITCH_MARGIN);
                return new CalculatorDescriptor(
                        "margin", "1", Runner.TEXTS, gives, List.of(), List.of(), List.of(), List.of());
            }

            @Override
            public Assessor prepare(Context context) {
                return (candidate, exchange, findings) -> exchange.give(SharedQuantity.SWITCH_MARGIN, marginPa);
            }
        };
    }

    private static Finding finding(Survey survey, String key, List<Calculator> others) {
        List<Calculator> all = new ArrayList<>(others);
        all.add(new FaultsCalculator());
        return new Runner(all, (mean, spread, month, southern) -> mean)
                .assess(survey, List.of(new Candidate(survey.getUnit().getHeater(), true)))
                .options()
                .get(0)
                .finding(key)
                .orElseThrow();
    }
}
