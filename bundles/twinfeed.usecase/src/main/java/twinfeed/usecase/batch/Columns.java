// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.FieldException;
import twinfeed.model.check.FieldPath;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;

/**
 * The head of a list of dwellings: {@code dwelling}, which names each, and fields of the survey by their names, for example
 * {@code water.test.staticPressure} or {@code electricity.circuit.segments[1].length}. A column without a head, or whose head
 * begins with #, is a remark.
 */
final class Columns {
    static final String DWELLING = "dwelling";

    private final String file;
    private final List<@Nullable Column> columns = new ArrayList<>();
    private int dwelling = -1;

    /** A field's name as the head has it, and the field. */
    private record Column(String head, FieldPath path) {}

    /**
     * Reads the head.
     *
     * @throws InputException if a column is no field of a survey, or none names the dwelling; all problems at once
     */
    Columns(String file, Row head) {
        this.file = file;
        List<InputProblem> problems = new ArrayList<>();
        for (int at = 0; at < head.cells().size(); at++) {
            String text = head.cells().get(at).strip();
            boolean name = text.toLowerCase(Locale.ROOT).equals(DWELLING);
            dwelling = name && dwelling < 0 ? at : dwelling;
            columns.add(name || text.isEmpty() || text.startsWith("#") ? null : column(text, head.number(), problems));
        }
        if (dwelling < 0) {
            problems.add(new InputProblem(
                    file,
                    head.number(),
                    "",
                    "",
                    "no column names the dwelling",
                    "give the first row a column \"dwelling\""));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private @Nullable Column column(String text, int row, List<InputProblem> problems) {
        String head = text.startsWith("survey.") ? text.substring("survey.".length()) : text;
        try {
            FieldPath path = FieldPath.of(head);
            path.check(SurveyPackage.Literals.SURVEY);
            return new Column(head, path);
        } catch (FieldException refused) {
            problems.add(new InputProblem(file, row, text, "", refused.wrong(), refused.right()));
            return null;
        }
    }

    /** What the dwelling of a row is called; empty if it has no name. */
    String dwelling(Row row) {
        return dwelling < row.cells().size() ? row.cells().get(dwelling).strip() : "";
    }

    /**
     * Puts a row's values into a survey; an empty cell leaves what is there.
     *
     * @throws InputException if a value does not fit its field; all problems of the row at once
     */
    void fill(Row row, Survey survey) {
        List<InputProblem> problems = new ArrayList<>();
        if (dwelling(row).isEmpty()) {
            problems.add(new InputProblem(file, row.number(), DWELLING, "", "the dwelling has no name", "give it one"));
        }
        for (int at = 0; at < row.cells().size(); at++) {
            String text = row.cells().get(at).strip();
            Column column = at < columns.size() ? columns.get(at) : null;
            if (column != null && !text.isEmpty()) {
                set(column, text, row, survey, problems);
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private void set(Column column, String text, Row row, Survey survey, List<InputProblem> problems) {
        try {
            column.path().set(survey, text);
        } catch (FieldException refused) {
            problems.add(new InputProblem(file, row.number(), column.head(), text, refused.wrong(), refused.right()));
        }
    }
}
