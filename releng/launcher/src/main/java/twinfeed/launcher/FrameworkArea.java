// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * The folder in which one run of the framework keeps its state.
 *
 * @param folder where
 * @param readOnly nothing is written there, and no lock is taken
 * @param passing is deleted when the run ends
 */
record FrameworkArea(Path folder, boolean readOnly, boolean passing) {
    /** A fresh one for a single run. */
    static FrameworkArea forOneRun() {
        try {
            return new FrameworkArea(Files.createTempDirectory("twinfeed-"), false, true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** One for a single run that begins with the content of another folder. */
    static FrameworkArea copyForOneRun(Path from) throws IOException {
        FrameworkArea copy = forOneRun();
        try (Stream<Path> files = Files.walk(from)) {
            List<Path> inOrder = files.toList();
            for (Path file : inOrder) {
                Path target = copy.folder.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return copy;
    }

    /** Tells the framework. */
    void put(Properties settings) {
        settings.setProperty("osgi.configuration.area", folder.toUri().toString());
        settings.setProperty("osgi.configuration.area.readOnly", Boolean.toString(readOnly));
    }

    /** Deletes it if it was only for this run; what cannot be deleted stays with the other temporary files. */
    void leave() {
        if (!passing) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException stays) {
            folder.toFile().deleteOnExit();
        }
    }
}
