// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.check.FieldPath;
import twinfeed.model.check.ModelPath;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
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
import twinfeed.workbook.form.FormLanguage;

/**
 * Judges and prices the dwellings of a list, several at a time, and hands them on in the order of the list. Each is the survey of a pattern job with the row's own values put in.
 * A row that cannot be used is set aside with its reason, and the rest goes on.
 */
final class Batch {
    private final TwinfeedService service;
    private final BatchTask task;
    private final Refusals refused;
    private final NameTable names = new NameTable();
    private final FormLanguage language;
    private final DwellingSheets sheets;
    private List<String> labels = List.of();
    private @Nullable Columns columns;

    Batch(TwinfeedService service, BatchTask task, Refusals refused) {
        this.service = service;
        this.task = task;
        this.refused = refused;
        this.language = new FormLanguage(task.locale(), attribute -> List.of());
        this.sheets = new DwellingSheets(task.locale(), this::labels);
    }

    /**
     * Reads the list.
     *
     * @param list the list of dwellings
     * @param journal what was judged of it before; takes what is judged now
     * @param dwellings takes each dwelling that could be judged
     * @param progress called after each row with the number of rows so far
     * @throws InputException or UnusableException if the list as a whole cannot be used
     * @throws UncheckedIOException if there is no room for the journal
     */
    void run(
            Path list,
            BatchJournal journal,
            Consumer<DwellingResult> dwellings,
            java.util.function.IntConsumer progress) {
        int[] rows = {0};
        Consumer<Taken> results = taken -> {
            keep(taken, journal);
            if (taken.entry().result() != null) {
                dwellings.accept(taken.entry().result());
            } else if (taken.entry().refused() != null) {
                refused.add(taken.entry().refused());
            }
            progress.accept(++rows[0]);
        };
        try (OrderedWork<Taken> work = new OrderedWork<>(results)) {
            new DwellingRows(list).read(row -> {
                if (row.head()) {
                    return; // a remark
                }
                if (columns == null) {
                    Survey template = EcoreUtil.copy(task.pattern().job()).getSurvey();
                    withoutOwn(template);
                    columns = new Columns(list.toString(), row, template);
                    labels = columns.fields().stream().map(this::label).toList();
                } else {
                    Columns heads = columns;
                    int earlier = earlier(heads.dwelling(row), row.number());
                    BatchJournal.Entry before = before(journal, row.number());
                    if (before == null) {
                        Job job = EcoreUtil.copy(task.pattern().job());
                        work.give(() -> new Taken(take(row, heads, job, earlier), true));
                    } else {
                        work.give(() -> new Taken(before, false));
                    }
                }
            });
            work.finish();
        }
        if (rows[0] == 0) {
            throw new InputException(InputProblem.ofFile(
                    list.toString(),
                    "it names no dwelling",
                    "give it a first row with the names of the columns, then one row a dwelling"));
        }
    }

    /** The survey of one row of a list, without judging any. */
    Survey survey(Path list, int wanted) {
        Job job = EcoreUtil.copy(task.pattern().job());
        boolean[] found = {false};
        Columns[] heads = {null};
        new DwellingRows(list).read(row -> {
            if (row.head() || found[0]) {
                return;
            }
            if (heads[0] == null) {
                Survey template = EcoreUtil.copy(task.pattern().job()).getSurvey();
                withoutOwn(template);
                heads[0] = new Columns(list.toString(), row, template);
            } else if (row.number() == wanted) {
                withoutOwn(job.getSurvey());
                heads[0].fill(row, job.getSurvey());
                if (job.getSurvey().getSite() == null) {
                    job.getSurvey().setSite(SurveyFactory.eINSTANCE.createSite());
                }
                if (job.getSurvey().getSite().getName() == null) {
                    job.getSurvey().getSite().setName(heads[0].dwelling(row));
                }
                found[0] = true;
            }
        });
        if (!found[0]) {
            throw new InputException(InputProblem.ofFile(
                    list.toString(), "it has no dwelling in row " + wanted + " any more", "judge the list again"));
        }
        return EcoreUtil.copy(job.getSurvey());
    }

    /** The line of an earlier row with the same name, whatever its capitals; 0 if there is none. */
    private int earlier(String dwelling, int line) {
        return dwelling.isEmpty() ? 0 : names.putIfAbsent(dwelling, line);
    }

    private String label(FieldPath field) {
        List<EStructuralFeature> way = field.features(SurveyPackage.Literals.SURVEY);
        String label = way.stream()
                .skip(Math.max(0, way.size() - 2))
                .map(language::label)
                .collect(Collectors.joining(": "));
        return field.element().isEmpty() ? label : label + " (" + field.element() + ")";
    }

    /** What the readings of the list's columns are called, in order; empty before its head is read. */
    private List<String> labels() {
        return labels;
    }

