// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.diagnosis.completion.CompletionAssessment;
import twinfeed.diagnosis.completion.CompletionHouse;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.JobSheet;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Completion;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.Survey;
import twinfeed.pdf.JobSheetPdf;
import twinfeed.usecase.completion.CompletionRecordWriter;
import twinfeed.usecase.completion.CustomerPageWriter;
import twinfeed.usecase.completion.PartsListWriter;
import twinfeed.usecase.completion.UnsafeNoticeWriter;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.workbook.JobSheetWorkbook;

/** What comes after the work: readings judged in the house as it was finished, and the pages that are printed of it. */
final class CompletionService {
    private final TwinfeedService service;
    private final Runner runner;
    private final Locale locale;

    CompletionService(TwinfeedService service, Runner runner, Locale locale) {
        this.service = service;
        this.runner = runner;
        this.locale = locale;
    }

    /** Judges what was entered, in the house with the work of that unit's option done. */
    CompletionSheet sheet(OpenedJob opened, WorkCost.Source costs) {
        Completion completion = opened.job().getCompletion();
        if (completion == null) {
            throw new InputException(new InputProblem(
                    opened.file().toString(),
                    0,
                    "completion",
                    "",
                    "no readings were entered after the work",
                    "enter them, for example complete JOB --by NAME --reading loop=\"0.42 ohm\""));
        }
        return sheet(finished(opened, costs), completion);
    }

    /** The house with the work of the unit's option done. */
    FinishedHouse finished(OpenedJob opened, WorkCost.Source costs) {
        Completion completion = opened.job().getCompletion();
        Candidate candidate = candidate(opened, completion == null ? null : completion.getHeaterId());
        AssessedJob before = service.judge(opened, List.of(candidate), costs, locale);
        WorkPlan plan = before.plans().get(0);
        Survey surveyed = TwinfeedService.withPresentHeater(opened.job().getSurvey(), List.of(candidate));
        Survey house = EcoreUtil.copy(surveyed);
        plan.works().forEach(work -> work.edit().accept(house));
        return new FinishedHouse(
                house,
                candidate,
                before.record().getOptions().get(0).getRemedies().stream()
                        .map(Remedy::getTitle)
                        .toList());
    }

