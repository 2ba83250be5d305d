// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Says how far a long piece of work has come: a line a second on standard error, whether that is a screen, a pipe or a file, and also while one
 * row takes longer than that.
 */
final class Progress implements AutoCloseable {
    private static final double SECOND_NS = 1e9;

    private final CliContext context;
    private volatile Rows rows = new Rows(0, 0, 0);
    private final long begun = System.nanoTime();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "progress");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * How far it is.
     *
     * @param done rows done
     * @param all rows of the list
     * @param before rows of those done that earlier work had judged
     */
    private record Rows(int done, int all, int before) {}

    /** Begins. */
    Progress(CliContext context) {
        this.context = context;
        // A little less than a second, so that a slow machine keeps the promise too.
        clock.scheduleAtFixedRate(this::tell, 900, 900, TimeUnit.MILLISECONDS);
    }

    /** So many rows are done, of so many, some of them by earlier work. */
    void done(int done, int all, int before) {
        rows = new Rows(done, all, before);
    }

    private void tell() {
        PrintStream err = context.err();
        Rows now = rows;
        double seconds = (System.nanoTime() - begun) / SECOND_NS;
        double rate = (now.done - now.before) / seconds;
        String of = now.all == 0 ? "" : context.text("batch.of") + " " + now.all + " ";
        String left = rate > 0 && now.all > 0
                ? ", " + context.numbers().fixed((now.all - now.done) / rate, 0) + " s " + context.text("batch.left")
                : "";
        err.println(now.done + " " + of + context.text("batch.rows") + ", "
                + context.numbers().fixed(seconds, 0) + " s, "
                + context.numbers().fixed(rate, 1) + " "
                + context.text("batch.aSecond") + left);
        err.flush();
    }

    /** Says no more; what is being said is finished first. */
    @Override
    public void close() {
        clock.shutdown();
        try {
            if (!clock.awaitTermination(1, TimeUnit.SECONDS)) {
                clock.shutdownNow();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
