// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.time.LocalDate;
import java.util.Locale;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.FaultReport;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.refusal.Refusals;

/** The faults of the unit that is there, by what an assessed job found. */
public final class AssessedFaults {
    private AssessedFaults() {}

    /** What a quote says of the fault; nothing where no unit is there. */
    static FaultReport report(AssessedJob judged, PriceBook book, LocalDate date, Locale locale) {
        if (judged.opened().job().getSurvey().getUnit() == null) {
            return FaultReport.NONE;
        }
        readData();
        return builder(judged, locale).report(book, date);
    }

    /**
     * Reads the figures of the fault-finding.
     *
     * @throws UnusableException if they cannot be used
     */
    public static void readData() {
        try {
            FaultSheetBuilder.readData();
        } catch (IllegalArgumentException unusable) {
            throw new UnusableException(String.valueOf(unusable.getMessage()), unusable);
        }
    }

    /**
     * Builds the sheet of a visit. A unit of unknown data is diagnosed from the reported symptoms only.
     *
     * @throws InputException if the survey has no unit
     */
    public static FaultSheetBuilder builder(AssessedJob judged, Locale locale) {
        OpenedJob opened = judged.opened();
        Survey survey = opened.job().getSurvey();
        if (survey.getUnit() == null) {
            throw new InputException(Refusals.of(opened.file(), "survey.unit", "", "fault.unit"));
        }
        Heater heater = judged.assessed().options().stream()
                .map(OptionResult::candidate)
                .filter(Candidate::present)
                .map(Candidate::heater)
                .findFirst()
                .orElseGet(CatalogueFactory.eINSTANCE::createHeater);
        OptionAssessment found = judged.record().getOptions().stream()
                .filter(option -> Boolean.TRUE.equals(option.getPresent()))
                .findFirst()
                .orElseGet(AssessmentFactory.eINSTANCE::createOptionAssessment);
        return new FaultSheetBuilder(survey, heater, found, judged.unansweredChecks(), locale);
    }
}
