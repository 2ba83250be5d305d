// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.util.List;
import twinfeed.model.io.InputProblem;
import twinfeed.workbook.text.WorkbookException;

/** What is wrong with a workbook that a person names, with its file as it was named. */
public final class ListProblem {
    private ListProblem() {}

    /** The refusal of a list. */
    public static UnusableException of(Path file, WorkbookException refused) {
        String message = String.valueOf(refused.getMessage());
        String name = file.getFileName() + ": ";
        String clauses = message.startsWith(name) ? message.substring(name.length()) : message;
        int half = clauses.indexOf("; ");
        InputProblem problem = InputProblem.ofFile(
                file.toString(),
                half < 0 ? clauses : clauses.substring(0, half),
                half < 0 ? "" : clauses.substring(half + 2));
        return new UnusableException(problem.toString(), List.of(problem), refused);
    }
}
