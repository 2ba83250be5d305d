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
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ModelPath;
import twinfeed.model.io.InputException;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.refusal.Refusals;

/**
 * Judges and prices the dwellings of a list, several at a time, and hands them on in the order of the list. Each is the survey of a template job with the row's own values put in.
 * A row that cannot be used is rejected with its reason, and the rest goes on.
 */
final class Batch {
    private final TwinfeedService service;
    private final BatchTask task;
    private final RejectedRows refused;
    private final NameTable names = new NameTable();
    private @Nullable RowJudge rows;

    Batch(TwinfeedService service, BatchTask task, RejectedRows refused) {
        this.service = service;
        this.task = task;
        this.refused = refused;
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
        int[] count = {0};
        Consumer<Taken> results = taken -> {
            keep(taken, journal);
            if (taken.entry().result() != null) {
                dwellings.accept(taken.entry().result());
            } else if (taken.entry().refused() != null) {
                refused.add(taken.entry().refused());
            }
            progress.accept(++count[0]);
        };
        try (OrderedWork<Taken> work = new OrderedWork<>(results)) {
            new DwellingRows(list).read(row -> {
                if (row.head()) {
                    return; // a remark
                }
                RowJudge judge = rows;
                if (judge == null) {
                    rows = new RowJudge(service, task, list.toString(), row);
                } else {
                    int earlier = earlier(judge.dwelling(row), row.number());
                    BatchJournal.Entry before = before(journal, row.number());
                    if (before == null) {
                        work.give(() -> new Taken(judge.take(row, earlier), true));
                    } else {
                        work.give(() -> new Taken(before, false));
                    }
                }
            });
            work.finish();
        }
        if (count[0] == 0) {
            throw new InputException(Refusals.ofFile(list, "list.empty"));
        }
    }

    /** The survey of one row of a list, without judging any. */
    Survey survey(Path list, int wanted) {
        Survey[] found = {null};
        RowJudge[] judge = {null};
        new DwellingRows(list).read(row -> {
            if (row.head() || found[0] != null) {
                return;
            }
            if (judge[0] == null) {
                judge[0] = new RowJudge(service, task, list.toString(), row);
            } else if (row.number() == wanted) {
                found[0] = judge[0].survey(row);
            }
        });
        if (found[0] == null) {
            throw new InputException(Refusals.ofFile(list, "list.row", wanted));
        }
        return found[0];
    }

    /** The line of an earlier row with the same name, whatever its capitals; 0 if there is none. */
    private int earlier(String dwelling, int line) {
        return dwelling.isEmpty() ? 0 : names.putIfAbsent(dwelling, line);
    }

    /** What every dwelling takes over from the template, for the list has no column for it: path and value. */
    List<List<String>> shared() {
        Job job = EcoreUtil.copy(task.pattern().job());
        RowJudge.withoutOwn(job.getSurvey());
        Set<String> columnsOfList = new HashSet<>();
        if (rows != null) {
            rows.fields().forEach(field -> columnsOfList.add(String.valueOf(field.in(job.getSurvey()))));
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
}
