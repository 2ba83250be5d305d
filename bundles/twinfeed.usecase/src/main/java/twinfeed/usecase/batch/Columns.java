// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.FieldException;
import twinfeed.model.check.FieldPath;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.rows.Row;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.refusal.Refusals;

/**
 * The head of a list of dwellings: {@code dwelling}, which names each, {@code symptoms}, the keys of what is complained of with semicolons
 * between, and fields of the survey by their names, for example {@code water.test.staticPressure} or
 * {@code electricity.circuit.segments[1].length}. A column without a head, or whose head begins with #, is a remark.
 */
final class Columns {
    private static final String NUMBER = "\\d+(?:\\.\\d+)?";
    private static final Pattern PLAIN =
            Pattern.compile("([-+]?" + NUMBER + ")(?:\\s*(\u00b1|u\\b)\\s*(" + NUMBER + "))?");

    static final String DWELLING = "dwelling";

    /** Complaints are a list of things in a survey; in a list of dwellings they are words in one cell. */
    static final String SYMPTOMS = "symptoms";

    private final String file;
    private final List<@Nullable Column> columns = new ArrayList<>();
    private final Map<String, Integer> dwellingOrSymptoms = new HashMap<>();

    /**
     * A field's name as the head has it, and the field.
     *
     * @param number its number among the fields, from 0
     */
    private record Column(int number, String head, FieldPath path) {}

    /**
     * Reads the head.
     *
     * @param template the survey that the dwellings share, in which the fields are found
     * @throws InputException if a column is no field of a survey or stands twice, or none names the dwelling; all problems at once
     */
    Columns(String file, Row head, Survey template) {
        this.file = file;
        List<InputProblem> problems = new ArrayList<>();
        Map<String, String> seen = new HashMap<>();
        int number = 0;
        for (int at = 0; at < head.cells().size(); at++) {
            String text = head.cells().get(at).strip();
            String name = text.toLowerCase(Locale.ROOT);
            Column column = null;
            if (name.equals(DWELLING) || name.equals(SYMPTOMS)) {
                once(name, text, head.number(), seen, problems);
                dwellingOrSymptoms.putIfAbsent(name, at);
            } else if (!text.isEmpty() && !text.startsWith("#")) {
                column = column(number, text, head.number(), problems);
                if (column != null) {
                    number++;
                    String field = Objects.requireNonNullElse(column.path().in(template), "survey." + column.head());
                    once(field, text, head.number(), seen, problems);
                }
            }
            columns.add(column);
        }
        if (!dwellingOrSymptoms.containsKey(DWELLING)) {
            problems.add(new InputProblem(
                    file, head.number(), "", "", Refusals.wrong("list.noDwelling"), Refusals.right("list.noDwelling")));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private void once(String field, String text, int row, Map<String, String> seen, List<InputProblem> problems) {
        String before = seen.putIfAbsent(field, text);
        if (before != null) {
            problems.add(new InputProblem(
                    file, row, text, "", Refusals.wrong("list.twice", before), Refusals.right("list.twice")));
        }
    }

    private @Nullable Column column(int number, String text, int row, List<InputProblem> problems) {
        String head = text.startsWith("survey.") ? text.substring("survey.".length()) : text;
        try {
            FieldPath path = FieldPath.of(head);
            path.check(SurveyPackage.Literals.SURVEY);
            return new Column(number, head, path);
        } catch (FieldException refused) {
            List<String> nearest = refused.unknown() ? NearestColumns.of(head) : List.of();
            String right =
                    nearest.isEmpty() ? refused.right() : Refusals.text("list.nearest", String.join(", ", nearest));
            problems.add(new InputProblem(file, row, text, "", refused.wrong(), right));
            return null;
        }
    }

    /** The fields that have a column, in the order of their numbers. */
    List<FieldPath> fields() {
        return columns.stream()
                .filter(Objects::nonNull)
                .map(column -> Objects.requireNonNull(column).path())
                .toList();
    }

    /** What the dwelling of a row is called; empty if it has no name. */
    String dwelling(Row row) {
        return cell(row, DWELLING);
    }

    private String cell(Row row, String name) {
        Integer at = dwellingOrSymptoms.get(name);
        return at == null || at >= row.cells().size() ? "" : row.cells().get(at).strip();
    }

    /**
     * Puts a row's values into a survey; an empty cell leaves what is there.
     *
     * @return where each reading of the row is from
     * @throws InputException if a value does not fit its field; all problems of the row at once
     */
    List<DwellingReading> fill(Row row, Survey survey) {
        List<InputProblem> problems = new ArrayList<>();
        if (dwelling(row).isEmpty()) {
            problems.add(new InputProblem(
                    file, row.number(), DWELLING, "", Refusals.wrong("list.unnamed"), Refusals.right("list.unnamed")));
        }
        symptoms(cell(row, SYMPTOMS), survey);
        List<DwellingReading> readings = new ArrayList<>();
        for (int at = 0; at < columns.size(); at++) {
            String text = at < row.cells().size() ? row.cells().get(at).strip() : "";
            Column column = columns.get(at);
            if (column != null) {
                if (!text.isEmpty()) {
                    set(column, text, row, survey, problems);
                }
                String value = column.path().text(survey);
                ReadingOrigin origin = value.isEmpty()
                        ? ReadingOrigin.MISSING
                        : text.isEmpty() ? ReadingOrigin.TEMPLATE : ReadingOrigin.OWN;
                String path = Objects.requireNonNullElse(column.path().in(survey), "survey." + column.head());
                readings.add(new DwellingReading(column.number(), path, value, origin));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return readings;
    }

    private static void symptoms(String text, Survey survey) {
        Arrays.stream(text.split(";"))
                .map(String::strip)
                .filter(key -> !key.isEmpty() && !key.equals(FieldPath.NOTHING))
                .distinct()
                .forEach(key -> {
                    Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
                    symptom.setKey(key);
                    survey.getSymptoms().add(symptom);
                });
    }

    /** A plain number, and a plain tolerance after it, is in the unit in which the column is asked for. */
    private static String withUnit(Column column, String text) {
        List<EStructuralFeature> way = column.path().features(SurveyPackage.Literals.SURVEY);
        String unit = way.isEmpty() || !(way.get(way.size() - 1) instanceof EAttribute attribute)
                ? ""
                : ReadingRange.unit(attribute);
        Matcher plain = PLAIN.matcher(text);
        if (unit.isEmpty() || !plain.matches()) {
            return text;
        }
        String value = plain.group(1) + " " + unit;
        return plain.group(3) == null ? value : value + " " + plain.group(2) + " " + plain.group(3) + " " + unit;
    }

    private void set(Column column, String text, Row row, Survey survey, List<InputProblem> problems) {
        try {
            column.path().set(survey, withUnit(column, text));
        } catch (FieldException refused) {
            problems.add(new InputProblem(file, row.number(), column.head(), text, refused.wrong(), refused.right()));
        }
    }
}
