// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.Job;
import twinfeed.model.quote.Quote;
import twinfeed.model.rows.Row;
import twinfeed.pricing.QuoteException;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

/**
 * Judges and prices the dwellings of a list, one after the other. Each is the survey of a pattern job with the row's own values put in.
 * A row that cannot be used is set aside with its reason, and the rest goes on.
 */
final class Batch {
    private final TwinfeedService office;
    private final BatchTask task;
    private final List<Refused> refused = new ArrayList<>();
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
        new DwellingRows(list).read(row -> {
            if (columns == null) {
                columns = new Columns(list.toString(), row);
            } else {
                take(row, columns, dwellings);
                progress.accept(++rows[0]);
            }
        });
        if (rows[0] == 0) {
            throw new InputException(InputProblem.ofFile(
                    list.toString(),
                    "it names no dwelling",
                    "give it a first row with the names of the columns, then one row a dwelling"));
        }
    }

    private void take(Row row, Columns heads, Consumer<Dwelling> dwellings) {
        try {
            dwellings.accept(dwelling(row, heads));
        } catch (InputException unusable) {
            refuse(row, heads, unusable.problems().stream().map(Batch::reason).collect(Collectors.joining("\n")));
        } catch (IllegalStateException | IllegalArgumentException | ArithmeticException broken) {
            // One dwelling on which the program itself fails must not cost the other thousand.
            refuse(row, heads, "internal fault: " + broken);
        }
    }

    private Dwelling dwelling(Row row, Columns heads) {
        Job job = EcoreUtil.copy(task.pattern().job());
        heads.fill(row, job.getSurvey());
        AssessedJob judged = office.judge(office.checked(task.pattern(), job), task.book(), null, task.locale());
        String name = heads.dwelling(row);
        try {
            Quote quote = office.quote(judged, task.book(), task.date(), task.firm(), task.locale());
            return new Dwelling(row.number(), name, judged, quote, "");
        } catch (UnusableException nothing) {
            return new Dwelling(row.number(), name, judged, null, why(nothing));
        }
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

    private void refuse(Row row, Columns heads, String reason) {
        refused.add(new Refused(row.number(), heads.dwelling(row), reason));
    }

    /** The rows set aside so far. */
    List<Refused> refused() {
        return List.copyOf(refused);
    }
}
