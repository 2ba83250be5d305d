// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.List;

/** A message of several lines, one for each thing that is wrong. */
public final class ProblemLines {
    /** A message that is longer says the rest in a number. */
    private static final int LONGEST = 1900;

    /** A line that is longer is cut: what else it would say, nobody reads. */
    private static final int LONGEST_LINE = 1500;

    private ProblemLines() {}

    /**
     * As many of the lines as can be read at once, and how many more there are; nothing in them can move the cursor or begin a line.
     *
     * @param lines what is wrong, in the order of the file
     */
    public static String of(List<String> lines) {
        StringBuilder message = new StringBuilder();
        int told = 0;
        for (String each : lines) {
            String line = OneLine.of(each, LONGEST_LINE);
            if (told > 0 && message.length() + line.length() > LONGEST) {
                return message.append('\n')
                        .append(Refusal.text("problem.more", String.valueOf(lines.size() - told)))
                        .toString();
            }
            message.append(told == 0 ? "" : "\n").append(line);
            told++;
        }
        return message.toString();
    }
}