    /** Judges readings in a finished house; neither is changed. */
    CompletionSheet sheet(FinishedHouse finished, Completion completion) {
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
                CompletionAssessment.of(
                        completion,
                        house,
                        candidate.heater(),
                        judged(house, candidate),
                        judged(forLimits, candidate),
                        locale));
    }

    /** What the checks say of a unit in a house as it stands. */
    private OptionAssessment judged(Survey house, Candidate candidate) {
        AssessmentResult after = runner.assess(house, List.of(candidate));
        List<WorkPlan> none = after.options().stream()
                .map(option -> new WorkPlan(
                        List.of(), option, option, option.verdict(), List.of(), WorkCost.BY_COUNT.of(List.of()), false))
                .toList();
        return new AssessmentMapper(runner, locale)
                .record(after, none, TwinfeedService.VERSION)
                .getOptions()
                .get(0);
    }

    private static Candidate candidate(OpenedJob opened, @Nullable String heaterId) {
        Candidates candidates = new Candidates(opened);
        return heaterId == null
                ? candidates.all().stream()
                        .filter(Candidate::present)
                        .findFirst()
                        .orElseThrow(() -> new InputException(new InputProblem(
                                opened.file().toString(),
                                0,
                                "completion.heaterId",
                                "",
                                "no unit is there, and none is named as fitted",
                                "give the id of the unit that was fitted")))
                : candidates.only(heaterId).stream()
                        .filter(each -> !each.present())
                        .findFirst()
                        .orElseThrow();
    }

    void write(OpenedJob opened, CompletionSheet sheet, FirmFile firm, LocalDate day, CompletionPaths out) {
        JobSheet record = new CompletionRecordWriter(
                        sheet, runner.assess(sheet.house(), List.of()).rules(), locale)
                .write(reference(opened), firm.firm(), TwinfeedService.VERSION, day);
        JobSheet page = new CustomerPageWriter(sheet, locale)
                .write(reference(opened), firm.firm(), TwinfeedService.VERSION, day);
        new OutputFiles()
                .add(out.record().workbook(), bytes -> JobSheetWorkbook.write(record, bytes))
                .add(out.record().pdf(), bytes -> JobSheetPdf.write(record, bytes))
                .add(out.customer().workbook(), bytes -> JobSheetWorkbook.write(page, bytes))
                .add(out.customer().pdf(), bytes -> JobSheetPdf.write(page, bytes))
                .write();
    }

    /** What makes the unit that is there unsafe: failed checks of safety, and readings after the work. */
    List<Reason> reasons(OpenedJob opened, WorkCost.Source costs) {
        List<Reason> all = new ArrayList<>();
        if (opened.job().getCompletion() != null) {
            return reasons(sheet(opened, costs));
        }
        List<Candidate> present =
                new Candidates(opened).all().stream().filter(Candidate::present).toList();
        AssessedJob judged = service.judge(opened, present, costs, locale);
        for (OptionAssessment option : judged.record().getOptions()) {
            for (Finding finding : option.getFindings()) {
                if (finding.getKind() == FindingClass.SAFETY && finding.getOutcome() == Outcome.FAILS) {
                    all.add(new Reason(finding.getKey(), finding.getTitle(), finding.getText()));
                }
            }
        }
        return all;
    }

    /** What makes the unit unsafe by what was measured after the work, and by the checks of the house as it was finished. */
    static List<Reason> reasons(CompletionSheet sheet) {
        return sheet.unsafe().stream()
                .map(each -> new Reason(
                        each.key(),
                        each.title(),
                        each.expected().isEmpty() ? each.value() : each.value() + " (" + each.expected() + ")"))
                .toList();
    }

    void notice(OpenedJob opened, List<Reason> reasons, FirmFile firm, LocalDate day, OutputPaths out) {
        Completion completion = opened.job().getCompletion();
        Heater heater = candidate(opened, completion == null ? null : completion.getHeaterId())
                .heater();
        String title = heater.getTitle() == null ? String.valueOf(heater.getId()) : heater.getTitle();
        JobSheet notice = new UnsafeNoticeWriter(opened.job().getSurvey(), reasons, locale)
                .write(reference(opened), title, firm.firm(), TwinfeedService.VERSION, day);
        write(notice, out);
    }

    /** The option that the customer accepted. */
    static QuoteOption accepted(IssuedQuote issued) {
        Quote quote = issued.quote();
        if (quote.getState() != QuoteState.ACCEPTED || quote.getChosen() == null) {
            throw new UnusableException(
                    issued.file() + ": quote " + issued.name()
                            + " was not accepted, so nothing is to be packed; record the customer's acceptance first",
                    new IllegalArgumentException(issued.name()));
        }
        return quote.getOptions().stream()
                .filter(option -> quote.getChosen().equals(option.getName()))
                .findFirst()
                .orElseThrow(() -> new UnusableException(
                        issued.file() + ": quote " + issued.name() + " has no option " + quote.getChosen()
                                + ", which it names as chosen; verify the file",
                        new IllegalArgumentException(quote.getChosen())));
    }

    void parts(IssuedQuote issued, Survey survey, FirmFile firm, LocalDate day, OutputPaths out) {
        write(
                PartsListWriter.write(
                        issued.name(), survey, accepted(issued), firm.firm(), TwinfeedService.VERSION, day, locale),
                out);
    }

    private static void write(JobSheet sheet, OutputPaths out) {
        new OutputFiles()
                .add(out.workbook(), bytes -> JobSheetWorkbook.write(sheet, bytes))
                .add(out.pdf(), bytes -> JobSheetPdf.write(sheet, bytes))
                .write();
    }

    private static String reference(OpenedJob opened) {
        Path name = opened.file().getFileName();
        return String.valueOf(name).replaceFirst("\\.job$", "");
    }
}
