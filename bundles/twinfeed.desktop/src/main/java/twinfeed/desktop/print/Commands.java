// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.util.List;

/** Runs the system's own commands. */
interface Commands {
    /**
     * What a command ended with.
     *
     * @param status 0 if it did what it was asked
     * @param text all that it said
     */
    record Answer(int status, String text) {}

    /**
     * Runs a command to its end.
     *
     * @throws IOException if there is no such command, or it does not end in time
     */
    Answer run(List<String> command) throws IOException;
}
