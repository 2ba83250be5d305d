// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Says how far a long piece of work has come: a line a second on standard error, whether that is a screen, a pipe or a file, and also while one
 * row takes longer than that.
 */
final class Progress implements AutoCloseable {
    private static final double SECOND_NS = 1e9;

    private final CliContext face;
    private final AtomicInteger rows = new AtomicInteger();
    private final long begun = System.nanoTime();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "progress");
        thread.setDaemon(true);
        return thread;
    });

    /** Begins. */
    Progress(CliContext face) {
        this.face = face;
        // A little less than a second, so that a slow machine keeps the promise too.
        clock.scheduleAtFixedRate(this::tell, 900, 900, TimeUnit.MILLISECONDS);
    }

    /** So many rows are done. */
    void done(int count) {
        rows.set(count);
    }

    private void tell() {
        PrintStream err = face.err();
        int count = rows.get();
        double seconds = (System.nanoTime() - begun) / SECOND_NS;
        err.println(count + " " + face.text("batch.rows") + ", " + CliContext.NUMBERS.fixed(seconds, 0) + " s, "
                + CliContext.NUMBERS.fixed(count / seconds, 1) + " " + face.text("batch.aSecond"));
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
