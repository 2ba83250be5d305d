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

    /**
     * The lines that a command answers with, blanks cut off and empty ones left out; none where it fails.
     *
     * @throws IOException as {@link #run}
     */
    default List<String> lines(List<String> command) throws IOException {
        Answer answer = run(command);
        return answer.status() == 0
                ? answer.text()
                        .lines()
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .toList()
                : List.of();
    }

    /**
     * Has a command do something.
     *
     * @throws IOException as {@link #run}, or if it does not do it; the message is what it says then
     */
    default void order(List<String> command) throws IOException {
        Answer answer = run(command);
        if (answer.status() != 0) {
            throw new IOException(answer.text());
        }
    }
}
