// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.diagnosis.completion.CompletionAssessment;
import twinfeed.diagnosis.completion.CompletionHouse;
import twinfeed.diagnosis.completion.CompletionLog;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.JobSheet;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.io.LockedFile;
import twinfeed.model.job.Completion;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.TranslatedBook;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.BookCosts;
import twinfeed.usecase.Candidates;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobSheetFiles;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.refusal.Refusals;

/** What comes after the work: readings judged in the house as it was finished, and the pages that are printed of it. */
public final class CompletionService {
    private final TwinfeedService service;

    /** With the calculators of this service. */
    public CompletionService(TwinfeedService service) {
        this.service = service;
    }

    /**
     * Enters the readings taken when the work is finished into a job, then saves it; nothing is saved if one is refused.
     *
     * @param file the job
     * @param catalogue heater catalogue instead of the one that the job names; null for that one
     * @param by who tested
     * @param on the day
     * @param readings texts by name of the field, see {@link CompletionLog}
     * @return the job as it was saved
     * @throws InputException if the job cannot be used or written, or a reading is refused
     */
    public OpenedJob record(
            Path file, @Nullable Path catalogue, String by, LocalDate on, Map<String, String> readings) {
        return LockedFile.during(file, () -> {
            OpenedJob opened = service.open(file, catalogue);
            new CompletionLog(opened.job(), file.toString()).enter(by, on, readings);
            OpenedJob checked = service.checked(opened, opened.job());
            JobFile.save(opened.job(), file, opened.fingerprint());
            return checked;
        });
    }

    /**
     * Judges the readings taken when the work is finished, in the house with that work done.
     *
     * @param opened the job
     * @param book price book by which the work was found; null for the fewest works
     * @param locale language of the texts
     * @throws InputException if no readings were entered
     */
    public CompletionSheet sheet(OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        Completion completion = opened.job().getCompletion();
        if (completion == null) {
            throw new InputException(Refusals.of(opened.file(), "completion", "", "completion.none"));
        }
        return sheet(finished(opened, book, locale), completion, locale);
    }

    /**
     * The house as it should be when the work is finished: for judging readings one after the other while they are typed.
     *
     * @param opened the job; what it says of the finished work may be absent
     * @param book price book by which the work was found; null for the fewest works
     * @param locale language of the texts
     * @throws InputException if there is no unit in it
     */
    public FinishedHouse finished(OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        Candidate candidate = fitted(opened);
        AssessedJob before = service.judgeCandidates(opened, List.of(candidate), BookCosts.of(book, opened), locale);
        WorkPlan plan = before.plans().get(0);
        Survey house = Candidates.withPresentHeater(opened.job().getSurvey(), List.of(candidate));
        plan.works().forEach(work -> work.edit().accept(house));
        List<Remedy> remedies = before.record().getOptions().get(0).getRemedies();
        return new FinishedHouse(
                house,
                book == null ? candidate : named(candidate, book, locale),
                remedies.stream().map(Remedy::getTitle).toList(),
                remedies.stream()
                        .map(each -> each.getCustomerTitle() == null ? each.getTitle() : each.getCustomerTitle())
                        .toList());
    }

    /** The unit with its name in the language, as far as the price book has it there. */
    private static Candidate named(Candidate candidate, PriceBook book, Locale locale) {
        String title = candidate.heater().getTitle();
        if (title == null) {
            return candidate;
        }
        Heater heater = EcoreUtil.copy(candidate.heater());
        heater.setTitle(TranslatedBook.text(book, locale, title));
        return new Candidate(heater, candidate.present());
    }

    /** Judges readings in a finished house; neither is changed. */
    public CompletionSheet sheet(FinishedHouse finished, Completion completion, Locale locale) {
        Candidate candidate = finished.candidate();
        Survey house = EcoreUtil.copy(finished.house());
        CompletionHouse.enter(completion, house);
        Survey forLimits = EcoreUtil.copy(house);
        CompletionHouse.enterForLimits(forLimits);
        return new CompletionSheet(
                completion,
                house,
                candidate.heater(),
                !candidate.present(),
                finished.works(),
                finished.customerWorks(),
                CompletionAssessment.of(
                        completion,
                        house,
                        candidate.heater(),
                        judged(house, candidate, locale),
                        judged(forLimits, candidate, locale),
                        locale));
    }

    private OptionAssessment judged(Survey house, Candidate candidate, Locale locale) {
        return service.asItStands(house, List.of(candidate), locale)
                .getOptions()
                .get(0);
    }

    /** The unit that is there when the work is finished: the one that the job names as fitted, else the one of the survey. */
    static Candidate fitted(OpenedJob opened) {
        Completion completion = opened.job().getCompletion();
        String heaterId = completion == null ? null : completion.getHeaterId();
        Candidates candidates = new Candidates(opened);
        return heaterId == null
                ? candidates.present().stream()
                        .findFirst()
                        .orElseThrow(() -> new InputException(
                                Refusals.of(opened.file(), "completion.heaterId", "", "completion.unit")))
                : candidates.only(heaterId).stream()
                        .filter(each -> !each.present())
                        .findFirst()
                        .orElseThrow();
    }

    /**
     * Writes the record of finished work and the page for the customer; all of it appears, or nothing.
     *
     * @param day the day on which they are printed
     * @throws InputException if a file cannot be written
     */
    public static void write(
            OpenedJob opened, CompletionSheet sheet, FirmFile firm, LocalDate day, Locale locale, CompletionPaths out) {
        JobSheet record = new CompletionRecordWriter(sheet, Runner.rules(sheet.house()), locale)
                .write(opened.name(), firm.firm(), TwinfeedService.VERSION, day);
        JobSheet page =
                new CustomerPageWriter(sheet, locale).write(opened.name(), firm.firm(), TwinfeedService.VERSION, day);
        new JobSheetFiles().add(record, out.record()).add(page, out.customer()).write();
    }
}
