// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.Presence;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.form.FormPage;
import twinfeed.model.form.FormPart;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Writes one page of a form as a sheet: a row for each reading, a table for what there may be several of. */
final class FormSheetWriter {
    private static final int LEAST_ROWS = 6;
    private static final int SPARE_ROWS = 2;
    private static final CellStyle SIGN = SheetStyles.SMALL.single();
    private static final CellStyle LABEL = SheetStyles.LINE;
    private static final CellStyle NOTE = SheetStyles.MUTED.single();

    /** A table of more columns is printed across the long side. */
    private static final int COLUMNS_UPRIGHT = 6;

    private final SheetWriter page;
    private final FormLanguage language;
    private final FormChecks checks;
    private final EObject job;
    private final FormValue values;

    /** Numbers of the rows that are in a table already, by the object that they show. */
    private final Map<EObject, Integer> numbers = new IdentityHashMap<>();

    FormSheetWriter(SheetWriter page, FormLanguage language, FormChecks checks, EObject job) {
        this.page = page;
        this.language = language;
        this.checks = checks;
        this.job = job;
        this.values = new FormValue(page, language);
    }

    /** Writes the page. */
    void write(FormPage form, String sign, List<String> notes) {
        page.columns(1, 46, 22, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14);
        page.sheet().setColumnHidden(FormCells.SIGN, true);
        boolean wide = form.parts().stream()
                .anyMatch(part -> part.table() && part.attributes().size() > COLUMNS_UPRIGHT);
        if (wide) {
            page.setup().landscape();
        } else {
            page.setup();
        }
        page.row().text(FormCells.SIGN, sign, SIGN);
        page.text(FormCells.LABEL, language.text("page." + form.key()), SheetStyles.TITLE);
        notes.forEach(this::note);
        for (FormPart part : form.parts()) {
            if (part.table()) {
                table(part, form.parts());
            } else {
                readings(part);
            }
        }
    }

    private void note(String text) {
        page.row().text(FormCells.SIGN, FormCells.REMARK, SIGN).text(FormCells.LABEL, text, NOTE);
    }

    private void heading(FormPart part) {
        page.gap(6).text(FormCells.SIGN, FormCells.REMARK, SIGN);
        page.row().text(FormCells.SIGN, FormCells.REMARK, SIGN);
        page.text(FormCells.LABEL, language.title(part), SheetStyles.BAND);
        for (int column = FormCells.VALUE; column <= FormCells.USUAL; column++) {
            page.blank(column, SheetStyles.BAND);
        }
    }

    private void readings(FormPart part) {
        heading(part);
        page.row().text(FormCells.SIGN, FormCells.REMARK, SIGN);
        page.text(FormCells.LABEL, language.text("head.label"), SheetStyles.HEAD);
        page.text(FormCells.VALUE, language.text("head.value"), SheetStyles.HEAD);
        page.text(FormCells.TOLERANCE, language.text("head.tolerance"), SheetStyles.HEAD);
        page.text(FormCells.ABSENT, language.text("head.absent"), SheetStyles.HEAD);
        page.text(FormCells.USUAL, language.text("head.usual"), SheetStyles.HEAD);
        EObject owner = owner(part);
        for (EAttribute attribute : part.attributes()) {
            Object value = owner == null || !owner.eIsSet(attribute) ? null : owner.eGet(attribute);
            reading(part, attribute, value);
        }
    }

    private void reading(FormPart part, EAttribute attribute, @Nullable Object value) {
        String unit = FormValue.unit(attribute, value);
        String path = part.key().isEmpty() ? attribute.getName() : part.key() + "." + attribute.getName();
        page.row().text(FormCells.SIGN, FormCells.READING + " " + path + " " + unit, SIGN);
        page.text(FormCells.LABEL, label(attribute, unit), LABEL);
        int row = page.rowIndex();
        values.put(FormCells.VALUE, FormCells.TOLERANCE, attribute, unit, value);
        checks.reading(page, row, row, FormCells.VALUE, attribute, unit);
        page.blank(FormCells.ABSENT, FormValue.INPUT);
        List<String> absent = new ArrayList<>(List.of(language.text("notSeen")));
        if (Presence.of(attribute) != null) {
            absent.add(language.text("notThere"));
        }
        checks.absent(page, row, absent);
        String usual = ReadingRange.of(attribute).map(ReadingRange::usual).orElse("");
        page.text(FormCells.USUAL, usual, NOTE);
    }

    private String label(EAttribute attribute, String unit) {
        return unit.isEmpty() ? language.label(attribute) : language.label(attribute) + ", " + unit;
    }

