// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import twinfeed.document.Words;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Quantity;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/**
 * The record of the visit as it was taken: every reading with its tolerance. It walks the model, so that a reading added to the survey
 * appears here too; only what was taken is shown, for absent is not zero.
 */
public final class SurveyPage {
    static final int LAST = 4;

    private final Sheets sheets;
    private final Page page;
    private final Words words;
    private final ReadingWords readings;

    private record Taken(EAttribute attribute, Object value) {}

    /** The sheet's writer. */
    public SurveyPage(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        this.readings = new ReadingWords(words, sheets.document().locale());
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
        taken(survey).forEach(this::reading);
        for (EReference part : survey.eClass().getEAllContainments()) {
            if (part != SurveyPackage.Literals.SURVEY__PHOTOS) {
                part(survey, part, "");
            }
        }
        new PhotoRows(sheets, page).write(survey.getPhotos());
    }

    private void part(EObject owner, EReference reference, String path) {
        String name = path + readings.label(reference);
        if (reference.isMany()) {
            List<?> elements = (List<?>) owner.eGet(reference);
            for (int at = 0; at < elements.size(); at++) {
                element((EObject) elements.get(at), elements.size() == 1 ? name : name + " " + (at + 1));
            }
        } else if (owner.eGet(reference) instanceof EObject element) {
            element(element, name);
        }
    }

    private void element(EObject element, String path) {
        List<Taken> taken = taken(element);
        if (!taken.isEmpty()) {
            page.gap(4);
            page.row().text(0, LAST, path, Looking.BAND);
            taken.forEach(this::reading);
        }
        for (EReference part : element.eClass().getEAllContainments()) {
            part(element, part, path + " › ");
        }
    }

    private static List<Taken> taken(EObject element) {
        List<Taken> taken = new ArrayList<>();
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            Object value = element.eIsSet(attribute) ? element.eGet(attribute) : null;
            if (value instanceof List<?> list) {
                list.forEach(entry -> taken.add(new Taken(attribute, entry)));
            } else if (value != null) {
                taken.add(new Taken(attribute, value));
            }
        }
        return taken;
    }

    private void reading(Taken taken) {
        page.row().text(0, readings.label(taken.attribute()), Looking.LINE);
        Look look = Looking.LINE;
        Object value = taken.value();
        if (value instanceof Quantity quantity) {
            quantity(TypedReading.of(quantity));
        } else if (value instanceof LocalDate date) {
            Look day = look.format(sheets.formats().date()).side(Look.Side.LEFT);
            page.span(1, LAST, day).date(1, date, day);
        } else if (value instanceof Number number) {
            page.number(1, number, look.format(Formats.exact(number.doubleValue())));
            page.blank(2, look).blank(3, look).blank(4, look);
        } else {
            page.text(1, LAST, readings.text(taken.attribute(), value), look);
        }
    }

    private void quantity(TypedReading reading) {
        page.number(1, reading.value(), Looking.LINE.format(reading.format()));
        page.text(2, reading.unit(), Looking.LINE);
        String spread = reading.spread();
        page.text(
                3,
                spread == null ? "" : spread.replace(".", words.get("number.point")),
                Looking.LINE.side(Look.Side.RIGHT));
        String meaning = spread == null ? "" : words.get(reading.standard() ? "spread.standard" : "spread.half");
        page.text(4, meaning, Looking.LINE_MUTED);
    }
}
