// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Runs code of others so that what goes wrong in it ends there. Work that asks several of them gets a thread of its own, which nobody
 * waits for any more when one of them takes too long: it is a daemon, so the program can still end. One thread for all, because to start a
 * thread for each question takes longer than most answers. What cannot be contained within one process is memory that runs out and
 * a call that ends the process.
 */
final class Containment {
    /** Property with another time limit, in seconds. */
    private static final String PROPERTY = "twinfeed.calculators.timeLimit";

    private static final int MAX_REASON = 200;

    private final Duration limit;

    Containment(Duration limit) {
        this.limit = limit;
    }

    /** With the usual limit: a sound calculator answers in milliseconds. */
    static Containment usual() {
        return new Containment(Duration.ofSeconds(Math.max(1, Integer.getInteger(PROPERTY, 20))));
    }

    /** Says whose code did not end in time. */
    static final class TooSlowException extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final String name;

        TooSlowException(String name, Duration limit) {
            super("it did not answer within " + limit.toSeconds() + " s");
            this.name = name;
        }

        String name() {
            return name;
        }
    }

    /** Ends work for which nobody waits any more. */
    private static final class AbandonedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** Marks in work where code of others runs. */
    static final class Steps {
        private record Step(String name, long start) {}

        private volatile @Nullable Step now;
        private volatile boolean abandoned;

        /** Runs code of others. */
        void run(String name, Runnable code) {
            now = new Step(name, System.nanoTime());
            try {
                code.run();
            } finally {
                now = null;
            }
            if (abandoned) {
                throw new AbandonedException();
            }
        }

        /** How long the present step has run, in ns; 0 between steps. */
        private long elapsed() {
            Step step = now;
            return step == null ? 0 : System.nanoTime() - step.start;
        }
    }

    /**
     * Does work.
     *
     * @param work tells where code of others runs; each such step has the time limit to itself
     * @throws TooSlowException if a step did not end in time; it may still be running then, but no further one begins
     */
    <T> T watch(Function<Steps, T> work) {
        Steps steps = new Steps();
        FutureTask<T> task = new FutureTask<>(() -> work.apply(steps));
        Thread thread = new Thread(task, "calculators");
        thread.setDaemon(true);
        thread.start();
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return task.get(limit.toNanos() - steps.elapsed(), TimeUnit.NANOSECONDS);
                } catch (TimeoutException e) {
                    endIfOverdue(steps, thread);
                } catch (InterruptedException e) {
                    // No fault of the calculators: it is passed on afterwards.
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            throw rethrown(Objects.requireNonNull(e.getCause()));
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void endIfOverdue(Steps steps, Thread thread) {
        Steps.Step late = steps.now;
        if (late != null && System.nanoTime() - late.start >= limit.toNanos()) {
            steps.abandoned = true;
            thread.interrupt();
            throw new TooSlowException(late.name, limit);
        }
    }

    private static RuntimeException rethrown(Throwable thrown) {
        if (thrown instanceof Error e) {
            throw e;
        }
        if (thrown instanceof RuntimeException e) {
            throw e;
        }
        return new IllegalStateException(reason(thrown), thrown);
    }

    /** Whether the work can go on after it: out of memory is everybody's trouble. */
    static boolean containable(Throwable thrown) {
        return !(thrown instanceof AbandonedException) && isOneCalculatorsTrouble(thrown);
    }

    private static boolean isOneCalculatorsTrouble(Throwable thrown) {
        return !(thrown instanceof VirtualMachineError) || thrown instanceof StackOverflowError;
    }

    /** What went wrong, in one line without control characters. */
    static String reason(Throwable thrown) {
        String name = thrown.getClass().getSimpleName();
        String text = thrown.getMessage() == null ? name : name + ": " + thrown.getMessage();
        String line = text.replaceAll("\\p{Cntrl}+", " ");
        return line.length() > MAX_REASON ? line.substring(0, MAX_REASON) + "…" : line;
    }
}
