// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.jspecify.annotations.Nullable;

/** The version that the manifest of a class's own jar or folder states. */
final class BundleVersion {
    /** Where there is no manifest, for example among classes that an IDE has just compiled. */
    private static final String NONE = "0";

    private BundleVersion() {}

    static String of(Class<?> type) {
        CodeSource code = type.getProtectionDomain().getCodeSource();
        if (code == null || code.getLocation() == null) {
            return NONE;
        }
        try {
            Manifest manifest = manifest(place(code.getLocation()));
            String version =
                    manifest == null ? null : manifest.getMainAttributes().getValue("Bundle-Version");
            return version == null ? NONE : version;
        } catch (IOException
                | URISyntaxException
                | IllegalArgumentException
                | java.nio.file.FileSystemNotFoundException e) {
            return NONE;
        }
    }

    /** OSGi leaves blanks in a path as they are, a class path encodes them. */
    private static Path place(URL location) throws URISyntaxException {
        return location.getPath().indexOf(' ') >= 0
                ? Path.of(new URI(location.getProtocol(), location.getPath(), null))
                : Path.of(location.toURI());
    }

    private static @Nullable Manifest manifest(Path place) throws IOException {
        if (Files.isRegularFile(place)) {
            try (JarFile jar = new JarFile(place.toFile())) {
                return jar.getManifest();
            }
        }
        Path file = place.resolve("META-INF/MANIFEST.MF");
        if (!Files.isRegularFile(file)) {
            return null;
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return new Manifest(stream);
        }
    }
}
