// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.Money;
import twinfeed.diagnosis.repair.ReplacementOffer;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.pricing.book.PriceBookCsv;
import twinfeed.units.Power;
import twinfeed.units.Resistance;
import twinfeed.units.Voltage;

/** Invented visits with findings of the supplies and with prices. */
public final class PricedVisits {
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private PricedVisits() {}

    public static Survey survey(String... symptoms) {
        Survey survey = MAKE.createSurvey();
        PresentUnit unit = MAKE.createPresentUnit();
        unit.setAge(7);
        survey.setUnit(unit);
        for (String key : symptoms) {
            Symptom symptom = MAKE.createSymptom();
            symptom.setKey(key);
            survey.getSymptoms().add(symptom);
        }
        return survey;
    }

    /** One element sound, one open. */
    public static Survey openElement() {
        Survey survey = survey("halfHeatSlowestSetting");
        survey.setFaultFinding(MAKE.createFaultFinding());
        ElementReading sound = MAKE.createElementReading();
        sound.setResistance(Resistance.valueOf("12.8 ohm"));
        ElementReading open = MAKE.createElementReading();
        open.setOpen(true);
        survey.getFaultFinding().getElements().addAll(List.of(sound, open));
        return survey;
    }

    public static void isolate(Survey survey, String... steps) {
        for (String step : steps) {
            IsolationTick tick = MAKE.createIsolationTick();
            tick.setStep(step);
            tick.setBy("Demonstration engineer");
            tick.setAt("2026-10-06 09:45");
            survey.getFaultFinding().getIsolation().add(tick);
        }
    }

    public static Heater heater() {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("sample");
        heater.setTitle("Heater of the test");
        heater.setPower(Power.valueOf("8.5 kW"));
        heater.setVoltage(Voltage.valueOf("240 V"));
        for (String each : List.of("4.5 kW", "4.0 kW")) {
            Element element = CatalogueFactory.eINSTANCE.createElement();
            element.setPower(Power.valueOf(each));
            heater.getElements().add(element);
        }
        return heater;
    }

    public static OptionAssessment present() {
        OptionAssessment present = AssessmentFactory.eINSTANCE.createOptionAssessment();
        present.setPresent(true);
        return present;
    }

    public static OptionAssessment with(CheckTopic topic, Outcome outcome, String text) {
        OptionAssessment present = present();
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setTopic(topic);
        finding.setOutcome(outcome);
        finding.setText(text);
        present.getFindings().add(finding);
        return present;
    }

    public static FaultSheetBuilder desk(Survey survey, OptionAssessment present) {
        return new FaultSheetBuilder(survey, heater(), present, 0, Locale.ROOT);
    }

    public static PriceBook book() throws IOException {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isRegularFile(folder.resolve("demo/prices.csv"))) {
            folder = folder.getParent();
        }
        return PriceBookCsv.read(folder.resolve("demo/prices.csv")).bookOrThrow();
    }

    public static ReplacementOffer offer(String heater, String price) {
        return new ReplacementOffer(heater, "Heater " + heater, Money.parse("GBP " + price), false);
    }
}
