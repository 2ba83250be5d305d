// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.check.FieldPath;
import twinfeed.model.check.FutureDates;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
import twinfeed.model.rows.CsvLines;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.pricing.QuoteException;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.faults.FaultFindingService;
import twinfeed.usecase.quote.QuotingService;
import twinfeed.usecase.refusal.Refusals;
import twinfeed.workbook.form.FormLanguage;

/**
 * Judges and prices one row of a list after another, each as the survey of a template job with the row's own values put in. What comes of a row
 * depends on that row, on the head and on the task alone, so that rows may be judged in any order, by several threads and on several machines.
 */
public final class RowJudge {
    private final TwinfeedService service;
    private final BatchTask task;
    private final String list;
    private final FormLanguage language;
    private final Columns columns;
    private final List<String> labels;
    private final DwellingSheets sheets;
    private final AlikeHouses houses;

    /**
     * For the rows below a head.
     *
     * @param list what messages call the list
     * @param head the row that names the columns
     * @throws InputException if a column is no field of a survey or stands twice, or none names the dwelling
     * @throws UnusableException if the prices do not hold on the day
     */
    public RowJudge(TwinfeedService service, BatchTask task, String list, Row head) {
        task.checkPrices();
        this.service = service.oneByOne();
        this.task = task;
        this.list = list;
        this.language = new FormLanguage(task.locale(), attribute -> List.of());
        Survey template = EcoreUtil.copy(task.pattern().job()).getSurvey();
        withoutOwn(template);
        this.columns = new Columns(list, head, template);
        this.labels = columns.fields().stream().map(this::label).toList();
        this.sheets = new DwellingSheets(task.locale(), () -> labels);
        this.houses = new AlikeHouses(house -> this.service.judge(house, task.book(), null, task.locale()));
    }

    /** The head of the plain lines, without a line feed. */
    public static String csvHead() {
        return csv(ResultLine.KEYS);
    }

    /**
     * What a plain list says of a row, as a line of CSV without a line feed.
     *
     * @param earlier the number of an earlier row that names the same dwelling; 0 if there is none
     */
    public String csv(Row row, int earlier) {
        return csv(take(row, earlier).line());
    }

    private static String csv(List<? extends @Nullable Object> cells) {
        String line = CsvLines.line(cells);
        return line.substring(0, line.length() - 1);
    }

    /** What a row calls its dwelling. */
    String dwelling(Row row) {
        return columns.dwelling(row);
    }

    /** What rows of one dwelling have in common, however its name is written; empty for a row without a name. */
    public String key(Row row) {
        return NameTable.key(columns.dwelling(row));
    }

    /** The fields that the list has columns for. */
    List<FieldPath> fields() {
        return columns.fields();
    }

    /** The survey of a row. */
    Survey survey(Row row) {
        Survey survey = EcoreUtil.copy(task.pattern().job()).getSurvey();
        withoutOwn(survey);
        columns.fill(row, survey);
        if (survey.getSite() == null) {
            survey.setSite(SurveyFactory.eINSTANCE.createSite());
        }
        if (survey.getSite().getName() == null) {
            survey.getSite().setName(columns.dwelling(row));
        }
        return survey;
    }

    private String label(FieldPath field) {
        List<EStructuralFeature> way = field.features(SurveyPackage.Literals.SURVEY);
        String label = way.stream()
                .skip(Math.max(0, way.size() - 2))
                .map(language::label)
                .collect(Collectors.joining(": "));
        return field.element().isEmpty() ? label : label + " (" + field.element() + ")";
    }

    /** The age of a dwelling's unit where the list says it, in whole years; -1 where it does not. */
    private int ownAge(Dwelling dwelling) {
        List<FieldPath> fields = columns.fields();
        Survey survey = dwelling.judged().opened().job().getSurvey();
        boolean own = dwelling.readings().stream()
                .anyMatch(reading -> reading.origin() == ReadingOrigin.OWN
                        && fields.get(reading.column())
                                .features(SurveyPackage.Literals.SURVEY)
                                .contains(SurveyPackage.Literals.PRESENT_UNIT__AGE));
        return own ? survey.getUnit().getAge() : -1;
    }

