// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.search.WorkCost;
import twinfeed.diagnosis.repair.ReplacementOffer;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.document.JobSheet;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.Offers;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Survey;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.pricing.FaultReport;
import twinfeed.usecase.faults.JobSheetWriter;
import twinfeed.workbook.JobSheetWorkbook;

/** The fault-finding at the unit that is there, beside what a new one would cost. */
final class FaultFindingService {
    private final TwinfeedService service;
    private final OpenedJob opened;
    private final Locale locale;

    FaultFindingService(TwinfeedService service, OpenedJob opened, Locale locale) {
        this.service = service;
        this.opened = opened;
        this.locale = locale;
    }

    FaultSheet sheet(@Nullable PriceBook book, LocalDate date) {
        readData();
        if (book == null) {
            // Tolerances are counted with and without prices alike, or the two would blame different parts.
            List<Candidate> present = new Candidates(opened)
                    .all().stream().filter(Candidate::present).toList();
            return desk(service.judge(opened, present, WorkCost.BY_COUNT, locale), locale)
                    .sheet();
        }
        return sheet(service.judge(opened, book, null, locale), book, date);
    }

    /** The same from what was judged already, with all candidates and by the same book. */
    FaultSheet sheet(AssessedJob judged, PriceBook book, LocalDate date) {
        readData();
        return desk(judged, locale).sheet(book, date, offers(judged, book, date));
    }

    /** What a quote says of the fault; nothing where no unit is there. */
    static FaultReport report(AssessedJob judged, PriceBook book, LocalDate date, Locale locale) {
        if (judged.opened().job().getSurvey().getUnit() == null) {
            return FaultReport.NONE;
        }
        readData();
        return desk(judged, locale).report(book, date);
    }

    static void readData() {
        try {
            FaultSheetBuilder.readData();
        } catch (IllegalArgumentException unusable) {
            throw new UnusableException(String.valueOf(unusable.getMessage()), unusable);
        }
    }

    /** A unit of unknown data is sought by what is said of it alone: no finding, no band. */
    private static FaultSheetBuilder desk(AssessedJob judged, Locale locale) {
        OpenedJob opened = judged.opened();
        Survey survey = opened.job().getSurvey();
        if (survey.getUnit() == null) {
            throw new InputException(new InputProblem(
                    opened.file().toString(),
                    0,
                    "survey.unit",
                    "",
                    "no unit is there whose fault could be found",
                    "give the unit, with its heaterId or the data of its heater where they are known"));
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

    /** New units as they would be quoted; none where nothing suits, which is no reason not to find a fault. */
    private List<ReplacementOffer> offers(AssessedJob judged, PriceBook book, LocalDate date) {
        Quote quote;
        try {
            quote = service.quote(judged, book, date, FirmFile.none(), locale);
        } catch (UnusableException nothingSuits) {
            return List.of();
        }
        return quote.getOptions().stream()
                .filter(option -> !Offers.stays(option))
                .filter(option -> option.getNet() != null && option.getHeaterId() != null)
                .map(option -> offer(option, quote))
                .toList();
    }

    private static ReplacementOffer offer(QuoteOption option, Quote quote) {
        return new ReplacementOffer(
                option.getHeaterId(),
                option.getTitle(),
                Money.of(CurrencyUnit.of(quote.getCurrency()), option.getNet()),
                !option.getEnquiries().isEmpty());
    }

    void write(FaultSheet sheet, FirmFile firm, LocalDate day, OutputPaths out) {
        String file = String.valueOf(opened.file().getFileName());
        JobSheet job = new JobSheetWriter(sheet, opened.job().getSurvey(), locale)
                .write(file.replaceFirst("\\.job$", ""), firm.firm(), TwinfeedService.VERSION, day);
        new OutputFiles()
                .add(out.workbook(), bytes -> JobSheetWorkbook.write(job, bytes))
                .add(out.pdf(), bytes -> JobSheetPdf.write(job, bytes))
                .write();
    }
}
