// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StateAreaTest {
    @Test
    void isUsedOnceItIsWhole(@TempDir Path folder) throws IOException {
        StateArea area = new StateArea(folder);
        FrameworkArea before = area.of(Face.HEADLESS);
        assertTrue(before.passing());
        assertFalse(before.folder().startsWith(folder));
        before.leave();
        Files.createFile(folder.resolve(StateArea.READY));
        assertEquals(new FrameworkArea(folder.resolve("headless"), true, false), area.of(Face.HEADLESS));
        assertEquals(new FrameworkArea(folder.resolve("desktop"), false, false), area.of(Face.DESKTOP));
    }

    @Test
    void isNotMissed() {
        FrameworkArea area = new StateArea(null).of(Face.HEADLESS);
        assertTrue(Files.isDirectory(area.folder()));
        area.leave();
        assertFalse(Files.exists(area.folder()));
    }

    @Test
    void leavesOnlyWhatWasForOneRun(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("kept/below"));
        new FrameworkArea(folder.resolve("kept"), false, false).leave();
        assertTrue(Files.isDirectory(folder.resolve("kept/below")));
        Files.createDirectories(folder.resolve("passing/below"));
        Files.createFile(folder.resolve("passing/below/file"));
        new FrameworkArea(folder.resolve("passing"), false, true).leave();
        assertFalse(Files.exists(folder.resolve("passing")));
    }

    @Test
    void tellsTheFrameworkWhetherItMayWrite(@TempDir Path folder) {
        Properties settings = new Properties();
        new FrameworkArea(folder, true, false).put(settings);
        assertEquals(folder.toUri().toString(), settings.getProperty("osgi.configuration.area"));
        assertEquals("true", settings.getProperty("osgi.configuration.area.readOnly"));
    }
}
