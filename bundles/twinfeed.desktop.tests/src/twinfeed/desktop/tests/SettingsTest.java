// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;
import twinfeed.desktop.Settings;

final class SettingsTest {
    private final Preferences node = InstanceScope.INSTANCE.getNode("twinfeed.desktop.tests");
    private final Settings settings = new Settings(node);

    @AfterEach
    void forget() throws BackingStoreException {
        node.clear();
    }

    private static Path job(int number) {
        return Path.of("job " + number + ".job").toAbsolutePath();
    }

    @Test
    void newestJobComesFirstAndOnlyOnce() {
        settings.remember(job(1));
        settings.remember(job(2));
        settings.remember(job(1));
        assertEquals(List.of(job(1), job(2)), new Settings(node).recent());
        settings.forget(job(1));
        assertEquals(List.of(job(2)), settings.recent());
    }

    @Test
    void oldestJobsAreForgotten() {
        for (int i = 0; i < 20; i++) {
            settings.remember(job(i));
        }
        assertEquals(Settings.MOST_RECENT, settings.recent().size());
        assertEquals(job(19), settings.recent().get(0));
    }

    @Test
    void layoutThatMakesNoSenseIsNotTaken() {
        assertArrayEquals(new int[] {1, 2, 3}, settings.layout("job", 1, 2, 3));
        settings.keepLayout("job", 30, 40, 30);
        assertArrayEquals(new int[] {30, 40, 30}, settings.layout("job", 1, 2, 3));
        assertArrayEquals(new int[] {1, 2}, settings.layout("job", 1, 2), "another number of panes");
        node.put("layout.job", "0 -1 x");
        assertArrayEquals(new int[] {1, 2, 3}, settings.layout("job", 1, 2, 3));
    }

    @Test
    void priceBookIsRemembered() {
        assertTrue(settings.prices().isEmpty());
        settings.prices(Path.of("prices.csv"));
        assertEquals(Path.of("prices.csv").toAbsolutePath(), settings.prices().orElseThrow());
    }
}
