// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import twinfeed.model.io.InputProblem;

/** Something that the person gave cannot be used; the message is ready to be shown and says what would be right. */
public final class UnusableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /** With a message for the person, and the reason for the log. */
    public UnusableException(String message, Throwable cause) {
        this(message, List.of(InputProblem.ofFile("", message, "")), cause);
    }

    /** The same, with each thing that is wrong by itself. */
    public UnusableException(String message, List<InputProblem> problems, Throwable cause) {
        super(message, cause);
        this.problems = List.copyOf(problems);
    }

    /** What is wrong, thing by thing. */
    public List<InputProblem> problems() {
        return problems;
    }
}
