// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * What a screen reader is told of the window. The judge is from outside: the bus of assistive technology of the desktop (AT-SPI 2),
 * read by its own library, through which every page is opened too. Both languages at once, each on a screen and a bus of its own: a reader
 * waits for the window most of the time.
 */
@Execution(ExecutionMode.CONCURRENT)
class ScreenReaderTest {
    private static final Path LAUNCHER = Path.of("/usr/libexec/at-spi-bus-launcher");
    private static final long LIMIT_S = 600;
    private static final int PAGES_OF_THE_SURVEY = 10;

    private static final List<String> PAGES = List.of(
            "Quick question",
            "Office: jobs and quotes",
            "List of dwellings",
            "Change the price book",
            "Change the heaters",
            "Settings",
            "Checks explained");

    @TempDir
    private Path scratch = Path.of("");

    private static final List<String> SEITEN = List.of(
            "Schnelle Frage",
            "Büro: Aufträge und Angebote",
            "Liste von Wohnungen",
            "Preisliste ändern",
            "Geräte ändern",
            "Einstellungen",
            "Prüfungen erklärt");

    @Test
    void everythingThatCanBeReachedHasAName() throws Exception {
        listen(
                "en",
                "Survey",
                "Save",
                PAGES,
                "alder-beck: saved .*\\. Saved to .*",
                "Saved to ",
                "Explain this check (F1)");
    }

    @Test
    void germanWindowSpeaksGerman() throws Exception {
        listen(
                "de",
                "Aufnahme",
                "Speichern",
                SEITEN,
                "alder-beck: gespeichert .*\\. Gespeichert in .*",
                "Gespeichert in ",
                "Diese Prüfung erklären (F1)");
    }

    private void listen(
            String language,
            String survey,
            String save,
            List<String> pages,
            String status,
            String announced,
            String link)
            throws Exception {
        assumeTrue(
                System.getenv("DISPLAY") != null && Files.exists(LAUNCHER),
                "no screen, or no bus of assistive technology");
        // Beside it the window's own tests press keys on the common screen, and two windows there would take them from
        // one another.
        try (Screen screen = Screen.start()) {
            listenOn(screen, language, List.of(survey, save), pages, status, announced, link);
        }
    }

    private void listenOn(
            Screen screen,
            String language,
            List<String> words,
            List<String> pages,
            String status,
            String announced,
            String link)
            throws Exception {
        Path home = Files.createDirectory(scratch.resolve("home"));
        Product product = Product.copyTo(scratch.resolve("product"))
                .keepingNothing()
                .with("DISPLAY", screen.display())
                .with("HOME", home.toString())
                .with("LANG", "C.UTF-8")
                .with(
                        "XDG_RUNTIME_DIR",
                        Files.createDirectory(scratch.resolve("run")).toString())
                .with("XDG_STATE_HOME", "")
                .with("XDG_CONFIG_HOME", "")
                // A window that is read once and closed: the optimising compiler would be half of its work.
                .with("JDK_JAVA_OPTIONS", "-XX:TieredStopAtLevel=1 -Duser.language=" + language)
                .with("NO_AT_BRIDGE", "");
        List<String> command = new ArrayList<>(List.of(
                "dbus-run-session",
                "--",
                "/bin/sh",
                resource("session.sh").toString(),
                LAUNCHER.toString(),
                product.script().toString(),
                product.demo("alder-beck.job").toString(),
                resource("read.py").toString()));
        command.addAll(words);
        command.addAll(pages);
        Path said = scratch.resolve("said.txt");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
        product.apply(builder.environment());
        Process process = builder.start();
        boolean ended = process.waitFor(LIMIT_S, TimeUnit.SECONDS);
        process.descendants().forEach(ProcessHandle::destroy);
        process.destroy();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertTrue(ended, text);
        List<String> read =
                text.lines().filter(line -> line.startsWith("PAGE ")).toList();
        assertEquals(PAGES_OF_THE_SURVEY + pages.size(), read.size(), text);
        assertTrue(read.stream().mapToInt(ScreenReaderTest::controls).allMatch(count -> count > 5), read.toString());
        assertEquals(
                List.of(),
                text.lines().filter(line -> line.startsWith("NAMELESS ")).toList());
        assertTrue(text.lines().anyMatch(line -> line.startsWith("SAID " + announced)), text);
        assertTrue(text.lines().anyMatch(line -> line.matches("STATUS " + status)), text);
        assertTrue(text.lines().anyMatch(("LINK " + link)::equals), text);
    }

    private static int controls(String line) {
        return Integer.parseInt(line.substring(line.lastIndexOf(' ') + 1));
    }

    private Path resource(String name) throws Exception {
        Path file = scratch.resolve(name);
        try (var stream = ScreenReaderTest.class.getResourceAsStream("screenreader/" + name)) {
            Files.copy(stream, file);
        }
        return file;
    }
}
