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
    /** System property: a folder that is taken for the person's own, whatever the environment says. */
    public static final String PROPERTY = "twinfeed.home";

    /** Those of this machine. */
    public static PlatformFolders here() {
        String home = System.getProperty(PROPERTY, "");
        if (!home.isBlank()) {
            return new PlatformFolders(System.getProperty("os.name", ""), Path.of(home), Map.of());
        }
        return new PlatformFolders(System.getProperty("os.name", ""), personal(), System.getenv());
    }

    /** The variable that the specification names; the Java machine asks the list of users instead. */
    private static Path personal() {
        @Nullable String home = System.getenv("HOME");
        return Path.of(home != null && Path.of(home).isAbsolute() ? home : System.getProperty("user.home", "."));
    }

    /** Where the person's own files of the program are: templates of houses. */
    public Path data() {
        return place("APPDATA", "Roaming", "XDG_DATA_HOME", ".local/share");
    }

    /** Where settings are: what the person has chosen, and the firm's own files. */
    public Path config() {
        return place("APPDATA", "Roaming", "XDG_CONFIG_HOME", ".config");
    }

    /** Where is kept what the program remembers by itself: recent jobs, layout, the log. */
    public Path state() {
        return place("LOCALAPPDATA", "Local", "XDG_STATE_HOME", ".local/state");
    }

    /** The file in which the first releases kept settings: that of the framework's preferences, below its workspace. */
    public Path formerSettings() {
        return place("LOCALAPPDATA", "Local", "XDG_DATA_HOME", ".local/share")
                .resolve(".metadata/.plugins/org.eclipse.core.runtime/.settings/twinfeed.desktop.prefs");
    }

    private Path place(String windows, String roaming, String xdg, String otherwise) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return named(windows, home.resolve("AppData").resolve(roaming)).resolve("Twinfeed");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Twinfeed");
        }
        return named(xdg, home.resolve(otherwise)).resolve("twinfeed");
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
