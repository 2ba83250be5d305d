// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A file that cannot be used, with everything that was found wrong with it; or a file that cannot be written. */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /**
     * With one or more problems.
     *
     * @throws IllegalArgumentException if there is none
     */
    public InputException(List<InputProblem> problems) {
        this(problems, null);
    }

    /** With one problem. */
    public InputException(InputProblem problem) {
        this(List.of(problem), null);
    }

    /** With what the system said, for the log; it is no part of the message. */
    public InputException(InputProblem problem, Throwable cause) {
        this(List.of(problem), cause);
    }

    private InputException(List<InputProblem> problems, @Nullable Throwable cause) {
        super(ProblemLines.of(problems.stream().map(InputProblem::toString).toList()), cause);
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("an input exception names at least one problem");
        }
        this.problems = List.copyOf(problems);
    }

    /** What is wrong, in the order of the file; the message has a line for each of the first. */
    public List<InputProblem> problems() {
        return problems;
    }
}
