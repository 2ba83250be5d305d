// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;

/** The two ways in: each is a set of bundles and an application, listed in {@code configuration}. */
enum Face {
    /** Verbs, no window. Its list has none of the bundles that draw, which halves the time of a start. */
    HEADLESS("headless"),
    /** The window. */
    DESKTOP("config");

    private static final String VERB = "desktop";

    private final String list;

    Face(String list) {
        this.list = list;
    }

    /** The one that a command line asks for: the window if it is empty or begins with {@code desktop}. */
    static Face of(String[] arguments) {
        return arguments.length == 0 || arguments[0].equals(VERB) ? DESKTOP : HEADLESS;
    }

    /** What the application is given: all, but for the word that only chose the window. */
    String[] without(String[] arguments) {
        return this == DESKTOP && arguments.length > 0 ? Arrays.copyOfRange(arguments, 1, arguments.length) : arguments;
    }

    /** The settings of the framework for this face. */
    Properties settings(Installation installation) throws IOException {
        Properties settings = installation.settings(list);
        if (this == DESKTOP && System.getProperty("osgi.instance.area") == null) {
            settings.setProperty("osgi.instance.area", userData().toUri().toString());
        }
        return settings;
    }

    /** Where the platform keeps what belongs to a person and not to a start. */
    private static Path userData() {
        Path home = Path.of(System.getProperty("user.home", "."));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return environment("LOCALAPPDATA", home.resolve("AppData").resolve("Local"))
                    .resolve("Twinfeed");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Twinfeed");
        }
        return environment("XDG_DATA_HOME", home.resolve(".local").resolve("share"))
                .resolve("twinfeed");
    }

    private static Path environment(String name, Path otherwise) {
        String value = System.getenv(name);
        return value == null || value.isBlank() ? otherwise : Path.of(value);
    }
}
