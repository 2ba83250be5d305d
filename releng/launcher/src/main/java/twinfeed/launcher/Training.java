// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Runs the commands of {@code configuration/training.txt} one after the other in one process, for the sake of the classes that they
 * load. A line is a command; {@code {scratch}} in it stands for a folder that is deleted afterwards; {@code #} begins a remark.
 */
public final class Training {
    /** Argument by which only the first command is run. */
    static final String FIRST_ONLY = "first";

    private Training() {}

    /**
     * Runs them in the area named by the system property {@value StateArea#PROPERTY}. What they print and how they end is of no
     * interest: a command that a release no longer knows loads fewer classes.
     *
     * @param arguments none, or {@value #FIRST_ONLY}
     * @throws Exception if the framework does not start
     */
    public static void main(String[] arguments) throws Exception {
        int status = Main.FAULT;
        try {
            List<String> commands = commands(Installation.running());
            train(
                    Installation.running(),
                    Path.of(System.getProperty(StateArea.PROPERTY, "")),
                    commands.subList(0, List.of(arguments).contains(FIRST_ONLY) ? 1 : commands.size()));
            status = 0;
        } finally {
            System.exit(status); // the framework's threads would keep the process
        }
    }

    private static void train(Installation installation, Path state, List<String> commands) throws Exception {
        FrameworkArea scratch = FrameworkArea.forOneRun();
        FrameworkArea settled = new FrameworkArea(state.resolve(StateArea.SETTLED), true, false);
        try (Framework framework = new Framework(LaunchMode.HEADLESS.settings(installation, false), settled)) {
            for (String line : commands) {
                framework.run(
                        line.replace("{scratch}", scratch.folder().toString()).split(" +"));
            }
        } finally {
            scratch.leave();
        }
    }

    private static List<String> commands(Installation installation) throws Exception {
        Path list = installation.folder().resolve("configuration").resolve("training.txt");
        return Files.readAllLines(list).stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toList();
    }
}
