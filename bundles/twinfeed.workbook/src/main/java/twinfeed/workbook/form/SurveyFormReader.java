// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ModelPath;
import twinfeed.model.check.Presence;
import twinfeed.model.form.FormPage;
import twinfeed.model.form.FormPart;
import twinfeed.model.form.SurveyForm;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.rows.Row;
import twinfeed.workbook.read.SheetReader;
import twinfeed.workbook.text.WorkbookException;
import twinfeed.workbook.text.WorkbookTexts;

/** Reads a survey form that was filled in, cell by cell. */
public final class SurveyFormReader {
    private static final int MOST_ROWS = 20_000;
    private static final Pattern SPACE = Pattern.compile(" ");

    private final String file;
    private final Function<Locale, FormLanguage> languages;
    private final Map<String, FormPart> parts = new HashMap<>();
    private final List<InputProblem> problems = new ArrayList<>();
    private final Map<String, String> cells = new LinkedHashMap<>();
    private final FormObjects objects = new FormObjects(JobFile.create());
    private final List<Runnable> noted = new ArrayList<>();
    private @Nullable FormLanguage language;
    private @Nullable FormTable table;
    private String sheet = "";

    /**
     * A form that was read.
     *
     * @param job the job; not whole where there are problems
     * @param cells the cell of each reading, for example {@code sheet Water, C12}, by its path in the job
     * @param problems what cannot be read, each with sheet, cell and reading
     */
    public record Read(Job job, Map<String, String> cells, List<InputProblem> problems) {
        public Read {
            cells = Map.copyOf(cells);
            problems = List.copyOf(problems);
        }
    }

    private SurveyFormReader(String file, Function<Locale, FormLanguage> languages) {
        this.file = file;
        this.languages = languages;
        for (FormPage page : SurveyForm.pages()) {
            page.parts().stream().filter(FormPart::table).forEach(part -> parts.put(part.key(), part));
        }
    }

    /**
     * Reads a form.
     *
     * @param file the workbook
     * @param languages the words of a form's language
     * @throws WorkbookException if it is no such form, or no sound workbook
     * @throws IOException if it cannot be read
     */
    public static Read read(Path file, Function<Locale, FormLanguage> languages) throws IOException {
        SurveyFormReader reader = new SurveyFormReader(file.toString(), languages);
        SheetReader.readAll(file, MOST_ROWS, reader::row);
        if (reader.language == null) {
            throw new WorkbookException("noForm", Map.of("file", String.valueOf(file.getFileName())));
        }
        reader.noted.forEach(Runnable::run);
        return new Read(reader.objects.job(), reader.cells, reader.problems);
    }

    private void row(String name, Row row) {
        if (!name.equals(sheet)) {
            sheet = name;
            table = null;
        }
        String sign = cell(row, FormCells.SIGN);
        String[] words = SPACE.split(sign, -1);
        switch (words[0]) {
            case FormCells.MARK -> begin(words);
            case FormCells.REMARK -> table = null;
            case FormCells.READING -> {
                table = null;
                reading(row, words);
            }
            case FormCells.TABLE -> table = table(row, words);
            default -> other(row, sign);
        }
    }

    private void begin(String... words) {
        language = languages.apply(words.length > 2 && words[2].equals("de") ? Locale.GERMAN : Locale.ROOT);
        if (words.length < 2 || !words[1].equals(FormCells.VERSION)) {
            problem(0, 0, "", "", "otherVersion");
        }
    }

    private void other(Row row, String sign) {
        if (language == null) {
            return;
        }
        FormTable into = table;
        if (into != null && sign.isEmpty()) {
            into.row(row);
        } else {
            int column = FormCells.LABEL;
            while (column < row.cells().size() && cell(row, column).isEmpty()) {
                column++;
            }
            problem(row.number(), column, "", cell(row, column), "strayRow");
        }
    }

    private static String cell(Row row, int column) {
        return column < row.cells().size() ? row.cells().get(column) : "";
    }

    /** What is wrong with a cell; {@code column} counts from 0. */
    private void problem(int row, int column, String label, String reading, String key) {
        Locale locale = language == null ? Locale.ROOT : language.locale();
        String wrong = WorkbookTexts.SHEETS.get(locale, "form.wrong." + key);
        problem(row, column, label, reading, wrong, WorkbookTexts.SHEETS.get(locale, "form.right." + key));
    }

    private void problem(int row, int column, String label, String reading, String wrong, String right) {
        String where = place(row, column);
        problems.add(new InputProblem(file, 0, label.isEmpty() ? where : where + ", " + label, reading, wrong, right));
    }

    private String place(int row, int column) {
        String cell = CellReference.convertNumToColString(column) + Math.max(1, row);
        return WorkbookTexts.SHEETS.format(
                language == null ? Locale.ROOT : language.locale(), "form.place", Map.of("sheet", sheet, "cell", cell));
    }

    private FormLanguage words() {
        FormLanguage found = language;
        if (found == null) {
            throw new IllegalStateException("a reading before the form's sign");
        }
        return found;
    }

