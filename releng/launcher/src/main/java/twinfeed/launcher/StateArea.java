// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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
     * Where the framework keeps its state for a face.
     *
     * <p>The command line only reads it, once it is there: any number of runs may start at the same time and none leaves a trace.
     * The window keeps its own, which it writes.
     */
    FrameworkArea of(Face face) {
        if (folder == null || !ready()) {
            return FrameworkArea.forOneRun();
        }
        return new FrameworkArea(folder.resolve(face.name().toLowerCase(Locale.ROOT)), face == Face.HEADLESS, false);
    }
}
