// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.survey;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import twinfeed.calculator.Readings;
import twinfeed.document.DocumentTexts;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Quantity;
import twinfeed.workbook.inputs.Inputs;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.ReadingLabels;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.sheet.TypedReading;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/**
 * The record of the visit as it was taken: every reading with its tolerance. It walks the model, so that a reading added to the survey
 * appears here too; only what was taken is shown, for absent is not zero.
 */
public final class SurveySheet {
    /** Free remarks, which the engineer wrote for colleagues. */
    private static final Set<EAttribute> REMARKS = Set.of(
            SurveyPackage.Literals.SURVEY__NOTES,
            SurveyPackage.Literals.SITE__NOTE,
            SurveyPackage.Literals.PRESENT_UNIT__NOTE);

    static final int LAST = 4;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final DocumentTexts words;
    private final ReadingLabels readings;
    private final Inputs inputs;

    private record Taken(EAttribute attribute, Object value) {}

    /** The sheet's writer. */
    public SurveySheet(QuoteSheets sheets, SheetWriter page, Inputs inputs) {
        this.inputs = inputs;
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        this.readings = new ReadingLabels(words, sheets.document().locale());
    }

    /**
     * Writes it.
     *
     * @throws IOException if a picture is there and cannot be read
     */
    public void write() throws IOException {
        page.columns(44, 20, 10, 14, 24);
        sheets.head(page, "survey", LAST);
        sheets.tableHead(page, "survey", LAST + 1, Set.of(1, 3));
        page.setup().header(page.rowIndex(), page.rowIndex());
        Survey survey = sheets.document().survey();
        taken(survey).forEach(taken -> reading(taken, "survey"));
        for (EReference part : survey.eClass().getEAllContainments()) {
            if (part != SurveyPackage.Literals.SURVEY__PHOTOS) {
                part(survey, part, "", "survey");
            }
        }
        new PhotoRows(sheets, page).write(survey.getPhotos());
        page.setup().pages(2).printOnly(page.rowIndex(), LAST);
        inputs.writeOthers(page);
    }

    private void part(EObject owner, EReference reference, String title, String path) {
        String name = title + readings.label(reference);
        String here = path + "." + reference.getName();
        if (reference.isMany()) {
            List<?> elements = (List<?>) owner.eGet(reference);
            for (int at = 0; at < elements.size(); at++) {
                EObject element = (EObject) elements.get(at);
                element(
                        element,
                        elements.size() == 1 ? name : name + " " + (at + 1),
                        here + "[" + Readings.name(element, at) + "]");
            }
        } else if (owner.eGet(reference) instanceof EObject element) {
            element(element, name, here);
        }
    }

    private void element(EObject element, String title, String path) {
        List<Taken> taken = taken(element);
        if (!taken.isEmpty()) {
            page.gap(4);
            page.row().text(0, LAST, title, SheetStyles.BAND);
            taken.forEach(each -> reading(each, path));
        }
        for (EReference part : element.eClass().getEAllContainments()) {
            part(element, part, title + " › ", path);
        }
    }

    private static List<Taken> taken(EObject element) {
        List<Taken> taken = new ArrayList<>();
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            if (REMARKS.contains(attribute)) {
                continue; // for colleagues: the workbook goes to the customer
            }
            Object value = element.eIsSet(attribute) ? element.eGet(attribute) : null;
            if (value instanceof List<?> list) {
                list.forEach(entry -> taken.add(new Taken(attribute, entry)));
            } else if (value != null) {
                taken.add(new Taken(attribute, value));
            }
        }
        return taken;
    }

    private void reading(Taken taken, String owner) {
        String path = owner + "." + taken.attribute().getName();
        page.row().text(0, readings.label(taken.attribute()), SheetStyles.LINE);
        CellStyle look = SheetStyles.LINE;
        Object value = taken.value();
        if (value instanceof Quantity quantity) {
            TypedReading reading = TypedReading.of(quantity);
            inputs.readings().add(path, page.fullAddress(1), quantity, reading.unit());
            quantity(reading, path);
            inputs.name(path, page.fullAddress(1));
        } else if (value instanceof LocalDate date) {
            CellStyle day = look.format(sheets.formats().date()).align(CellStyle.Alignment.LEFT);
            page.span(1, LAST, day).date(1, date, day);
        } else if (value instanceof Number number) {
            inputs.readings().add(path, page.fullAddress(1), number.doubleValue());
            page.number(1, number, inputs.look(path, look.format(NumberFormats.exact(number.doubleValue()))));
            inputs.name(path, page.fullAddress(1));
            page.blank(2, look).blank(3, look).blank(4, look);
        } else {
            page.text(1, LAST, readings.text(taken.attribute(), value), look);
        }
    }

    private void quantity(TypedReading reading, String path) {
        page.number(1, reading.value(), inputs.look(path, SheetStyles.LINE.format(reading.format())));
        page.text(2, reading.unit(), SheetStyles.LINE);
        String spread = reading.spread();
        page.text(
                3,
                spread == null ? "" : spread.replace(".", words.get("number.point")),
                SheetStyles.LINE.align(CellStyle.Alignment.RIGHT));
        String meaning = spread == null ? "" : words.get(reading.standard() ? "spread.standard" : "spread.half");
        page.text(4, meaning, SheetStyles.LINE_MUTED);
    }
}
