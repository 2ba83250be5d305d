// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.search.WorkCost;
import twinfeed.diagnosis.repair.ReplacementOffer;
import twinfeed.diagnosis.visit.FaultLog;
import twinfeed.diagnosis.visit.FaultQuestion;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.document.JobSheet;
import twinfeed.model.check.Offers;
import twinfeed.model.io.JobFile;
import twinfeed.model.io.LockedFile;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.pricing.QuoteException;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Candidates;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobSheetFiles;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.AssessedFaults;
import twinfeed.usecase.quote.QuotingService;

/** The fault-finding at the unit that is there, beside what a new one would cost. */
public final class FaultFindingService {
    private final TwinfeedService service;

    /** With the calculators of this service. */
    public FaultFindingService(TwinfeedService service) {
        this.service = service;
    }

    /**
     * Finds the fault of the unit that is there: ranked causes, the next step, and repair or replacement by price.
     *
     * @param opened the job
     * @param book price book for repair and replacement; null leaves prices out
     * @param date day of the prices
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if the survey has no unit
     */
    public FaultSheet sheet(OpenedJob opened, @Nullable PriceBook book, LocalDate date, Locale locale) {
        AssessedFaults.readData();
        if (book == null) {
            // Tolerances are counted with and without prices alike, or the two would blame different parts.
            AssessedJob judged =
                    service.judgeCandidates(opened, new Candidates(opened).present(), WorkCost.BY_COUNT, locale);
            return AssessedFaults.builder(judged, locale).sheet();
        }
        return sheet(service.judge(opened, book, null, locale), book, date, locale);
    }

    /**
     * The same for a job that was judged already, with repair and replacement priced.
     *
     * @param judged the job, judged with all its candidates and by that book
     * @param book price book for repair and replacement
     * @param date day of the prices
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if the survey has no unit
     * @throws UnusableException if the book does not hold on that day
     */
    public static FaultSheet sheet(AssessedJob judged, PriceBook book, LocalDate date, Locale locale) {
        AssessedFaults.readData();
        try {
            return AssessedFaults.builder(judged, locale).sheet(book, date, offers(judged, book, date, locale));
        } catch (QuoteException refused) {
            throw new UnusableException(judged.opened().file() + ": " + refused.getMessage(), refused);
        }
    }

    /**
     * The questions that a fault-finding may ask, those without opening anything first.
     *
     * @param locale language of the texts
     */
    public static List<FaultQuestion> questions(Locale locale) {
        AssessedFaults.readData();
        return FaultQuestion.all(locale);
    }

    /**
     * Enters ticks of the safe isolation and answers into a job, then saves it; nothing is saved if one is refused. Whatever others
     * have entered meanwhile is kept: the job is read, changed and saved under a lock.
     *
     * @param file the job
     * @param catalogue heater catalogue instead of the one that the job names; null for that one
     * @param by who ticks and answers
     * @param at when, as text
     * @param ticks keys of the steps, in the order in which they were done
     * @param answers answers by key of the observation
     * @return the job as it was saved
     * @throws twinfeed.model.io.InputException if the job cannot be used or written, or a tick or answer is refused
     */
    public OpenedJob record(
            Path file,
            @Nullable Path catalogue,
            String by,
            String at,
            List<String> ticks,
            Map<String, String> answers) {
        return LockedFile.during(file, () -> {
            OpenedJob opened = service.open(file, catalogue);
            new FaultLog(opened.job().getSurvey(), file.toString(), by, at).enter(ticks, answers);
            JobFile.save(opened.job(), file, opened.fingerprint());
            return opened;
        });
    }

    /** New units as they would be quoted; none where nothing suits, which is no reason not to find a fault. */
    private static List<ReplacementOffer> offers(AssessedJob judged, PriceBook book, LocalDate date, Locale locale) {
        Quote quote;
        try {
            quote = QuotingService.draft(judged, book, date, FirmFile.none(), locale);
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

    /**
     * Writes the job sheet of a fault-finding as a workbook, as a PDF or as both; all of it appears, or nothing.
     *
     * @param opened the job
     * @param sheet what was found
     * @param firm whose sheet it is
     * @param day day of the visit and of the prices
     * @param locale language of the sheet, that of its texts
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public static void write(
            OpenedJob opened, FaultSheet sheet, FirmFile firm, LocalDate day, Locale locale, OutputPaths out) {
        JobSheet job = new JobSheetWriter(sheet, opened.job().getSurvey(), locale)
                .write(opened.name(), firm.firm(), TwinfeedService.VERSION, day);
        new JobSheetFiles().add(job, out).write();
    }
}
