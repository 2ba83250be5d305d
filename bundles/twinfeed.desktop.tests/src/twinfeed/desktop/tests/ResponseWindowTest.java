// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.session.JobSession;

/**
 * How long a person waits from leaving a field until findings, options and quote of what was typed are on the screen, and how long the
 * window does not answer meanwhile. The figures are written to {@code response.txt} beside the pictures, for people to look at; the test
 * fails only where a person would leave: other programs may run on the machine that tests.
 */
final class ResponseWindowTest extends DemoWindow {
    private static final String STATIC = "survey.water.test.staticPressure";
    private static final int WATER = 3;
    private static final int WARM = 3;
    private static final int MEASURED = Integer.getInteger("twinfeed.response.edits", 12);
    private static final double LONGEST_WAIT_MS = 10_000;
    private static final double LONGEST_STALL_MS = 2_000;

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        window.open(folder);
        window.settled();
        ui.run(() -> job().survey().show(WATER));
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    /** Asks the window's thread for its time again and again; the longest wait is the longest time in which it did not answer. */
    private static final class Stalls implements AutoCloseable {
        private final AtomicLong longest = new AtomicLong();
        private final Thread asking;

        Stalls(Display display) {
            asking = new Thread(
                    () -> {
                        while (!Thread.currentThread().isInterrupted() && !display.isDisposed()) {
                            long asked = System.nanoTime();
                            display.syncExec(() -> longest.accumulateAndGet(System.nanoTime() - asked, Math::max));
                            try {
                                Thread.sleep(1);
                            } catch (InterruptedException end) {
                                return;
                            }
                        }
                    },
                    "stalls");
            asking.setDaemon(true);
            asking.start();
        }

        double takeMs() {
            return longest.getAndSet(0) / 1e6;
        }

        @Override
        public void close() throws InterruptedException {
            asking.interrupt();
            asking.join();
        }
    }

    private static double median(List<Double> values) {
        return quantile(values, 0.5);
    }

    private static double quantile(List<Double> values, double share) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1.0, Math.ceil(share * sorted.size()) - 1));
    }

    @Test
    void resultsFollowWhatWasTyped() throws Exception {
        Display display = ui.ask(() -> ui.shell().getDisplay());
        JobSession session = ui.ask(() -> job().session());
        List<Double> first = new ArrayList<>();
        List<Double> whole = new ArrayList<>();
        List<Double> stalls = new ArrayList<>();
        AtomicLong glanced = new AtomicLong();
        AtomicLong complete = new AtomicLong();
        // Told after the panes, which have listened since they were made; what they changed is drawn when the queue of
        // events is empty.
        Runnable listening = session.resulted().listen(() -> {
            Runnable drawn = () -> {
                while (display.readAndDispatch()) {
                    // until it is drawn
                }
            };
            drawn.run();
            (session.current() ? complete : glanced).compareAndSet(0, System.nanoTime());
        });
        try (Stalls watch = new Stalls(display)) {
            for (int i = 0; i < WARM + MEASURED; i++) {
                String typed = String.format(Locale.ROOT, "2.%02d bar", 60 + i);
                glanced.set(0);
                complete.set(0);
                watch.takeMs();
                long left = System.nanoTime();
                ui.type(STATIC, typed, SWT.DefaultSelection);
                ui.await("everything is there", () -> complete.get() != 0);
                Thread.sleep(100);
                if (i >= WARM) {
                    long early = glanced.get() == 0 ? complete.get() : glanced.get();
                    first.add((early - left) / 1e6);
                    whole.add((complete.get() - left) / 1e6);
                    stalls.add(watch.takeMs());
                }
            }
        } finally {
            listening.run();
        }
        String report = String.format(
                Locale.ROOT,
                "%d edits of alder-beck, ms (median, 95th percentile, longest)%n"
                        + "first findings, options and quote: %.0f %.0f %.0f%n"
                        + "all of it, works searched: %.0f %.0f %.0f%n"
                        + "longest time in which the window did not answer: %.0f %.0f %.0f%n",
                MEASURED,
                median(first),
                quantile(first, 0.95),
                quantile(first, 1),
                median(whole),
                quantile(whole, 0.95),
                quantile(whole, 1),
                median(stalls),
                quantile(stalls, 0.95),
                quantile(stalls, 1));
        Path shots = Files.createDirectories(Path.of(System.getProperty("twinfeed.shots", "target/screenshots")));
        Files.write(shots.resolve("response.txt"), report.getBytes(StandardCharsets.UTF_8));
        assertTrue(median(whole) < LONGEST_WAIT_MS, report);
        assertTrue(median(stalls) < LONGEST_STALL_MS, report);
    }
}
