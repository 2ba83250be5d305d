// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import twinfeed.desktop.session.JobServices;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;
import twinfeed.usecase.batch.JudgedDwelling;

/** A list of dwellings that is being judged in a thread of its own, and what has come of it so far. */
public final class BatchRun {
    /** What is told of it. All of it comes in the thread of the display. */
    public interface Listener {
        /**
         * So many rows are done.
         *
         * @param judged the dwellings judged since the last time
         * @param seconds how long it has taken so far
         */
        void progress(int rows, List<JudgedDwelling> judged, double seconds);

        /** All rows are done, and the workbook is written. */
        void done(BatchReport report, double seconds);

        /** It was stopped; nothing was written. */
        void stopped();

        /** It could not be done; nothing was written. */
        void failed(String reason);
    }

    private static final long TELL_NS = 250_000_000L;
    private static final double SECOND_NS = 1e9;

    private final JobServices services;
    private final BatchFiles files;
    private final Executor display;
    private final Listener listener;
    private volatile boolean stopping;

    /**
     * Not begun yet.
     *
     * @param files files of which nothing is wrong
     * @param display the thread of the display
     */
    public BatchRun(JobServices services, BatchFiles files, Executor display, Listener listener) {
        this.services = services;
        this.files = files;
        this.display = display;
        this.listener = listener;
    }

    /** Begins, in a thread of its own: a long list must not keep an open job waiting. */
    public void start() {
        Thread thread = new Thread(this::run, "list of dwellings");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    /** Ends it after the row that is being taken; nothing is written. */
    public void stop() {
        stopping = true;
    }

    private BatchWriting writing() {
        Path book = BatchFiles.file(files.book());
        PriceBook prices = services.service().book(book);
        BatchTask task = new BatchTask(
                services.service().open(BatchFiles.file(files.like()), null),
                prices,
                services.firm(new JobServices.Prices(book, prices)),
                services.today(),
                services.locale(),
                services.today());
        return new BatchWriting(services.service(), task);
    }

    private void run() {
        long begun = System.nanoTime();
        long[] told = {begun};
        List<JudgedDwelling> judged = new ArrayList<>();
        try {
            BatchReport report = writing()
                    .write(
                            BatchFiles.file(files.list()),
                            BatchFiles.file(files.out()),
                            (rows, all, before) -> {
                                if (stopping) {
                                    throw new CancellationException();
                                }
                                long now = System.nanoTime();
                                if (now - told[0] > TELL_NS) {
                                    told[0] = now;
                                    tell(rows, judged, begun);
                                }
                            },
                            judged::add);
            tell(report.judged() + report.rejected(), judged, begun);
            double seconds = (System.nanoTime() - begun) / SECOND_NS;
            display.execute(() -> listener.done(report, seconds));
        } catch (CancellationException stopped) {
            display.execute(listener::stopped);
        } catch (RuntimeException | LinkageError refused) {
            display.execute(() -> listener.failed(String.valueOf(refused.getMessage())));
        }
    }

    private void tell(int rows, List<JudgedDwelling> judged, long begun) {
        List<JudgedDwelling> since = List.copyOf(judged);
        judged.clear();
        double seconds = (System.nanoTime() - begun) / SECOND_NS;
        display.execute(() -> listener.progress(rows, since, seconds));
    }

    /**
     * The survey of one row, for a job of its own; takes as long as reading the list up to it.
     *
     * @throws RuntimeException if the list cannot be read any more; its message says why
     */
    public Survey survey(int row) {
        return writing().survey(BatchFiles.file(files.list()), row);
    }

    /** The catalogue of the job that stands for what the list does not say. */
    public Path catalogue() {
        Path like = BatchFiles.file(files.like());
        return like.resolveSibling(
                String.valueOf(services.service().open(like, null).job().getCatalogue()));
    }
}
