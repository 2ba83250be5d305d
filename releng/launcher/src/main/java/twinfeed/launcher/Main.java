// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.util.List;

/**
 * The product's entry: with a verb it runs the command line without a window, with none (or {@code desktop}) it opens the window.
 *
 * <p>The exit status is the application's own (0 to 3). What goes wrong before or around the application is {@value #FAULT}. The
 * system property {@value #BASE} is added to either, so that a start script can tell them from the statuses by which a Java
 * machine itself gives up (1 for one that cannot be made, 134 for a crash).
 */
public final class Main {
    /** The status of a fault inside the program. */
    static final int FAULT = 3;
    /** The status of a start whose jobs a window that is there has taken; a start script makes it 0 and keeps nothing of that start. */
    static final int HANDED_OVER = 5;
    /** System property: added to every exit status; 0 if absent. */
    static final String BASE = "twinfeed.exit.base";

    /** How long a window that is there may stay silent before this start opens one of its own. */
    private static final long SILENCE_MS = 10_000;

    private Main() {}

    /**
     * Starts the product and ends the process with the application's status.
     *
     * @param arguments a verb and what follows it, or nothing for the window
     */
    public static void main(String[] arguments) {
        int base = Integer.getInteger(BASE, 0);
        int status = status(arguments);
        System.exit(status == HANDED_OVER && base == 0 ? 0 : base + status);
    }

    private static int status(String[] arguments) {
        LaunchMode mode = LaunchMode.of(arguments);
        if (mode == LaunchMode.HEADLESS) {
            // Standard output is the answer's alone, and the application has its own way to it: what a library prints
            // goes elsewhere.
            System.setOut(System.err);
        }
        try {
            return mode == LaunchMode.DESKTOP ? window(arguments) : run(mode, arguments);
        } catch (Throwable broken) { // whatever it is, the status has to say so
            return fault(broken);
        }
    }

    private static int run(LaunchMode mode, String[] arguments) throws Exception {
        Installation installation = Installation.running();
        FrameworkArea area = StateArea.given().of(mode, installation.extended());
        try (Framework framework = new Framework(mode.settings(installation, false), area)) {
            return framework.run(mode.without(arguments));
        }
    }

    /** Opens the window, or has the one that is there open the jobs. */
    private static int window(String[] arguments) throws Exception {
        List<String> jobs = LaunchMode.DESKTOP.jobs(arguments);
        try (OneWindow window = OneWindow.in(UserFolders.here().runtime())) {
            OneWindow.Role role = window.start(jobs, SILENCE_MS);
            if (role == OneWindow.Role.HANDED_OVER) {
                return HANDED_OVER;
            }
            boolean alone = role == OneWindow.Role.ALONE;
            Installation installation = Installation.running();
            FrameworkArea area = alone
                    ? FrameworkArea.forOneRun()
                    : StateArea.given().of(LaunchMode.DESKTOP, installation.extended());
            try (Framework framework = new Framework(LaunchMode.DESKTOP.settings(installation, alone), area)) {
                framework.offer(window.requests());
                return framework.run(LaunchMode.told(jobs));
            }
        }
    }

    /** How SWT says that the screen cannot be had; its classes are known inside the framework only. */
    private static boolean isWithoutScreen(Throwable broken) {
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            if (cause.getClass().getName().equals("org.eclipse.swt.SWTError")
                    && String.valueOf(cause.getMessage()).startsWith("No more handles")) {
                return true;
            }
        }
        return false;
    }

    private static int fault(Throwable broken) {
        System.err.println(
                isWithoutScreen(broken)
                        ? Messages.text("screen", System.getenv().getOrDefault("DISPLAY", ""))
                        : Messages.text("fault", broken));
        if (Boolean.getBoolean("twinfeed.debug")) {
            broken.printStackTrace();
        }
        return FAULT;
    }
}
