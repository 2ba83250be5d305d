// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.joda.money.Money;
import twinfeed.calculator.SampleHouse;
import twinfeed.diagnosis.repair.ReplacementOffer;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.pricing.book.PriceBookCsv;

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
            survey.getSymptoms().add(SampleHouse.symptom(key, null));
        }
        return survey;
    }

    /** One element sound, one open. */
    public static Survey openElement() {
        Survey survey = survey("halfHeatSlowestSetting");
        SampleVisits.elements(survey, 12.8, -1);
        return survey;
    }

    public static Heater heater() {
        return SampleHouse.heater("8.5 kW", "240 V", "4.5 kW", "4.0 kW");
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
