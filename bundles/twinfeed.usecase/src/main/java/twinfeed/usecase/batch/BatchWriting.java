// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.io.OutputStream;
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

/**
 * Judges and prices a list of dwellings and writes the results. Work that was stopped is taken up again where it was: beside the result lies a
 * journal of the rows that were judged, until the result is written.
 */
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
        private int estimates;
        private int unanswered;
        private int unsafe;
        private int complaints;

        void add(DwellingResult dwelling) {
            judged++;
            DwellingOffer offer = dwelling.offer();
            boolean estimate = offer != null && offer.estimate();
            offered += offer == null || estimate ? 0 : 1;
            estimates += estimate ? 1 : 0;
            unanswered += dwelling.unanswered() ? 1 : 0;
            unsafe += dwelling.urgency() == Urgency.SAFETY ? 1 : 0;
            complaints += dwelling.judged().complaints() > 0 ? 1 : 0;
        }

        BatchReport report(RejectedRows refused, int before) {
            return new BatchReport(
                    judged,
                    offered,
                    estimates,
                    unanswered,
                    unsafe,
                    complaints,
                    refused.count(),
                    before,
                    refused.first());
        }
    }

    /**
     * Writes the results; the file appears whole or not at all.
     *
     * @param list the dwellings, *.csv or *.xlsx
     * @param out the file to write; its ending says in which {@link ResultForm form}
     * @param progress called after each row
     * @throws InputException or UnusableException if the list as a whole cannot be used, or the file not be written
     */
    public BatchReport write(Path list, Path out, BatchProgress progress) {
        return write(list, out, progress, dwelling -> {});
    }

    /**
     * The same, with each dwelling told as soon as it is judged, in the order of the list.
     *
     * @param progress likewise; what it throws ends the work: no result is written then, and the journal stays
     * @param judged takes each dwelling, on the caller's thread
     */
    public BatchReport write(Path list, Path out, BatchProgress progress, Consumer<JudgedDwelling> judged) {
        task.checkPrices();
        try (RejectedRows refused = new RejectedRows()) {
            BatchIdentity identity = BatchIdentity.of(service, task, list);
            try (BatchJournal journal = BatchJournal.of(out, identity.bytes())) {
                return write(
                        list,
                        out,
                        journal,
                        refused,
                        judged,
                        done -> progress.done(done, identity.dwellings(), journal.takenOver()));
            }
        } catch (IOException full) {
            throw new UnusableException(out + ": " + full.getMessage(), full);
        } catch (UncheckedIOException full) {
            throw new UnusableException(out + ": " + full.getMessage(), full);
        }
    }

    private BatchReport write(
            Path list,
            Path out,
            BatchJournal journal,
            RejectedRows refused,
            Consumer<JudgedDwelling> judged,
            IntConsumer progress)
            throws IOException {
        Counts counts = new Counts();
        new Work(list, out, new Batch(service, task, refused), journal, refused)
                .judge(
                        dwelling -> {
                            counts.add(dwelling);
                            judged.accept(dwelling.judged());
                        },
                        progress);
        journal.finish();
        return counts.report(refused, journal.takenOver());
    }

    /**
     * The survey of one row: the template's with the row's own values put in.
     *
     * @param row its number in the list
     * @throws InputException or UnusableException if the list cannot be used or has no such row
     */
    public Survey survey(Path list, int row) {
        try (RejectedRows refused = new RejectedRows()) {
            return new Batch(service, task, refused).survey(list, row);
        } catch (IOException full) {
            throw new UnusableException(list + ": " + full.getMessage(), full);
        }
    }

    /** The work on one list. */
    private final class Work {
        private final Path list;
        private final Path out;
        private final Batch batch;
        private final BatchJournal journal;
        private final RejectedRows refused;

        Work(Path list, Path out, Batch batch, BatchJournal journal, RejectedRows refused) {
            this.list = list;
            this.out = out;
            this.batch = batch;
            this.journal = journal;
            this.refused = refused;
        }

        void judge(Consumer<DwellingResult> judged, IntConsumer progress) throws IOException {
            if (ResultForm.of(out) == ResultForm.WORKBOOK) {
                workbook(judged, progress);
            } else {
                batch.run(list, journal, judged, progress);
                AtomicFile.write(out, this::lines);
            }
        }

        private void workbook(Consumer<DwellingResult> judged, IntConsumer progress) throws IOException {
            BatchTotals totals = new BatchTotals(task.locale());
            try (DwellingOrder order = new DwellingOrder()) {
                batch.run(
                        list,
                        journal,
                        dwelling -> {
                            order.add(dwelling);
                            totals.add(dwelling);
                            judged.accept(dwelling);
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

        private void lines(OutputStream stream) throws IOException {
            ResultLines lines = ResultLines.of(ResultForm.of(out), stream);
            journal.each(entry -> lines.write(entry.line()));
            lines.finish();
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
