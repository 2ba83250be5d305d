// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The folders in which the platform wants a program's files: on Linux those of the XDG Base Directory Specification, on Windows the
 * person's application data, on macOS the library's application support.
 *
 * @param system name of the system, as the property {@code os.name} has it
 * @param home the person's folder
 * @param environment variables of the environment
 */
public record PlatformFolders(String system, Path home, Map<String, String> environment) {
    /** Those of this machine. */
    public static PlatformFolders here() {
        return new PlatformFolders(
                System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")), System.getenv());
    }

    /** Where the person's own files of the program are: templates of houses. */
    public Path data() {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return named("APPDATA", home.resolve("AppData").resolve("Roaming")).resolve("Twinfeed");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Twinfeed");
        }
        return named("XDG_DATA_HOME", home.resolve(".local").resolve("share")).resolve("twinfeed");
    }

    /** A relative path in such a variable counts as none, as the specification says. */
    private Path named(String variable, Path otherwise) {
        @Nullable String value = environment.get(variable);
        if (value == null || value.isBlank()) {
            return otherwise;
        }
        Path path = Path.of(value);
        return path.isAbsolute() ? path : otherwise;
    }
}
