// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;

/** Whether a start runs a verb or opens the window: each is a set of bundles and an application, listed in {@code configuration}. */
enum LaunchMode {
    /** Verbs, no window. Its list has none of the bundles that draw, which halves the time of a start. */
    HEADLESS("headless"),
    /** The window. */
    DESKTOP("config");

    private static final String VERB = "desktop";
    private static final String JOB_FILE = ".job";
    private static final String JOB_OPTION = "-job";

    private final String list;

    LaunchMode(String list) {
        this.list = list;
    }

    /** The one that a command line asks for: the window if it is empty, or begins with {@code desktop} or the name of a job's file. */
    static LaunchMode of(String[] arguments) {
        return arguments.length == 0 || arguments[0].equals(VERB) || arguments[0].endsWith(JOB_FILE)
                ? DESKTOP
                : HEADLESS;
    }

    /** What the application is given: all, but for the word that only chose the window. */
    String[] without(String[] arguments) {
        return this == DESKTOP && arguments.length > 0 && arguments[0].equals(VERB)
                ? Arrays.copyOfRange(arguments, 1, arguments.length)
                : arguments;
    }

    /** The jobs that the window is to open, as whole paths: every argument that is no option. */
    List<String> jobs(String[] arguments) {
        return Arrays.stream(without(arguments))
                .filter(each -> !each.isEmpty() && !each.startsWith("-"))
                .map(each -> Path.of(each).toAbsolutePath().normalize().toString())
                .toList();
    }

    /** What the application is told of the jobs that it is to open. */
    static String[] told(List<String> jobs) {
        return jobs.stream().flatMap(each -> Stream.of(JOB_OPTION, each)).toArray(String[]::new);
    }

    /**
     * The settings of the framework for this mode.
     *
     * @param alone whether a window has to keep its state to itself
     */
    Properties settings(Installation installation, boolean alone) throws IOException {
        Properties settings = installation.settings(list);
        if (this == DESKTOP) {
            Path state = UserFolders.here().state();
            Path workspace = alone ? Files.createTempDirectory("twinfeed-window-") : state.resolve("workspace");
            settings.setProperty("osgi.instance.area", workspace.toUri().toString());
            settings.setProperty("osgi.logfile", state.resolve("twinfeed.log").toString());
        }
        return settings;
    }
}
