// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;

/** What is wrong with a file, in the window's words: readings are called as the pages call them. */
public final class ProblemText {
    private ProblemText() {}

    /** A problem of the file that is open: {@code Length (rising main) "-1 m": a length is above 0; enter it}. */
    public static String line(InputProblem problem, Words words) {
        return named(problem, "", ReadingName.of(problem.element(), words)).toString();
    }

    /** Why a file was refused. It has to be put right with another program, which knows readings by their paths, so these stand behind the names. */
    public static String reason(Throwable refused, Words words) {
        if (!(refused instanceof InputException input)) {
            return String.valueOf(refused.getMessage());
        }
        return String.valueOf(new InputException(input.problems().stream()
                        .map(problem -> named(problem, problem.file(), withPath(problem.element(), words)))
                        .toList())
                .getMessage());
    }

    private static String withPath(String element, Words words) {
        String name = ReadingName.of(element, words);
        return name.equals(element) ? element : name + " [" + element + "]";
    }

    private static InputProblem named(InputProblem problem, String file, String name) {
        return new InputProblem(file, problem.line(), name, problem.reading(), problem.wrong(), problem.right());
    }
}
