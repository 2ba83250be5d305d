// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Work done side by side whose results come in the order in which it was given. Only a few pieces wait at a time, so that memory does not
 * grow with their number.
 *
 * @param <T> what a piece of work gives
 */
final class OrderedWork<T> implements AutoCloseable {
    /** Pieces in hand for each processor: enough that none waits for one that takes long. */
    private static final int AHEAD = 4;

    private final int processors = Runtime.getRuntime().availableProcessors();
    private final ExecutorService workers = Executors.newFixedThreadPool(processors, work -> {
        Thread thread = new Thread(work, "dwellings");
        thread.setDaemon(true);
        return thread;
    });
    private final Queue<Future<T>> waiting = new ArrayDeque<>();
    private final Consumer<T> results;

    /** With what takes the results, on the thread that gives the work. */
    OrderedWork(Consumer<T> results) {
        this.results = results;
    }

    /** Gives a piece of work; may wait until an earlier one is done. */
    void give(Supplier<T> work) {
        waiting.add(workers.submit(work::get));
        if (waiting.size() > AHEAD * processors) {
            takeOne();
        }
    }

    /** Waits for all. */
    void finish() {
        while (!waiting.isEmpty()) {
            takeOne();
        }
    }

    private void takeOne() {
        try {
            results.accept(waiting.remove().get());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped before it was done", stopped);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException cause
                    ? cause
                    : new IllegalStateException(failed.getCause());
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
