// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.io.Reader;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * The folder that the product was unpacked into. It is only read: what a run writes goes to a {@link StateArea}.
 *
 * @param folder holds this program's jar, {@code plugins} and {@code configuration}
 */
record Installation(Path folder) {
    /** The one whose jar is running. */
    static Installation running() {
        try {
            Path jar = Path.of(Installation.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return new Installation(jar.resolveSibling("").toAbsolutePath());
        } catch (URISyntaxException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** The settings of the framework that were fixed when the product was assembled, from {@code configuration/NAME.ini}. */
    Properties settings(String name) throws IOException {
        Properties settings = new Properties();
        try (Reader text =
                Files.newBufferedReader(folder.resolve("configuration").resolve(name + ".ini"))) {
            settings.load(text);
        }
        settings.setProperty("osgi.install.area", folder.toUri().toString());
        return settings;
    }

    /** Whether there may be calculators of third parties, in the folder that the use cases look into. */
    boolean extended() {
        Path calculators = folder.resolve("calculators");
        if (System.getProperty("twinfeed.calculators") != null) {
            return true;
        }
        try (Stream<Path> files = Files.exists(calculators) ? Files.list(calculators) : Stream.empty()) {
            return files.findAny().isPresent();
        } catch (IOException unreadable) {
            return false; // the use cases say so
        }
    }
}
