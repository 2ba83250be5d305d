// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis;

import twinfeed.calculator.SampleHouse;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.inference.Evidence;
import twinfeed.diagnosis.inference.SupplyState;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Flow;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;

/** Invented surveys of a faulty unit, and a heater. */
public final class SampleVisits {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private SampleVisits() {}

    public static Heater heater() {
        Heater heater = SampleHouse.heater("8.5 kW", "240 V", "4.5 kW", "4.0 kW");
        heater.setCoilResistance(Resistance.valueOf("3900 ohm ± 10 %"));
        heater.setMinimumRunningPressure(Pressure.valueOf("0.7 bar"));
        return heater;
    }

    public static Survey survey(String... symptoms) {
        Survey survey = MAKE.createSurvey();
        PresentUnit unit = MAKE.createPresentUnit();
        unit.setHeater(heater());
        survey.setUnit(unit);
        for (String key : symptoms) {
            say(survey, key, null);
        }
        return survey;
    }

    public static void say(Survey survey, String key, FaultAnswer answer) {
        survey.getSymptoms().add(SampleHouse.symptom(key, answer));
    }

    public static FaultFinding record(Survey survey) {
        if (survey.getFaultFinding() == null) {
            survey.setFaultFinding(MAKE.createFaultFinding());
        }
        return survey.getFaultFinding();
    }

    /** Resistances in ohm; a negative one is open. */
    public static void elements(Survey survey, double... ohms) {
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

    public static void isolate(Survey survey, String... steps) {
        for (String step : steps) {
            IsolationTick tick = MAKE.createIsolationTick();
            tick.setStep(step);
            tick.setBy("Demonstration engineer");
            tick.setAt("2026-10-06 09:45");
            record(survey).getIsolation().add(tick);
        }
    }

    public static void isolate(Survey survey) {
        isolate(survey, IsolationRecord.PROCEDURE.toArray(new String[0]));
    }

    /** Everything that can be said and measured. */
    public static Survey full() {
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

    public static Evidence evidence(Survey survey) {
        return Evidence.of(survey, survey.getUnit().getHeater(), SupplyState.UNKNOWN, FaultData.own());
    }
}
