// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LaunchModeTest {
    @Test
    void opensTheWindowWithoutAVerb() {
        assertEquals(LaunchMode.DESKTOP, LaunchMode.of(new String[0]));
        assertEquals(LaunchMode.DESKTOP, LaunchMode.of(new String[] {"desktop", "a.job"}));
        assertEquals(LaunchMode.DESKTOP, LaunchMode.of(new String[] {"a folder/a.job", "b.job"}));
        assertEquals(LaunchMode.HEADLESS, LaunchMode.of(new String[] {"quote", "desktop"}));
        assertEquals(LaunchMode.HEADLESS, LaunchMode.of(new String[] {"--help"}));
    }

    @Test
    void givesTheApplicationAllButTheWordForTheWindow() {
        assertArrayEquals(new String[] {"a.job"}, LaunchMode.DESKTOP.without(new String[] {"desktop", "a.job"}));
        assertArrayEquals(new String[0], LaunchMode.DESKTOP.without(new String[0]));
        // The framework's own options are arguments like any other.
        String[] arguments = {"calc", "-clean", "-data", "x"};
        assertArrayEquals(arguments, LaunchMode.HEADLESS.without(arguments));
    }

    @Test
    void jobsAreGivenAsWholePathsWithOrWithoutTheOption() {
        Path here = Path.of("").toAbsolutePath();
        assertEquals(
                java.util.List.of(
                        here.resolve("a b.job").toString(),
                        here.resolve("c.job").toString()),
                LaunchMode.DESKTOP.jobs(new String[] {"desktop", "-job", "a b.job", "x/../c.job"}));
        assertEquals(
                java.util.List.of(here.resolve("a.job").toString()), LaunchMode.DESKTOP.jobs(new String[] {"a.job"}));
        assertEquals(java.util.List.of(), LaunchMode.DESKTOP.jobs(new String[] {"desktop"}));
        assertArrayEquals(new String[] {"-job", "a", "-job", "b"}, LaunchMode.told(java.util.List.of("a", "b")));
    }

    /** XDG Base Directory Specification 0.8: $HOME/.local/state without a variable, and only absolute paths count. */
    @Test
    void stateAndRuntimeAreWhereThePlatformWantsThem(@TempDir Path home) {
        UserFolders bare = new UserFolders("Linux", home, java.util.Map.of("XDG_STATE_HOME", "relative"));
        assertEquals(home.resolve(".local/state/twinfeed"), bare.state());
        assertEquals(home.resolve(".local/state/twinfeed/run"), bare.runtime());
        UserFolders set = new UserFolders(
                "Linux",
                home,
                java.util.Map.of("XDG_STATE_HOME", home + "/state", "XDG_RUNTIME_DIR", home + "/runtime"));
        assertEquals(home.resolve("state/twinfeed"), set.state());
        assertEquals(home.resolve("runtime/twinfeed"), set.runtime());
        assertEquals(
                home.resolve("Library/Application Support/Twinfeed"),
                new UserFolders("Mac OS X", home, java.util.Map.of()).state());
    }

    @Test
    void readsItsOwnListAndNamesTheInstallation(@TempDir Path folder) throws IOException {
        Path configuration = Files.createDirectory(folder.resolve("configuration"));
        Files.writeString(configuration.resolve("headless.ini"), "eclipse.application=a\nosgi.instance.area=@none\n");
        Files.writeString(configuration.resolve("config.ini"), "eclipse.application=b\n");
        Properties headless = LaunchMode.HEADLESS.settings(new Installation(folder), false);
        assertEquals("a", headless.getProperty("eclipse.application"));
        assertEquals("@none", headless.getProperty("osgi.instance.area"));
        assertEquals(folder.toUri().toString(), headless.getProperty("osgi.install.area"));
        Properties desktop = LaunchMode.DESKTOP.settings(new Installation(folder), false);
        assertEquals("b", desktop.getProperty("eclipse.application"));
        Path state = UserFolders.here().state();
        assertEquals(
                state.resolve("workspace").toUri(), java.net.URI.create(desktop.getProperty("osgi.instance.area")));
        assertEquals(state.resolve("twinfeed.log").toString(), desktop.getProperty("osgi.logfile"));
        Properties alone = LaunchMode.DESKTOP.settings(new Installation(folder), true);
        assertFalse(alone.getProperty("osgi.instance.area").contains("workspace"), "a second window has its own");
    }

    @Test
    void seesCalculatorsOfThirdParties(@TempDir Path folder) throws IOException {
        Installation installation = new Installation(folder);
        assertFalse(installation.extended());
        Path calculators = Files.createDirectory(folder.resolve("calculators"));
        assertFalse(installation.extended());
        Files.createFile(calculators.resolve("other.jar"));
        assertTrue(installation.extended());
    }
}