    /** The age of a dwelling's unit where the list says it, in whole years; -1 where it does not. */
    private static int ownAge(Dwelling dwelling, Columns heads) {
        List<FieldPath> fields = heads.fields();
        Survey survey = dwelling.judged().opened().job().getSurvey();
        boolean own = dwelling.readings().stream()
                .anyMatch(reading -> reading.origin() == ReadingOrigin.OWN
                        && fields.get(reading.column())
                                .features(SurveyPackage.Literals.SURVEY)
                                .contains(SurveyPackage.Literals.PRESENT_UNIT__AGE));
        return own ? survey.getUnit().getAge() : -1;
    }

    /** What every dwelling takes over from the template, for the list has no column for it: path and value. */
    List<List<String>> shared() {
        Job job = EcoreUtil.copy(task.pattern().job());
        withoutOwn(job.getSurvey());
        Set<String> columnsOfList = new HashSet<>();
        if (columns != null) {
            columns.fields().forEach(field -> columnsOfList.add(String.valueOf(field.in(job.getSurvey()))));
        }
        List<List<String>> rows = new ArrayList<>();
        add(job.getSurvey(), columnsOfList, rows);
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(job.getSurvey(), false); all.hasNext(); ) {
            add(all.next(), columnsOfList, rows);
        }
        return rows;
    }

    private static void add(EObject object, Set<String> columnsOfList, List<List<String>> rows) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            String path = ModelPath.of(object, attribute);
            if (object.eIsSet(attribute) && !columnsOfList.contains(path)) {
                List<?> values =
                        attribute.isMany() ? (List<?>) object.eGet(attribute) : List.of(object.eGet(attribute));
                rows.add(List.of(
                        path.replaceFirst("^survey\\.", ""),
                        values.stream()
                                .map(value -> EcoreUtil.convertToString(attribute.getEAttributeType(), value))
                                .collect(Collectors.joining("; "))));
            }
        }
    }

    private static BatchJournal.@Nullable Entry before(BatchJournal journal, int row) {
        try {
            return journal.next(row);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void keep(Taken taken, BatchJournal journal) {
        if (taken.anew()) {
            try {
                journal.add(taken.entry());
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
        }
    }

    /** What came of a row, and whether that was found now and not before. */
    private record Taken(BatchJournal.Entry entry, boolean anew) {}

    private BatchJournal.Entry take(Row row, Columns heads, Job job, int earlier) {
        if (earlier > 0) {
            return refuse(
                    row,
                    heads,
                    "the list names this dwelling in line " + earlier
                            + " already; take one of the two rows away, or give each a name of its own");
        }
        try {
            Dwelling dwelling = dwelling(row, heads, job);
            return new BatchJournal.Entry(row.number(), sheets.result(dwelling, ownAge(dwelling, heads)), null);
        } catch (InputException unusable) {
            return refuse(
                    row, heads, unusable.problems().stream().map(Batch::reason).collect(Collectors.joining("\n")));
        } catch (IllegalStateException | IllegalArgumentException | ArithmeticException broken) {
            // One dwelling on which the program itself fails must not cost the other thousand.
            return refuse(row, heads, "internal fault: " + broken);
        }
    }

    private Dwelling dwelling(Row row, Columns heads, Job job) {
        withoutOwn(job.getSurvey());
        // What was decided of the template's quote by hand was decided for that house.
        job.setQuote(null);
        List<DwellingReading> readings = heads.fill(row, job.getSurvey());
        AssessedJob judged = service.judgeInBrief(service.checked(task.pattern(), job), task.book(), task.locale());
        String name = heads.dwelling(row);
        FaultSheet faults = faults(judged);
        try {
            Quote quote = QuotingService.draft(judged, task.book(), task.date(), task.firm(), task.locale());
            String why = quote.getOptions().isEmpty() ? String.valueOf(quote.getSummary()) : "";
            return new Dwelling(row.number(), name, readings, judged, quote, why, faults);
        } catch (UnusableException nothing) {
            return new Dwelling(row.number(), name, readings, judged, null, why(nothing), faults);
        }
    }

    /** The likely fault of a unit of which something is complained. */
    private @Nullable FaultSheet faults(AssessedJob judged) {
        Survey survey = judged.opened().job().getSurvey();
        boolean asked =
                survey.getUnit() != null && survey.getSymptoms().stream().anyMatch(Urgency::reported);
        return asked ? FaultFindingService.sheet(judged, task.book(), task.date(), task.locale()) : null;
    }

    /**
     * What is true of one dwelling alone and is never taken over from the template: where it is, its papers' dates, its reference, what is
     * complained of and was found there, remarks and pictures.
     */
    private static void withoutOwn(Survey survey) {
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

    private static BatchJournal.Entry refuse(Row row, Columns heads, String reason) {
        return new BatchJournal.Entry(row.number(), null, new Refused(row.number(), heads.dwelling(row), reason));
    }
}
