// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the platform keeps what belongs to a person and not to a start: on Linux by the XDG Base Directory Specification.
 *
 * @param system name of the system, as the property {@code os.name} has it
 * @param home the person's folder
 * @param environment variables of the environment
 */
record UserFolders(String system, Path home, Map<String, String> environment) {
    /** System property: a folder that is taken for the person's own, whatever the environment says. */
    static final String PROPERTY = "twinfeed.home";

    static UserFolders here() {
        String system = System.getProperty("os.name", "");
        String home = System.getProperty(PROPERTY, "");
        return home.isBlank()
                ? new UserFolders(system, personal(), System.getenv())
                : new UserFolders(system, Path.of(home).toAbsolutePath(), Map.of());
    }

    /** The variable that the specification names; the Java machine asks the list of users instead. */
    private static Path personal() {
        @Nullable String home = System.getenv("HOME");
        return Path.of(home != null && Path.of(home).isAbsolute() ? home : System.getProperty("user.home", "."));
    }

    /** What the program remembers by itself: the framework's workspace and the log. */
    Path state() {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return named("LOCALAPPDATA", home.resolve("AppData").resolve("Local"))
                    .resolve("Twinfeed");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Twinfeed");
        }
        return named("XDG_STATE_HOME", home.resolve(".local").resolve("state")).resolve("twinfeed");
    }

    /** Where a running window can be found by the next start: a folder that is the person's own, and on Linux lives no longer than the session. */
    Path runtime() {
        Path none = Path.of("");
        Path runtime = named("XDG_RUNTIME_DIR", none);
        return runtime.equals(none) ? state().resolve("run") : runtime.resolve("twinfeed");
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
