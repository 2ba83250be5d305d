// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

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
    /** System property: added to every exit status; 0 if absent. */
    static final String BASE = "twinfeed.exit.base";

    private Main() {}

    /**
     * Starts the product and ends the process with the application's status.
     *
     * @param arguments a verb and what follows it, or nothing for the window
     */
    public static void main(String[] arguments) {
        System.exit(Integer.getInteger(BASE, 0) + status(arguments));
    }

    private static int status(String[] arguments) {
        Face face = Face.of(arguments);
        if (face == Face.HEADLESS) {
            // Standard output is the answer's alone, and the application has its own way to it: what a library prints
            // goes elsewhere.
            System.setOut(System.err);
        }
        try {
            Installation installation = Installation.running();
            FrameworkArea area = StateArea.given().of(face, installation.extended());
            try (Framework framework = new Framework(face.settings(installation), area)) {
                return framework.run(face.without(arguments));
            }
        } catch (Throwable broken) { // whatever it is, the status has to say so
            return fault(broken);
        }
    }

    private static int fault(Throwable broken) {
        System.err.println(Messages.text("fault", broken));
        if (Boolean.getBoolean("twinfeed.debug")) {
            broken.printStackTrace();
        }
        return FAULT;
    }
}
