// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SettingsTest {
    @TempDir
    private Path home = Path.of("");

    private PlatformFolders folders = new PlatformFolders("Linux", home, Map.of());

    @BeforeEach
    void folders() {
        folders = new PlatformFolders("Linux", home, Map.of());
    }

    private Settings settings() {
        return Settings.in(folders);
    }

    private static Path job(int number) {
        return Path.of("job " + number + ".job").toAbsolutePath();
    }

    @Test
    void newestJobComesFirstAndOnlyOnce() {
        Settings settings = settings();
        settings.remember(job(1));
        settings.remember(job(2));
        settings.remember(job(1));
        assertEquals(List.of(job(1), job(2)), settings().recent());
        settings.forget(job(1));
        assertEquals(List.of(job(2)), settings().recent());
    }

    @Test
    void oldestJobsAreForgotten() {
        Settings settings = settings();
        for (int i = 0; i < 20; i++) {
            settings.remember(job(i));
        }
        assertEquals(Settings.MOST_RECENT, settings.recent().size());
        assertEquals(job(19), settings.recent().get(0));
    }

    @Test
    void layoutThatMakesNoSenseIsNotTaken() {
        Settings settings = settings();
        assertArrayEquals(new int[] {1, 2, 3}, settings.layout("job", 1, 2, 3));
        settings.keepLayout("job", 30, 40, 30);
        assertArrayEquals(new int[] {30, 40, 30}, settings.layout("job", 1, 2, 3));
        assertArrayEquals(new int[] {1, 2}, settings.layout("job", 1, 2), "another number of panes");
        new SettingsFile(home.resolve(".local/state/twinfeed/window.properties")).put("layout.job", "0 -1 x");
        assertArrayEquals(new int[] {1, 2, 3}, settings().layout("job", 1, 2, 3));
    }

    @Test
    void choicesAreRememberedAndTakenBack() {
        Settings settings = settings();
        assertTrue(settings.prices().isEmpty());
        settings.prices(Path.of("prices.csv"));
        settings.jobs(Optional.of(home));
        settings.papers("de");
        settings.rules("some-rules");
        assertEquals(Path.of("prices.csv").toAbsolutePath(), settings().prices().orElseThrow());
        assertEquals(home.toAbsolutePath(), settings().jobs().orElseThrow());
        assertEquals("de", settings().papers());
        assertEquals("some-rules", settings().rules());
        settings.noPrices();
        settings.jobs(Optional.empty());
        settings.papers("");
        assertTrue(settings().prices().isEmpty());
        assertTrue(settings().jobs().isEmpty());
        assertEquals("", settings().papers());
    }

    /** XDG Base Directory Specification 0.8: what was chosen is configuration; recently used files and layout are state. */
    @Test
    void choicesAndMemoryAreKeptWhereThePlatformWantsThem() {
        Settings settings = settings();
        settings.language("de");
        settings.remember(job(1));
        Path config = home.resolve(".config/twinfeed/settings.properties");
        assertEquals(config, settings.file());
        assertTrue(Files.exists(config));
        assertTrue(Files.exists(home.resolve(".local/state/twinfeed/window.properties")));
        assertFalse(Files.exists(home.resolve(".local/share/twinfeed")));
        Path elsewhere = home.resolve("elsewhere").toAbsolutePath();
        PlatformFolders other = new PlatformFolders(
                "Linux",
                home,
                Map.of("XDG_CONFIG_HOME", elsewhere.toString(), "XDG_STATE_HOME", "relative counts as none"));
        assertEquals(elsewhere.resolve("twinfeed"), other.config());
        assertEquals(home.resolve(".local/state/twinfeed"), other.state());
    }

    /** The file as the framework's preferences wrote it for the first releases. */
    @Test
    void settingsOfTheFirstReleasesAreTakenOverOnce() throws IOException {
        Path former = folders.formerSettings();
        assertTrue(former.startsWith(home.resolve(".local/share/twinfeed/.metadata")), former.toString());
        Files.createDirectories(former.getParent());
        Properties written = new Properties();
        written.setProperty("eclipse.preferences.version", "1");
        written.setProperty("recent", job(1) + "\n" + job(2));
        written.setProperty("prices", job(3).resolveSibling("Bücher.csv").toString());
        written.setProperty("language", "de");
        written.setProperty("layout.window", "1000 700");
        try (var out = Files.newOutputStream(former)) {
            written.store(out, null);
        }
        Settings settings = settings();
        assertEquals(List.of(job(1), job(2)), settings.recent());
        assertEquals(job(3).resolveSibling("Bücher.csv"), settings.prices().orElseThrow());
        assertEquals("de", settings.language());
        assertArrayEquals(new int[] {1000, 700}, settings.layout("window", 1, 2));
        settings.language("en");
        assertEquals("en", settings().language(), "not taken over again");
        assertTrue(Files.exists(former), "the old file stays, for an older release");
    }

    @Test
    void sameSettingsAreTheSameBytesAndAnotherWindowsChangesStay() throws IOException {
        SettingsFile one = new SettingsFile(home.resolve("a.properties"));
        SettingsFile other = new SettingsFile(home.resolve("a.properties"));
        one.put("b", "ü = # \\ 1");
        other.put("a", "two\nlines");
        assertEquals("ü = # \\ 1", other.get("b", ""));
        one.put("c", "");
        assertEquals("two\nlines", one.get("a", ""));
        byte[] written = Files.readAllBytes(home.resolve("a.properties"));
        one.put("a", "two\nlines");
        assertArrayEquals(written, Files.readAllBytes(home.resolve("a.properties")));
    }
}
