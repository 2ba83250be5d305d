// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Runs code of others so that what goes wrong in it ends there. It gets a thread of its own, which nobody waits for when the time is
 * over: it is a daemon, so the program can still end. What cannot be contained within one process is memory that runs out and a call
 * that ends the process.
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

    /** Says that the code did not end in time. */
    static final class TooSlowException extends RuntimeException {
        private static final long serialVersionUID = 1;

        TooSlowException(Duration limit) {
            super("it did not answer within " + limit.toSeconds() + " s");
        }
    }

    /**
     * Runs it.
     *
     * @throws TooSlowException if it did not end in time; it may still be running then
     */
    void run(String name, Runnable code) {
        AtomicReference<@Nullable Throwable> thrown = new AtomicReference<>();
        Thread thread = new Thread(
                () -> {
                    try {
                        code.run();
                    } catch (Throwable e) {
                        thrown.set(e);
                    }
                },
                "calculator " + name);
        thread.setDaemon(true);
        thread.start();
        await(thread);
        if (thread.isAlive()) {
            thread.interrupt();
            throw new TooSlowException(limit);
        }
        rethrow(thrown.get());
    }

    /** Waits to the limit even if somebody interrupts: that is no fault of the calculator's, and is passed on afterwards. */
    private void await(Thread thread) {
        long end = System.nanoTime() + limit.toNanos();
        boolean interrupted = false;
        while (thread.isAlive() && System.nanoTime() < end) {
            try {
                thread.join(Math.max(1, (end - System.nanoTime()) / 1_000_000));
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void rethrow(@Nullable Throwable thrown) {
        if (thrown instanceof Error e) {
            throw e;
        }
        if (thrown instanceof RuntimeException e) {
            throw e;
        }
        if (thrown != null) {
            throw new IllegalStateException(reason(thrown), thrown);
        }
    }

    /** Whether the program can go on after it: out of memory is everybody's trouble. */
    static boolean containable(Throwable thrown) {
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
