// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.launcher.OneWindow.Role;

class OneWindowTest {
    private static final long PATIENCE_MS = 20_000;

    @TempDir
    private Path scratch = Path.of("");

    private Path folder() {
        return scratch.resolve("run");
    }

    @Test
    void laterStartHandsItsFilesOverAndTheFirstIsTheFirstAgainAfterwards() throws Exception {
        try (OneWindow window = OneWindow.in(folder())) {
            assertEquals(Role.FIRST, window.start(List.of(), PATIENCE_MS));
            List<String> files = List.of("/a folder/Höhe 1.job", "/two\nlines + 100 %.job", "/b.job");
            CompletableFuture<Role> later = later(files);
            assertEquals(files, window.requests().poll(20, TimeUnit.SECONDS));
            assertEquals(Role.HANDED_OVER, later.get(20, TimeUnit.SECONDS));
            CompletableFuture<Role> bare = later(List.of());
            assertEquals(List.of(), window.requests().poll(20, TimeUnit.SECONDS));
            assertEquals(Role.HANDED_OVER, bare.get(20, TimeUnit.SECONDS));
        }
        try (OneWindow next = OneWindow.in(folder())) {
            assertEquals(Role.FIRST, next.start(List.of(), PATIENCE_MS));
        }
    }

    private CompletableFuture<Role> later(List<String> files) {
        return CompletableFuture.supplyAsync(() -> OneWindow.in(folder()).start(files, PATIENCE_MS));
    }

    @Test
    void startWaitsForAWindowThatIsJustClosing() throws Exception {
        OneWindow window = OneWindow.in(folder());
        assertEquals(Role.FIRST, window.start(List.of(), PATIENCE_MS));
        // As while it closes: it listens no more, but holds its lock.
        Files.delete(folder().resolve("window.socket"));
        CompletableFuture<Role> later = later(List.of("/a.job"));
        Thread.sleep(500);
        assertTrue(!later.isDone(), "it waits");
        window.close();
        assertEquals(Role.FIRST, later.get(20, TimeUnit.SECONDS));
    }

    @Test
    void windowThatDoesNotAnswerKeepsNobodyFromWorking() throws IOException {
        try (OneWindow window = OneWindow.in(folder())) {
            assertEquals(Role.FIRST, window.start(List.of(), PATIENCE_MS));
            Files.delete(folder().resolve("window.socket"));
            assertEquals(Role.ALONE, OneWindow.in(folder()).start(List.of(), 300));
        }
    }

    /** A process that is killed leaves lock and socket behind, as files; the system has taken its lock back. */
    @Test
    void whatAKilledWindowLeftBehindStopsNobody() throws Exception {
        Process killed = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        folder().toString())
                .redirectErrorStream(true)
                .start();
        assertEquals("FIRST", killed.inputReader().readLine());
        assertTrue(Files.exists(folder().resolve("window.socket")));
        assertNotEquals(Role.FIRST, OneWindow.in(folder()).start(List.of(), 0), "while it lives");
        killed.destroyForcibly().waitFor();
        assertTrue(Files.exists(folder().resolve("window.socket")), "it is left behind");
        try (OneWindow next = OneWindow.in(folder())) {
            assertEquals(Role.FIRST, next.start(List.of(), PATIENCE_MS));
        }
    }

    /** A window in a process of its own. */
    static final class Holder {
        private Holder() {}

        public static void main(String[] arguments) throws InterruptedException {
            System.out.println(OneWindow.in(Path.of(arguments[0])).start(List.of(), PATIENCE_MS));
            Thread.sleep(PATIENCE_MS);
        }
    }

    @Test
    void nobodyElseMayEnterTheFolder() throws IOException {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"), "rights of POSIX");
        Files.createDirectories(folder());
        Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString("rwxrwxrwx"));
        try (OneWindow window = OneWindow.in(folder())) {
            assertEquals(Role.FIRST, window.start(List.of(), PATIENCE_MS));
            assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder())));
        }
    }

    @Test
    void withoutAPlaceForTheLockAWindowOpensAllTheSame() throws IOException {
        Path file = Files.createFile(scratch.resolve("file"));
        assertEquals(Role.ALONE, OneWindow.in(file.resolve("run")).start(List.of(), PATIENCE_MS));
    }
}
