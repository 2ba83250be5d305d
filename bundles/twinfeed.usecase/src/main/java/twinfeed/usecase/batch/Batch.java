// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteException;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

/**
 * Judges and prices the dwellings of a list, several at a time, and hands them on in the order of the list. Each is the survey of a pattern job with the row's own values put in.
 * A row that cannot be used is set aside with its reason, and the rest goes on.
 */
final class Batch {
    private final TwinfeedService office;
    private final BatchTask task;
    private final List<Refused> refused = new ArrayList<>();
    private final Map<String, Integer> names = new HashMap<>();
    private @Nullable Columns columns;

    Batch(TwinfeedService office, BatchTask task) {
        this.office = office;
        this.task = task;
    }

    /**
     * Reads the list.
     *
     * @param list the list of dwellings
     * @param dwellings takes each dwelling that could be judged
     * @param progress called after each row with the number of rows so far
     * @throws InputException or UnusableException if the list as a whole cannot be used
     */
    void run(Path list, Consumer<Dwelling> dwellings, java.util.function.IntConsumer progress) {
        int[] rows = {0};
        Consumer<Taken> results = taken -> {
            if (taken.dwelling() != null) {
                dwellings.accept(taken.dwelling());
            }
            if (taken.refused() != null) {
                refused.add(taken.refused());
            }
            progress.accept(++rows[0]);
        };
        try (OrderedWork<Taken> work = new OrderedWork<>(results)) {
            new DwellingRows(list).read(row -> {
                if (row.head()) {
                    return; // a remark
                }
                if (columns == null) {
                    columns = new Columns(list.toString(), row);
                } else {
                    Columns heads = columns;
                    Job job = EcoreUtil.copy(task.pattern().job());
                    int earlier = earlier(heads.dwelling(row), row.number());
                    work.give(() -> take(row, heads, job, earlier));
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

    /** The line of an earlier row with the same name, whatever its capitals; 0 if there is none. */
    private int earlier(String dwelling, int line) {
        Integer before = dwelling.isEmpty() ? null : names.putIfAbsent(dwelling.toLowerCase(Locale.ROOT), line);
        return before == null ? 0 : before;
    }

    /** A row is a dwelling, or it is refused. */
    private record Taken(@Nullable Dwelling dwelling, @Nullable Refused refused) {}

    private Taken take(Row row, Columns heads, Job job, int earlier) {
        if (earlier > 0) {
            return refuse(
                    row,
                    heads,
                    "the list names this dwelling in line " + earlier
                            + " already; take one of the two rows away, or give each a name of its own");
        }
        try {
            return new Taken(dwelling(row, heads, job), null);
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
        heads.fill(row, job.getSurvey());
        AssessedJob judged = office.judge(office.checked(task.pattern(), job), task.book(), null, task.locale());
        String name = heads.dwelling(row);
        try {
            Quote quote = office.quote(judged, task.book(), task.date(), task.firm(), task.locale());
            String why = quote.getOptions().isEmpty() ? String.valueOf(quote.getSummary()) : "";
            return new Dwelling(row.number(), name, judged, quote, why);
        } catch (UnusableException nothing) {
            return new Dwelling(row.number(), name, judged, null, why(nothing));
        }
    }

    /** What is true of one dwelling alone and is never taken over from the template: its papers' dates, its reference and its pictures. */
    private static void withoutOwn(Survey survey) {
        if (survey.getSite() != null) {
            survey.getSite().setLastInspection(null);
            survey.getSite().setReference(null);
        }
        if (survey.getUnit() != null) {
            survey.getUnit().setGuaranteeUntil(null);
        }
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

    private static Taken refuse(Row row, Columns heads, String reason) {
        return new Taken(null, new Refused(row.number(), heads.dwelling(row), reason));
    }

    /** The rows set aside so far. */
    List<Refused> refused() {
        return List.copyOf(refused);
    }
}
