// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.units.UnitException;
import twinfeed.usecase.UnusableException;

/**
 * Why a verb ended without an answer.
 *
 * @param status the exit status
 * @param problems what is wrong, thing by thing
 */
record Failure(int status, List<InputProblem> problems) {
    /** Letters of a message on the screen. */
    private static final int LONGEST = 1_900;

    static Failure of(Throwable broken) {
        if (broken instanceof InputException input) {
            return new Failure(Verbs.UNUSABLE, input.problems());
        }
        if (broken instanceof UnusableException unusable) {
            return new Failure(Verbs.UNUSABLE, unusable.problems());
        }
        if (broken instanceof ArgumentException || broken instanceof UnitException) {
            return unusable(String.valueOf(broken.getMessage()));
        }
        if (broken instanceof OutOfMemoryError) {
            return new Failure(
                    Verbs.FAULT,
                    List.of(InputProblem.ofFile("", "internal fault: the memory is full", "try a smaller file")));
        }
        return new Failure(Verbs.FAULT, List.of(InputProblem.ofFile("", "internal fault: " + broken, "")));
    }

    static Failure unusable(String message) {
        return new Failure(Verbs.UNUSABLE, List.of(InputProblem.ofFile("", message, "")));
    }

    /** Its lines for a person: as many as fit a screen, and how many more there are. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        int letters = 0;
        for (InputProblem problem : problems) {
            String line = problem.toString();
            letters += line.length() + 1;
            if (letters > LONGEST && !lines.isEmpty()) {
                lines.add("... and " + (problems.size() - lines.size()) + " more; --json names them all");
                return lines;
            }
            lines.add(line);
        }
        return lines;
    }
}
