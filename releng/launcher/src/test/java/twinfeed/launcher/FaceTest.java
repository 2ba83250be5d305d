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

class FaceTest {
    @Test
    void opensTheWindowWithoutAVerb() {
        assertEquals(Face.DESKTOP, Face.of(new String[0]));
        assertEquals(Face.DESKTOP, Face.of(new String[] {"desktop", "a.job"}));
        assertEquals(Face.HEADLESS, Face.of(new String[] {"quote", "desktop"}));
        assertEquals(Face.HEADLESS, Face.of(new String[] {"--help"}));
    }

    @Test
    void givesTheApplicationAllButTheWordForTheWindow() {
        assertArrayEquals(new String[] {"a.job"}, Face.DESKTOP.without(new String[] {"desktop", "a.job"}));
        assertArrayEquals(new String[0], Face.DESKTOP.without(new String[0]));
        // The framework's own options are arguments like any other.
        String[] arguments = {"calc", "-clean", "-data", "x"};
        assertArrayEquals(arguments, Face.HEADLESS.without(arguments));
    }

    @Test
    void readsItsOwnListAndNamesTheInstallation(@TempDir Path folder) throws IOException {
        Path configuration = Files.createDirectory(folder.resolve("configuration"));
        Files.writeString(configuration.resolve("headless.ini"), "eclipse.application=a\nosgi.instance.area=@none\n");
        Files.writeString(configuration.resolve("config.ini"), "eclipse.application=b\n");
        Properties headless = Face.HEADLESS.settings(new Installation(folder));
        assertEquals("a", headless.getProperty("eclipse.application"));
        assertEquals("@none", headless.getProperty("osgi.instance.area"));
        assertEquals(folder.toUri().toString(), headless.getProperty("osgi.install.area"));
        Properties desktop = Face.DESKTOP.settings(new Installation(folder));
        assertEquals("b", desktop.getProperty("eclipse.application"));
        String data = desktop.getProperty("osgi.instance.area");
        assertTrue(data.startsWith("file:/"), data);
        assertFalse(data.startsWith(folder.toUri().toString()), data);
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
