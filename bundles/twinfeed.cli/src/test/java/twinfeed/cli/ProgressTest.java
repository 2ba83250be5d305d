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

    private static void waitForLines(Path log, int count) throws IOException, InterruptedException {
        for (int tries = 0; tries < 600 && Files.readAllLines(log).size() < count; tries++) {
            Thread.sleep(50);
        }
        assertTrue(Files.readAllLines(log).size() >= count, "no line came");
    }
}
