// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.lang.management.ManagementFactory;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Fills the state area at the first start: the framework's resolved state, and an archive of the classes that a handful of commands
 * load, from which the Java machine takes them readily parsed and verified.
 *
 * <p>Whatever fails here costs time at later starts and nothing else, so nothing is said about it.
 */
public final class WarmUp {
    private static final long LIMIT_S = 120;

    private final Installation installation;
    private final Path folder;

    private WarmUp(Installation installation, Path folder) {
        this.installation = installation;
        this.folder = folder;
    }

    /**
     * Fills the area named by the system property {@value StateArea#PROPERTY}, unless it is full or another process is at it.
     *
     * @param arguments none
     * @throws Exception if nothing can be kept there
     */
    public static void main(String[] arguments) throws Exception {
        int status = Main.FAULT;
        try {
            StateArea area = StateArea.given();
            if (area.folder() != null) {
                new WarmUp(Installation.running(), area.folder()).fill(area);
                status = 0;
            }
        } finally {
            System.exit(status); // the framework's threads would keep the process
        }
    }

    private void fill(StateArea area) throws Exception {
        Files.createDirectories(folder);
        try (FileChannel file =
                        FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                @Nullable FileLock lock = file.tryLock()) {
            if (lock == null || area.ready()) {
                return;
            }
            settle();
            archive();
            Files.writeString(folder.resolve(StateArea.READY), installation.folder() + "\n");
        }
    }

    /** A start without an application: the framework installs and resolves the bundles and writes down how. */
    private void settle() throws Exception {
        FrameworkArea fresh = new FrameworkArea(folder.resolve(StateArea.SETTLED), false, false);
        new Framework(LaunchMode.HEADLESS.settings(installation, false), fresh).close();
    }

    private void archive() throws IOException, InterruptedException {
        Path archive = folder.resolve(StateArea.ARCHIVE);
        Path unproved = folder.resolve(StateArea.ARCHIVE + ".unproved");
        Files.deleteIfExists(unproved);
        boolean made = run("-XX:ArchiveClassesAtExit=" + unproved, List.of());
        // A start with it has to succeed before any other relies on it.
        if (made && Files.exists(unproved) && run("-XX:SharedArchiveFile=" + unproved, List.of(Training.FIRST_ONLY))) {
            Files.move(unproved, archive, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.deleteIfExists(unproved);
    }

    /** Runs the training in a process of its own; true if it ended well. */
    private boolean run(String option, List<String> arguments) throws IOException, InterruptedException {
        Process training = new ProcessBuilder(command(option, arguments))
                .directory(installation.folder().toFile())
                .redirectInput(Redirect.PIPE)
                .redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.DISCARD)
                .start();
        training.getOutputStream().close();
        if (!training.waitFor(LIMIT_S, TimeUnit.SECONDS)) {
            training.destroyForcibly().waitFor();
        }
        return training.exitValue() == 0;
    }

    /** The same Java machine with the same options: an archive serves no other. */
    private List<String> command(String option, List<String> arguments) {
        List<String> command = new ArrayList<>();
        command.add(ProcessHandle.current().info().command().orElse("java"));
        command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
        command.add(option);
        command.addAll(List.of("-cp", System.getProperty("java.class.path", ""), Training.class.getName()));
        command.addAll(arguments);
        return command;
    }
}
