// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.ExpectedText;
import twinfeed.calculator.SampleHouse;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultStep;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.units.Concentration;
import twinfeed.units.Duration;
import twinfeed.units.Flow;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.units.Voltage;

/** Whole sheets of invented visits, in English and German: every line of the expected texts was read and checked by hand. */
class WholeSheetTest {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;
    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private static void same(String name, Survey survey, Heater heater, OptionAssessment present, int unanswered)
            throws IOException {
        for (Locale locale : LANGUAGES) {
            FaultSheet sheet = new FaultSheetBuilder(survey, heater, present, unanswered, locale).sheet();
            ExpectedText.same(WholeSheetTest.class, file(name, locale), SheetText.of(sheet));
        }
    }

    private static String file(String name, Locale locale) {
        return name + "_" + locale.getLanguage() + ".txt";
    }

    private static void note(Survey survey, String key, String note, String by) {
        Symptom symptom = survey.getSymptoms().stream()
                .filter(each -> key.equals(each.getKey()))
                .findFirst()
                .orElseThrow();
        symptom.setNote(note);
        symptom.setBy(by);
        symptom.setAt("2026-10-06 09:30");
    }

    private static void finding(OptionAssessment present, CheckTopic topic, Outcome outcome, String text) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setTopic(topic);
        finding.setOutcome(outcome);
        finding.setText(text);
        present.getFindings().add(finding);
    }

    private static void isolator(Survey survey, IsolatorCondition condition) {
        Circuit circuit = MAKE.createCircuit();
        Isolator isolator = MAKE.createIsolator();
        isolator.setCondition(condition);
        circuit.setIsolator(isolator);
        survey.setElectricity(SampleHouse.feed("238 V"));
        survey.getElectricity().setCircuit(circuit);
    }

    /** One of two elements is open: 240 V over 12.8 ohm are 4.5 kW; the sound pair would be 6.776 ohm. */
    @Test
    void anOpenElementWithEveryReadingAndPrices() throws IOException {
        Survey survey = SampleVisits.full();
        survey.getUnit().setAge(7);
        SampleVisits.say(survey, "kettling", FaultAnswer.UNKNOWN);
        SampleVisits.say(survey, "singsAtNight", null);
        note(survey, "halfHeatSlowestSetting", "Since Sunday.", "Invented customer");
        note(survey, "kettling", "Nobody listened", "");
        SampleVisits.record(survey).getElements().get(0).setName("lower");
        FaultStep step = MAKE.createFaultStep();
        step.setWhat("Element measured twice.");
        step.setBy("Demonstration engineer");
        step.setAt("2026-10-06 10:15");
        SampleVisits.record(survey).getSteps().add(step);
        survey.setWater(MAKE.createWaterFeed());
        survey.getWater().setHardness(Concentration.valueOf("280 mg/L"));
        survey.getWater().setIntakeReading(Temperature.valueOf("12 °C"));
        OptionAssessment present = PricedVisits.present();
        finding(present, CheckTopic.SWITCH_ON, Outcome.PASSES, "The switch keeps on.");
        finding(present, CheckTopic.OPEN_ELEMENT, Outcome.FAILS, "About half of the heat is left.");
        for (Locale locale : LANGUAGES) {
            FaultSheet sheet = new FaultSheetBuilder(survey, survey.getUnit().getHeater(), present, 2, locale)
                    .sheet(
                            PricedVisits.book(),
                            LocalDate.of(2026, 11, 25),
                            List.of(PricedVisits.offer("dear", "700.00"), PricedVisits.offer("cheap", "450.00")));
            ExpectedText.same(WholeSheetTest.class, file("open-element", locale), SheetText.of(sheet));
        }
    }

    /** The cut-out trips for want of water: a stuck flow valve, 0.5 bar where 0.7 bar are needed, and it shuts off after 5 min. */
    @Test
    void aCutOutThatTripsForWantOfWater() throws IOException {
        Survey survey =
                SampleVisits.survey("cutOutTripsRepeatedly", "kettling", "someHeatButWeak", "goesColdWhenTapOpens");
        SampleVisits.record(survey).setFlowHottest(Flow.valueOf("3 L/min"));
        SampleVisits.record(survey).setFlowColdest(Flow.valueOf("3.5 L/min"));
        SampleVisits.record(survey).setRunningPressure(Pressure.valueOf("0.5 bar"));
        SampleVisits.record(survey).setShutOffTime(Duration.valueOf("300 s"));
        SampleVisits.record(survey).setSwitchCloses(false);
        SampleVisits.record(survey).setCutOutCloses(false);
        SampleVisits.record(survey).setCoil(Resistance.valueOf("900 ohm"));
        SampleVisits.elements(survey, 12.8, 20);
        survey.setTargetOutlet(Temperature.valueOf("38 °C"));
        survey.setWinterIntake(Temperature.valueOf("8 °C"));
        OptionAssessment present = PricedVisits.present();
        present.setTitle("Shower of the house");
        finding(present, CheckTopic.SWITCH_DROP_OUT, Outcome.TOO_CLOSE, "With the tap open 0.31 bar of 0.30 bar.");
        finding(present, CheckTopic.SUMMER_OUTLET, Outcome.FAILS, "In July it would run at 61 °C.");
        finding(present, CheckTopic.VOLTAGE_DROP, Outcome.FAILS, "The cable takes 7 %.");
        same("cut-out", survey, survey.getUnit().getHeater(), present, 0);
    }

    /** Nothing works, the isolator is scorched, and nobody knows the unit; the procedure has a step more, and one is ticked out of order. */
    @Test
    void aScorchedIsolatorAndAnUnknownUnit() throws IOException {
        Survey survey = PricedVisits.survey("deadNothing");
        survey.getUnit().eUnset(survey.getUnit().eClass().getEStructuralFeature("age"));
        isolator(survey, IsolatorCondition.SCORCHED);
        SampleVisits.isolate(survey, "noticeUp", "showerOff");
        Heater unknown = CatalogueFactory.eINSTANCE.createHeater();
        same("isolator", survey, unknown, PricedVisits.present(), 0);
        unknown.setId("h-17");
        org.junit.jupiter.api.Assertions.assertEquals(
                "h-17",
                new FaultSheetBuilder(survey, unknown, PricedVisits.present(), 0, Locale.ROOT)
                        .sheet()
                        .heater());
    }

    /** Nobody has taken the cover off yet: the next step names all that has to be done before. */
    @Test
    void aUnitThatStaysColdBeforeTheCoverIsOff() throws IOException {
        Survey survey = SampleVisits.survey("coldOnEverySettingFlowGood");
        twinfeed.diagnosis.data.FaultData.own().observations().values().stream()
                .filter(each -> each.place().safe() && !each.key().equals("coldOnEverySettingFlowGood"))
                .forEach(each -> SampleVisits.say(survey, each.key(), FaultAnswer.UNKNOWN));
        survey.setElectricity(SampleHouse.feed("240 V"));
        survey.getElectricity().setSupplyVoltage(Voltage.valueOf("240 V"));
        same("cold", survey, survey.getUnit().getHeater(), PricedVisits.present(), 1);
    }

    /** Two things at once: an element and the coil are open. */
    @Test
    void twoPartsHaveFailed() throws IOException {
        Survey survey = SampleVisits.survey();
        SampleVisits.isolate(survey);
        SampleVisits.elements(survey, 12.8, -1);
        SampleVisits.record(survey).setCoilOpen(true);
        for (Locale locale : LANGUAGES) {
            FaultSheet sheet = new FaultSheetBuilder(
                            survey, survey.getUnit().getHeater(), PricedVisits.present(), 0, locale)
                    .sheet(PricedVisits.book(), PricedVisits.DAY, List.of());
            ExpectedText.same(WholeSheetTest.class, file("two-parts", locale), SheetText.of(sheet));
        }
    }
}
