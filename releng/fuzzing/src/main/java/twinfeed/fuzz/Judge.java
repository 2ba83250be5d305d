// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.model.io.InputException;
import twinfeed.units.UnitException;
import twinfeed.usecase.UnusableException;

/** Says whether an input was read or refused as it should: in time, with a message for people. */
final class Judge {
    /** Longest time of the processor for one input: what other programs do meanwhile does not count. */
    static final long MOST_MILLISECONDS = 2000;
    /** After this, by the clock, an input is taken to hang for ever. */
    private static final long HANGS_SECONDS = 60;
    /** Longest message, in characters. */
    static final int LONGEST_MESSAGE = 2048;

    private static final Pattern TECHNICAL = Pattern.compile(
            "\\bjava\\.|\\borg\\.(apache|eclipse|xml)\\.|\\tat |[a-z]Exception\\b|internal fault|StackOverflow|OutOfMemory");

    /** Reads an input. */
    @FunctionalInterface
    interface Reading {
        /** Reads; throws what the program throws, or returns what it printed. */
        String read() throws Exception;
    }

    private ExecutorService worker = newWorker();

    private static ExecutorService newWorker() {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "reader");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** What is wrong with how an input was taken; null if nothing is. */
    @Nullable
    Finding judge(byte[] input, Reading reading) throws InterruptedException {
        String message;
        AtomicLong spent = new AtomicLong();
        try {
            message = worker.submit(() -> timed(reading, spent)).get(HANGS_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            worker.shutdownNow();
            worker = newWorker();
            return new Finding("hangs: not read after " + HANGS_SECONDS + " s", "hangs", input);
        } catch (ExecutionException e) {
            Throwable thrown = e.getCause() == null ? e : e.getCause();
            if (!refusal(thrown)) {
                return new Finding(first(thrown.toString()), place(thrown), input);
            }
            message = String.valueOf(thrown.getMessage());
        }
        long milliseconds = spent.get() / 1_000_000;
        if (milliseconds > MOST_MILLISECONDS) {
            return new Finding("slow: " + milliseconds + " ms", "slow", input);
        }
        String wrong = wrong(message);
        return wrong == null ? null : new Finding(wrong + ": " + first(message), wrong, input);
    }

    private static String timed(Reading reading, AtomicLong spent) throws Exception {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        try {
            return reading.read();
        } finally {
            spent.set(threads.getCurrentThreadCpuTime() - start);
        }
    }

    private static boolean refusal(Throwable thrown) {
        return thrown instanceof InputException
                || thrown instanceof UnusableException
                || thrown instanceof ArgumentException
                || thrown instanceof UnitException;
    }

    private static @Nullable String wrong(String message) {
        if (message.length() > LONGEST_MESSAGE) {
            return "message of more than " + LONGEST_MESSAGE + " characters";
        }
        if (TECHNICAL.matcher(message).find()) {
            return "technical message";
        }
        boolean raw = message.chars()
                .anyMatch(each -> each < ' ' && each != '\n' && each != '\t'
                        || each == 0x7f
                        || each == 0x202e
                        || each >= 0x80 && each < 0xa0);
        return raw ? "control character in the message" : null;
    }

    private static String first(String text) {
        String line = text.lines().findFirst().orElse("").replaceAll("\\p{Cntrl}", "?");
        return line.length() > 300 ? line.substring(0, 300) + "..." : line;
    }

    /** Where it was thrown: the kind and the topmost place in our own code. */
    private static String place(Throwable thrown) {
        String kind = thrown.getClass().getSimpleName();
        for (StackTraceElement each : thrown.getStackTrace()) {
            if (each.getClassName().startsWith("twinfeed.")) {
                return kind + " at " + each.getClassName() + "." + each.getMethodName() + ":" + each.getLineNumber();
            }
        }
        return kind;
    }
}