    private @Nullable EObject owner(FormPart part) {
        EObject owner = job;
        for (EReference step : part.path()) {
            if (owner == null || !(owner.eGet(step) instanceof EObject next)) {
                return null;
            }
            owner = next;
        }
        return owner;
    }

    private void table(FormPart part, List<FormPart> all) {
        heading(part);
        boolean numbered = all.stream().anyMatch(other -> other.parent().equals(part.key()));
        List<String> columns = columns(part, numbered);
        page.row().text(FormCells.SIGN, FormCells.TABLE + " " + part.key() + " " + String.join(" ", columns), SIGN);
        for (int at = 0; at < columns.size(); at++) {
            page.text(FormCells.LABEL + at, head(part, columns.get(at), all), SheetStyles.HEAD);
        }
        Map<EObject, Integer> elements = elements(part);
        int first = page.rowIndex() + 1;
        int rows = Math.max(LEAST_ROWS, elements.size() + SPARE_ROWS);
        List<EObject> shown = new ArrayList<>(elements.keySet());
        for (int at = 0; at < rows; at++) {
            page.row();
            @Nullable EObject element = at < shown.size() ? shown.get(at) : null;
            if (element != null) {
                numbers.put(element, at + 1);
            }
            row(part, columns, at + 1, element, element == null ? null : elements.get(element));
        }
        for (int at = 0; at < columns.size(); at++) {
            EAttribute attribute = attribute(part, columns.get(at));
            if (attribute != null) {
                checks.reading(
                        page, first, page.rowIndex(), FormCells.LABEL + at, attribute, ReadingRange.unit(attribute));
            }
        }
    }

    /** The first attribute, which tells one row from another, stands in the wide column. */
    private static List<String> columns(FormPart part, boolean numbered) {
        List<String> columns = new ArrayList<>();
        columns.add(part.attributes().get(0).getName());
        if (numbered) {
            columns.add(FormCells.NUMBER);
        }
        if (!part.parent().isEmpty()) {
            columns.add(FormCells.PARENT);
        }
        part.attributes().stream().skip(1).map(EAttribute::getName).forEach(columns::add);
        return columns;
    }

    private static @Nullable EAttribute attribute(FormPart part, String column) {
        return part.attributes().stream()
                .filter(each -> each.getName().equals(column))
                .findFirst()
                .orElse(null);
    }

    private String head(FormPart part, String column, List<FormPart> all) {
        EAttribute attribute = attribute(part, column);
        if (attribute != null) {
            return label(attribute, ReadingRange.unit(attribute));
        }
        if (column.equals(FormCells.NUMBER)) {
            return language.text("head.number");
        }
        FormPart parent = all.stream()
                .filter(other -> other.key().equals(part.parent()))
                .findFirst()
                .orElseThrow();
        return language.text(
                "head.parent",
                Map.of("parent", language.label(parent.path().get(parent.path().size() - 1))));
    }

    private void row(
            FormPart part, List<String> columns, int number, @Nullable EObject element, @Nullable Integer parent) {
        for (int at = 0; at < columns.size(); at++) {
            int column = FormCells.LABEL + at;
            EAttribute attribute = attribute(part, columns.get(at));
            if (attribute != null) {
                Object value = element == null || !element.eIsSet(attribute) ? null : element.eGet(attribute);
                values.put(column, column, attribute, ReadingRange.unit(attribute), value);
            } else if (columns.get(at).equals(FormCells.NUMBER)) {
                page.number(column, number, FormValue.PLAIN.format("0"));
            } else {
                page.number(column, parent, FormValue.INPUT.format("0"));
            }
        }
    }

    /** The elements of a table with the number of the row that each belongs to, 0 for none. */
    private Map<EObject, Integer> elements(FormPart part) {
        Map<EObject, Integer> found = new LinkedHashMap<>();
        List<EObject> owners = List.of(job);
        for (EReference step : part.path()) {
            List<EObject> next = new ArrayList<>();
            for (EObject owner : owners) {
                Object value = owner.eGet(step);
                if (value instanceof List<?> list) {
                    list.forEach(each -> next.add((EObject) each));
                } else if (value instanceof EObject one) {
                    next.add(one);
                }
            }
            owners = next;
        }
        owners.forEach(element -> found.put(element, parent(element)));
        return found;
    }

    private int parent(EObject element) {
        for (EObject up = element.eContainer(); up != null; up = up.eContainer()) {
            Integer number = numbers.get(up);
            if (number != null) {
                return number;
            }
        }
        return 0;
    }
}
