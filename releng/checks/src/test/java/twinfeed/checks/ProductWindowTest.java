// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window of the assembled product opens, on the screen of the environment ({@code releng/test} brings a virtual one). */
class ProductWindowTest {
    /** Windows of the toolkit's own are smaller. */
    private static final Pattern LARGE = Pattern.compile(" ([4-9]\\d\\d|\\d{4})x\\d{3}");

    private static final long PATIENCE_NS = TimeUnit.SECONDS.toNanos(60);

    @TempDir
    private Path scratch = Path.of("");

    @Test
    void opensWithoutAVerb() throws Exception {
        assumeTrue(System.getenv("DISPLAY") != null, "there is no screen here");
        try (Screen screen = Screen.start()) {
            opensWithoutAVerb(screen);
        }
    }

    private void opensWithoutAVerb(Screen screen) throws Exception {
        Path home = Files.createDirectory(scratch.resolve("home"));
        Product product = Product.copyTo(scratch.resolve("a product"))
                .with("DISPLAY", screen.display())
                .with("HOME", home.toString())
                .with("XDG_STATE_HOME", home.resolve("state").toString())
                .with("XDG_RUNTIME_DIR", home.resolve("run").toString());
        Path said = scratch.resolve("said.txt");
        ProcessBuilder builder = new ProcessBuilder("/bin/sh", product.script().toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        product.apply(builder.environment());
        Process process = builder.start();
        try {
            assertTrue(appears(screen, process), () -> "no window; the program said: " + text(said));
            assertTrue(
                    Files.isDirectory(home.resolve("state/twinfeed/workspace/.metadata")),
                    "its data are not in the home folder");
            secondStartHandsItsJobOver(product, screen, home.resolve("state/twinfeed/window.properties"));
        } finally {
            // The script hands the signal on; the program ends as when a session is closed.
            process.destroy();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it does not end");
        }
    }

    @Test
    void screenThatIsNotThereIsNamed() throws Exception {
        Path home = Files.createDirectory(scratch.resolve("home"));
        Product product = Product.copyTo(scratch.resolve("a product"))
                .keepingNothing()
                .with("DISPLAY", ":9876")
                .with("WAYLAND_DISPLAY", "")
                .with("GDK_BACKEND", "x11")
                .with("HOME", home.toString())
                .with("XDG_STATE_HOME", home.resolve("state").toString())
                .with("XDG_RUNTIME_DIR", home.resolve("run").toString());
        Product.Run run = product.run(product.demo("rowan-brook.job").toString());
        assertEquals(3, run.status(), run.err());
        assertTrue(run.err().contains("cannot be opened on the screen \":9876\""), run.err());
        assertFalse(run.err().contains("internal fault"), run.err());
    }

    /** The window that is there opens it and remembers it; the second start ends by itself, and there is no second window. */
    private static void secondStartHandsItsJobOver(Product product, Screen screen, Path remembered) throws Exception {
        Product.Run second = product.run(product.demo("rowan-brook.job").toString());
        assertEquals(0, second.status(), second.err());
        long start = System.nanoTime();
        while (!text(remembered).contains("rowan-brook.job") && System.nanoTime() - start < PATIENCE_NS) {
            Thread.sleep(200);
        }
        assertTrue(text(remembered).contains("rowan-brook.job"), "the job was not opened: " + text(remembered));
        assertEquals(1, windows(screen).size(), () -> "windows: " + text(remembered));
    }

    /** The large windows of the program. */
    private static List<String> windows(Screen screen) throws IOException {
        return screen.windows()
                .lines()
                .filter(line ->
                        line.contains("\"Twinfeed") && LARGE.matcher(line).find())
                .toList();
    }

    /** Asks the screen for its windows until one is there. */
    private static boolean appears(Screen screen, Process process) throws IOException, InterruptedException {
        long start = System.nanoTime();
        while (process.isAlive() && System.nanoTime() - start < PATIENCE_NS) {
            if (!windows(screen).isEmpty()) {
                return true;
            }
            Thread.sleep(200);
        }
        return false;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            return broken.toString();
        }
    }
}
