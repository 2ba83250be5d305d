// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

/**
 * One thing that is wrong with a file.
 *
 * @param file name of the file as it was given; empty if it is clear which
 * @param line its line, from 1; 0 if no line is to blame
 * @param element where in it, for example {@code survey.water.test.runningPressure}; empty for the file as a whole
 * @param reading what is written there; empty if that tells nothing
 * @param wrong what is wrong, as a clause
 * @param right what would be right, as a clause
 */
public record InputProblem(String file, int line, String element, String reading, String wrong, String right) {
    private static final int LONGEST_SHOWN = 60;
    private static final int LONGEST_CLAUSE = 700;
    private static final int LONGEST_ELEMENT = 200;
    private static final int LONGEST_FILE = 300;

    /** Clauses may list what is known; no line becomes longer than a screen. */
    public InputProblem {
        wrong = clause(wrong);
        right = clause(right);
    }

    private static String clause(String text) {
        return text.length() <= LONGEST_CLAUSE ? text : text.substring(0, LONGEST_CLAUSE) + "...";
    }

    /** A problem of the file as a whole. */
    public static InputProblem ofFile(String file, String wrong, String right) {
        return new InputProblem(file, 0, "", "", wrong, right);
    }

    /** All of it in one line: in English, {@code alder-beck.job, line 12, survey.water.test.flow "12": "12" has no unit; ...}. */
    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        append(out, shortenedFile());
        append(out, line > 0 ? Refusal.text("problem.line", String.valueOf(line)) : "");
        append(out, element.length() <= LONGEST_ELEMENT ? element : element.substring(0, LONGEST_ELEMENT) + "...");
        if (!reading.isEmpty()) {
            out.append(" \"").append(shortened()).append('"');
        }
        out.append(out.isEmpty() ? "" : ": ").append(wrong);
        return OneLine.of(out.append(right.isEmpty() ? "" : "; ").append(right).toString());
    }

    private static void append(StringBuilder out, String part) {
        out.append(out.isEmpty() || part.isEmpty() ? "" : ", ").append(part);
    }

    private String shortened() {
        return reading.length() <= LONGEST_SHOWN ? reading : reading.substring(0, LONGEST_SHOWN) + "...";
    }

    /** A name may come out of a damaged file; its ends tell the folder and the kind of file. */
    private String shortenedFile() {
        int half = LONGEST_FILE / 2;
        return file.length() <= LONGEST_FILE
                ? file
                : file.substring(0, half) + "..." + file.substring(file.length() - half);
    }
}
