// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What is kept between starts so that the next is quicker: the framework's own state and the archives of classes. All of it can be
 * made again, and a start works without it. One belongs to one product folder and one Java machine; the start script names it.
 *
 * @param folder absent if there is nowhere to keep it
 */
record StateArea(@Nullable Path folder) {
    /** System property: the folder. */
    static final String PROPERTY = "twinfeed.state";
    /** Name of the archive of classes of the command line. */
    static final String ARCHIVE = "headless.jsa";
    /** Name of the folder of the framework's state for the command line. */
    static final String SETTLED = "headless";
    /** Written last: what the other names hold is whole. */
    static final String READY = "ready";

    /** The one that the start script named. */
    static StateArea given() {
        String name = System.getProperty(PROPERTY, "");
        return new StateArea(name.isEmpty() ? null : Path.of(name).toAbsolutePath());
    }

    boolean ready() {
        return folder != null && Files.isRegularFile(folder.resolve(READY));
    }

    /**
     * Where the framework keeps its state for a mode.
     *
     * <p>The command line only reads it, once it is there: any number of runs may start at the same time and none leaves a trace.
     * A framework that may not write installs nothing either, so with calculators of third parties a run gets a copy of its own.
     * The window keeps its own state, which it writes.
     *
     * @param mode the one that starts
     * @param extended whether bundles may be installed that the product does not list
     * @throws IOException if there is no room for a copy
     */
    FrameworkArea of(LaunchMode mode, boolean extended) throws IOException {
        if (folder == null || !ready()) {
            return FrameworkArea.forOneRun();
        }
        if (mode == LaunchMode.DESKTOP) {
            return new FrameworkArea(folder.resolve("desktop"), false, false);
        }
        Path settled = folder.resolve(SETTLED);
        if (!Files.isDirectory(settled.resolve("org.eclipse.osgi"))) {
            return FrameworkArea.forOneRun();
        }
        return extended ? FrameworkArea.copyForOneRun(settled) : new FrameworkArea(settled, true, false);
    }
}
