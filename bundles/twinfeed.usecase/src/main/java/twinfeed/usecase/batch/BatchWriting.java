// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.workbook.batch.ResultWorkbook;

/** Judges and prices a list of dwellings and writes the results as a workbook. */
public final class BatchWriting {
    private final TwinfeedService service;
    private final BatchTask task;
    private final int mostRows;

    /** With the use cases and what is to be done. */
    public BatchWriting(TwinfeedService service, BatchTask task) {
        this(service, task, BatchTable.MOST_ROWS);
    }

    /** The same with fewer rows a sheet, for tests. */
    BatchWriting(TwinfeedService service, BatchTask task, int mostRows) {
        this.service = service;
        this.task = task;
        this.mostRows = mostRows;
    }

    /** What is counted while the list is read. */
    private static final class Counts {
        private int judged;
        private int offered;
        private int unanswered;
        private int unsafe;
        private int complaints;

        void add(Dwelling dwelling) {
            judged++;
            offered += dwelling.quote() == null ? 0 : 1;
            unanswered += dwelling.judged().unanswered() ? 1 : 0;
            unsafe += Urgency.dangers(dwelling.judged().record()).isEmpty() ? 0 : 1;
            complaints += RepairRow.count(dwelling) > 0 ? 1 : 0;
        }

        BatchReport report(Refusals refused) {
            return new BatchReport(judged, offered, unanswered, unsafe, complaints, refused.count(), refused.first());
        }
    }

    /**
     * Writes the results; the file appears whole or not at all.
     *
     * @param list the dwellings, *.csv or *.xlsx
     * @param out the workbook to write
     * @param progress called after each row with the number of rows so far
     * @throws InputException or UnusableException if the list as a whole cannot be used, or the file not be written
     */
    public BatchReport write(Path list, Path out, IntConsumer progress) {
        return write(list, out, progress, dwelling -> {});
    }

    /**
     * The same, with each dwelling told as soon as it is judged, in the order of the list.
     *
     * @param progress likewise; what it throws ends the work, and nothing is written then
     * @param judged takes each dwelling, on the caller's thread
     */
    public BatchReport write(Path list, Path out, IntConsumer progress, Consumer<JudgedDwelling> judged) {
        BatchTotals totals = new BatchTotals(task.locale());
        Counts counts = new Counts();
        try (Refusals refused = new Refusals()) {
            Batch batch = new Batch(service, task, refused);
            write(list, out, progress, judged, batch, counts, totals, refused);
            return counts.report(refused);
        } catch (IOException full) {
            throw new UnusableException(out + ": " + full.getMessage(), full);
        } catch (UncheckedIOException full) {
            throw new UnusableException(out + ": " + full.getMessage(), full);
        }
    }

    /**
     * The survey of one row: the template's with the row's own values put in.
     *
     * @param row its number in the list
     * @throws InputException or UnusableException if the list cannot be used or has no such row
     */
    public Survey survey(Path list, int row) {
        try (Refusals refused = new Refusals()) {
            return new Batch(service, task, refused).survey(list, row);
        } catch (IOException full) {
            throw new UnusableException(list + ": " + full.getMessage(), full);
        }
    }

    private void write(
            Path list,
            Path out,
            IntConsumer progress,
            Consumer<JudgedDwelling> judged,
            Batch batch,
            Counts counts,
            BatchTotals totals,
            Refusals refused)
            throws IOException {
        DwellingSheets sheets = new DwellingSheets(task.locale(), batch::labels);
        try (DwellingOrder order = new DwellingOrder(sheets, batch::ownAge)) {
            batch.run(
                    list,
                    dwelling -> {
                        order.add(dwelling);
                        totals.add(dwelling);
                        counts.add(dwelling);
                        judged.accept(JudgedDwelling.of(dwelling, batch.ownAge(dwelling), task.locale()));
                    },
                    progress);
            try (ResultWorkbook results = results(list)) {
                new BatchTable(results, task.book().getCurrency(), task.locale(), mostRows)
                        .write(
                                String.valueOf(task.pattern().file().getFileName()),
                                totals,
                                order,
                                batch.shared(),
                                refused);
                AtomicFile.write(out, results::write);
            }
        }
    }

    private ResultWorkbook results(Path list) {
        return new ResultWorkbook(
                String.valueOf(list.getFileName()),
                task.firm().firm().name(),
                TwinfeedService.VERSION,
                task.firm().firm().accent(),
                task.locale(),
                task.date().atStartOfDay().toInstant(ZoneOffset.UTC));
    }
}
