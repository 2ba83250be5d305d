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
        FrameworkArea before = area.of(LaunchMode.HEADLESS, false);
        assertTrue(before.passing());
        assertFalse(before.folder().startsWith(folder));
        before.leave();
        Files.createFile(folder.resolve(StateArea.READY));
        assertTrue(area.of(LaunchMode.HEADLESS, false).passing(), "what was kept is gone");
        Files.createDirectories(folder.resolve("headless/org.eclipse.osgi"));
        assertEquals(new FrameworkArea(folder.resolve("headless"), true, false), area.of(LaunchMode.HEADLESS, false));
        assertEquals(new FrameworkArea(folder.resolve("desktop"), false, false), area.of(LaunchMode.DESKTOP, false));
    }

    @Test
    void isCopiedWhereBundlesMayBeInstalled(@TempDir Path folder) throws IOException {
        Files.createFile(folder.resolve(StateArea.READY));
        Files.createDirectories(folder.resolve("headless/org.eclipse.osgi"));
        Files.writeString(folder.resolve("headless/org.eclipse.osgi/state"), "resolved");
        FrameworkArea copy = new StateArea(folder).of(LaunchMode.HEADLESS, true);
        assertFalse(copy.readOnly());
        assertTrue(copy.passing());
        assertEquals("resolved", Files.readString(copy.folder().resolve("org.eclipse.osgi/state")));
        copy.leave();
        assertEquals("resolved", Files.readString(folder.resolve("headless/org.eclipse.osgi/state")));
    }

    @Test
    void aStartWithoutAStateFolderTakesATemporaryOne() throws IOException {
        FrameworkArea area = new StateArea(null).of(LaunchMode.HEADLESS, false);
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