    private void reading(Row row, String... words) {
        if (language == null) {
            return;
        }
        String path = words.length > 1 ? words[1] : "";
        String unit = words.length > 2 ? String.join(" ", List.of(words).subList(2, words.length)) : "";
        EAttribute attribute = FormObjects.attribute(path);
        String value = cell(row, FormCells.VALUE);
        if (attribute == null) {
            if (!value.isEmpty()) {
                problem(row.number(), FormCells.VALUE, path, value, "unknownReading");
            }
            return;
        }
        String absent = cell(row, FormCells.ABSENT);
        String tolerance = cell(row, FormCells.TOLERANCE);
        String label = words().label(attribute);
        if (!absent.isEmpty()) {
            absent(row, path, attribute, value.isEmpty() ? tolerance : value, absent);
        } else if (!value.isEmpty()) {
            take(row.number(), FormCells.VALUE, attribute, unit, value, tolerance, () -> objects.owner(path));
        } else if (!tolerance.isEmpty()) {
            problem(row.number(), FormCells.TOLERANCE, label, tolerance, "toleranceAlone");
        }
    }

    private void absent(Row row, String path, EAttribute attribute, String value, String absent) {
        String label = words().label(attribute);
        boolean there = !FormText.same(absent, words().text("notThere"));
        EAttribute presence = Presence.of(attribute);
        if (!value.isEmpty()) {
            problem(row.number(), FormCells.ABSENT, label, absent, "both");
        } else if (there && !FormText.same(absent, words().text("notSeen"))) {
            problem(row.number(), FormCells.ABSENT, label, absent, "absentWord");
        } else if (!there && presence == null) {
            problem(row.number(), FormCells.ABSENT, label, absent, "notThere");
        } else if (!there && presence != null) {
            noted.add(() -> presence(row, path, label, absent, presence));
        }
    }

    /** Noted at the end, for the row that says the same in yes or no may come later. */
    private void presence(Row row, String path, String label, String absent, EAttribute presence) {
        EObject owner = objects.owner(path);
        if (Boolean.TRUE.equals(owner.eGet(presence))) {
            problem(row.number(), FormCells.ABSENT, label, absent, "both");
        } else {
            owner.eSet(presence, false);
        }
    }

    private @Nullable FormTable table(Row row, String... words) {
        FormPart part = words.length > 2 ? parts.get(words[1]) : null;
        if (part == null || language == null) {
            problem(row.number(), FormCells.LABEL, "", cell(row, FormCells.LABEL), "unknownTable");
            return null;
        }
        return new FormTable(part, List.of(words).subList(2, words.length));
    }

    private void take(
            int row,
            int column,
            EAttribute attribute,
            String unit,
            String value,
            String tolerance,
            java.util.function.Supplier<EObject> owner) {
        FormText text = new FormText(words(), attribute, unit);
        FormText.Result result = text.read(value, tolerance);
        if (result.value() == null) {
            problem(row, column, words().label(attribute), value, result.wrong(), result.right());
            return;
        }
        EObject into = owner.get();
        into.eSet(attribute, result.value());
        String where = place(row, column);
        noted.add(() -> cells.put(ModelPath.of(into, attribute), where));
    }

    /** The rows of one table. */
    private final class FormTable {
        private final FormPart part;
        private final List<String> columns;

        FormTable(FormPart part, List<String> columns) {
            this.part = part;
            this.columns = columns;
        }

        void row(Row row) {
            boolean filled = false;
            for (int at = 0; at < columns.size(); at++) {
                filled |= !columns.get(at).equals(FormCells.NUMBER)
                        && !cell(row, FormCells.LABEL + at).isEmpty();
            }
            if (!filled) {
                return;
            }
            EObject element = element(row);
            for (int at = 0; element != null && at < columns.size(); at++) {
                String name = columns.get(at);
                int column = FormCells.LABEL + at;
                String value = cell(row, column);
                EStructuralFeature feature = element.eClass().getEStructuralFeature(name);
                if (!value.isEmpty() && feature instanceof EAttribute attribute) {
                    take(
                            row.number(),
                            column,
                            attribute,
                            twinfeed.model.check.ReadingRange.unit(attribute),
                            value,
                            "",
                            () -> element);
                }
            }
            beyond(row);
        }

        private void beyond(Row row) {
            for (int column = FormCells.LABEL + columns.size();
                    column < row.cells().size();
                    column++) {
                if (!cell(row, column).isEmpty()) {
                    problem(row.number(), column, "", cell(row, column), "beyond");
                }
            }
        }

        private @Nullable EObject element(Row row) {
            String parent = "";
            int parentColumn = columns.indexOf(FormCells.PARENT);
            if (parentColumn >= 0) {
                parent = cell(row, FormCells.LABEL + parentColumn);
            }
            int numberColumn = columns.indexOf(FormCells.NUMBER);
            String number = numberColumn < 0 ? "" : cell(row, FormCells.LABEL + numberColumn);
            if (numberColumn >= 0 && objects.has(part.key(), number)) {
                problem(row.number(), FormCells.LABEL + numberColumn, "", number, "numberTwice");
                return null;
            }
            EObject element = objects.add(part, number, parent);
            if (element == null) {
                problem(row.number(), FormCells.LABEL + parentColumn, "", parent, "noParent");
            }
            return element;
        }
    }
}