    /** What comes of a row. */
    BatchJournal.Entry take(Row row, int earlier) {
        if (earlier > 0) {
            return refuse(row, Refusals.text("list.again", earlier));
        }
        try {
            Dwelling dwelling = judged(row);
            return new BatchJournal.Entry(row.number(), sheets.result(dwelling, ownAge(dwelling)), null);
        } catch (InputException unusable) {
            return refuse(
                    row, unusable.problems().stream().map(RowJudge::reason).collect(Collectors.joining("\n")));
        } catch (IllegalStateException | IllegalArgumentException | ArithmeticException broken) {
            // One dwelling on which the program itself fails must not cost the other thousand.
            return refuse(row, Refusals.text("list.internal", broken));
        }
    }

    private Dwelling judged(Row row) {
        Job job = EcoreUtil.copy(task.pattern().job());
        withoutOwn(job.getSurvey());
        // What was decided of the template's quote by hand was decided for that house.
        job.setQuote(null);
        List<DwellingReading> readings = columns.fill(row, job.getSurvey());
        checkDays(row, job, readings);
        AssessedJob judged = houses.judged(service.checked(task.pattern(), job));
        String name = columns.dwelling(row);
        FaultSheet faults = faults(judged);
        try {
            Quote quote = QuotingService.draft(judged, task.book(), task.date(), task.firm(), task.locale());
            String why = quote.getOptions().isEmpty() ? String.valueOf(quote.getSummary()) : "";
            return new Dwelling(row.number(), name, readings, judged, quote, why, faults);
        } catch (UnusableException nothing) {
            return new Dwelling(row.number(), name, readings, judged, null, why(nothing), faults);
        }
    }

    /** A day that is still to come: nobody is asked about a row, so that its slip has to be mended in the list. */
    private void checkDays(Row row, Job job, List<DwellingReading> readings) {
        LocalDate today = task.today();
        if (today == null) {
            return;
        }
        List<InputProblem> ahead = FutureDates.of(job, today).stream()
                .filter(problem -> readings.stream()
                        .anyMatch(reading -> reading.origin() == ReadingOrigin.OWN
                                && reading.path().equals(problem.path())))
                .map(problem -> new InputProblem(
                        list, row.number(), problem.path(), problem.reading(), problem.wrong(), problem.right()))
                .toList();
        if (!ahead.isEmpty()) {
            throw new InputException(ahead);
        }
    }

    /** The likely fault of a unit of which something is complained. */
    private @Nullable FaultSheet faults(AssessedJob judged) {
        Survey survey = judged.opened().job().getSurvey();
        boolean asked =
                survey.getUnit() != null && survey.getSymptoms().stream().anyMatch(DangerSigns::reported);
        return asked ? FaultFindingService.sheet(judged, task.book(), task.date(), task.locale()) : null;
    }

    /**
     * What is true of one dwelling alone and is never taken over from the template: where it is, its papers' dates, its reference, what is
     * complained of and was found there, remarks and pictures.
     */
    static void withoutOwn(Survey survey) {
        if (survey.getSite() != null) {
            survey.getSite().setLastInspection(null);
            survey.getSite().setReference(null);
            survey.getSite().setName(null);
            survey.getSite().setAddress(null);
            survey.getSite().setNote(null);
        }
        if (survey.getUnit() != null) {
            survey.getUnit().setGuaranteeUntil(null);
            survey.getUnit().setNote(null);
        }
        survey.getSymptoms().clear();
        survey.setFaultFinding(null);
        survey.setNotes(null);
        survey.setTakenBy(null);
        survey.getPhotos().clear();
    }

    private String why(UnusableException nothing) {
        return nothing.getCause() instanceof QuoteException refusal
                ? refusal.message(task.locale())
                : String.valueOf(nothing.getMessage());
    }

    private static String reason(InputProblem problem) {
        return new InputProblem("", 0, problem.element(), problem.reading(), problem.wrong(), problem.right())
                .toString();
    }

    private BatchJournal.Entry refuse(Row row, String reason) {
        return new BatchJournal.Entry(row.number(), null, new Refused(row.number(), columns.dwelling(row), reason));
    }
}
