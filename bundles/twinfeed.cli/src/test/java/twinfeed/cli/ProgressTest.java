// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.usecase.TwinfeedService;

class ProgressTest {
    /** While one row takes several seconds, and into a file that is read before the work is done. */
    @Test
    void aLineASecondAlsoIntoAFile(@TempDir Path folder) throws Exception {
        Path log = folder.resolve("log");
        try (PrintStream err =
                new PrintStream(new BufferedOutputStream(Files.newOutputStream(log)), false, StandardCharsets.UTF_8)) {
            CliContext context = new CliContext(new TwinfeedService(List.of()), Run.DAY, System.out, err);
            try (Progress progress = new Progress(context)) {
                progress.done(7, 21, 1);
                waitForLines(log, 2);
            }
            List<String> lines = Files.readAllLines(log);
            assertTrue(lines.get(0).startsWith("7 of 21 rows, 1 s, "), lines.toString());
            assertTrue(lines.get(0).matches(".* s, \\d+\\.\\d a second, \\d+ s left"), lines.toString());
            long after = lines.size();
            Thread.sleep(1200);
            assertEquals(after, Files.readAllLines(log).size(), "it says no more when the work is done");
        }
    }

    private static String secondLine(Path folder, int done, int all, int before) throws Exception {
        Path log = folder.resolve("log");
        try (PrintStream err = new PrintStream(Files.newOutputStream(log), true, StandardCharsets.UTF_8);
                Progress progress =
                        new Progress(new CliContext(new TwinfeedService(List.of()), Run.DAY, System.out, err))) {
            progress.done(done, all, before);
            waitForLines(log, 2);
        }
        return Files.readAllLines(log).get(1);
    }

    /** Rows that earlier work had judged say nothing about the pace: of 100 rows 10 are done here and 60 are left. */
    @Test
    void theTimeThatIsLeftFollowsFromTheRowsDoneHere(@TempDir Path folder) throws Exception {
        String line = secondLine(folder, 40, 100, 30);
        Matcher said = Pattern.compile("40 of 100 rows, (\\d+) s, ([0-9.]+) a second, (\\d+) s left")
                .matcher(line);
        assertTrue(said.matches(), line);
        double seconds = Double.parseDouble(said.group(1));
        double rate = Double.parseDouble(said.group(2));
        assertEquals(10 / seconds, rate, 10 / (seconds - 0.5) - 10 / seconds + 0.05, line);
        assertEquals(60 / rate, Double.parseDouble(said.group(3)), 60 / (rate - 0.05) - 60 / rate + 0.51, line);
    }

    @Test
    void beforeTheFirstRowNothingIsSaidOfTheTimeThatIsLeft(@TempDir Path folder) throws Exception {
        String line = secondLine(folder, 0, 100, 0);
        assertTrue(line.matches("0 of 100 rows, \\d+ s, 0\\.0 a second"), line);
        String unknown = secondLine(folder, 5, 0, 0);
        assertTrue(unknown.matches("5 rows, \\d+ s, \\d+\\.\\d a second"), unknown);
    }

    private static void waitForLines(Path log, int count) throws IOException, InterruptedException {
        for (int tries = 0; tries < 600 && Files.readAllLines(log).size() < count; tries++) {
            Thread.sleep(50);
        }
        assertTrue(Files.readAllLines(log).size() >= count, "no line came");
    }

    /** The quickest of several, for a busy machine may hold one of them up: there is nothing to wait for. */
    @Test
    void closingDoesNotWait() {
        long quickestMs = Long.MAX_VALUE;
        for (int tries = 0; tries < 5; tries++) {
            Progress progress = new Progress(Run.english());
            long begun = System.nanoTime();
            progress.close();
            quickestMs = Math.min(quickestMs, (System.nanoTime() - begun) / 1_000_000);
        }
        assertTrue(quickestMs < 900, quickestMs + " ms");
    }

    @Test
    void whoeverIsStoppedWhileItClosesLearnsOfIt() {
        Progress progress = new Progress(Run.english());
        Thread.currentThread().interrupt();
        progress.close();
        assertTrue(Thread.interrupted());
    }
}
