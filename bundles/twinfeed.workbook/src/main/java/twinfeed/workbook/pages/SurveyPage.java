// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
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
    private static final int LAST = 4;

    private final Sheets sheets;
    private final Page page;
    private final Words words;

    /** The sheet's writer. */
    public SurveyPage(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
    }

    /** Writes it. */
    public void write() {
        page.columns(44, 20, 10, 14, 24);
        sheets.head(page, "survey", LAST);
        sheets.tableHead(page, "survey", LAST + 1, Set.of(1, 3));
        page.setup().header(page.rowIndex(), page.rowIndex());
        Survey survey = sheets.document().survey();
        attributes(survey);
        for (EReference part : survey.eClass().getEAllContainments()) {
            if (part != SurveyPackage.Literals.SURVEY__PHOTOS) {
                part(survey, part, "");
            }
        }
        new PhotoRows(sheets, page).write(survey.getPhotos());
    }

    private void part(EObject owner, EReference reference, String path) {
        if (reference.isMany()) {
            List<?> elements = (List<?>) owner.eGet(reference);
            for (int at = 0; at < elements.size(); at++) {
                element((EObject) elements.get(at), path + label(reference) + " " + (at + 1));
            }
        } else if (owner.eGet(reference) instanceof EObject element) {
            element(element, path + label(reference));
        }
    }

    private void element(EObject element, String path) {
        page.gap(4);
        page.row().text(0, LAST, path, Looking.BAND);
        attributes(element);
        for (EReference part : element.eClass().getEAllContainments()) {
            part(element, part, path + " › ");
        }
    }

    private void attributes(EObject element) {
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            Object value = element.eIsSet(attribute) ? element.eGet(attribute) : null;
            if (value instanceof List<?> list) {
                list.forEach(entry -> reading(attribute, entry));
            } else if (value != null) {
                reading(attribute, value);
            }
        }
    }

    private void reading(EAttribute attribute, Object value) {
        page.row().text(0, label(attribute), Looking.LINE);
        if (value instanceof Quantity quantity) {
            quantity(TypedReading.of(quantity));
            return;
        }
        Look look = Looking.LINE;
        if (value instanceof LocalDate date) {
            page.date(1, date, look.format(sheets.formats().date())).blank(2, look);
        } else if (value instanceof Number number) {
            page.number(1, number, look.format("General")).blank(2, look);
        } else {
            page.text(1, LAST, text(value), look);
            return;
        }
        page.blank(3, look).blank(4, look);
    }

    private void quantity(TypedReading reading) {
        page.number(1, reading.value(), Looking.LINE.format(reading.format()));
        page.text(2, reading.unit(), Looking.LINE);
        String spread = reading.spread();
        page.text(
                3,
                spread == null ? "" : spread.replace(".", words.get("number.point")),
                Looking.LINE.side(Look.Side.RIGHT));
        page.text(
                4,
                spread == null ? "" : words.get(reading.standard() ? "spread.standard" : "spread.half"),
                Looking.LINE_MUTED);
    }

    private String text(Object value) {
        if (value instanceof Boolean answer) {
            return words.get(answer ? "yes" : "no");
        }
        if (value instanceof Enumerator literal) {
            String found = words.find("enum." + value.getClass().getSimpleName() + "." + literal.getLiteral());
            return found == null ? literal.getLiteral() : found;
        }
        return value.toString();
    }

    private String label(EStructuralFeature feature) {
        return label(words, feature);
    }

    /** What a reading is called; a feature without a label is called by its name, spaced. */
    static String label(Words words, EStructuralFeature feature) {
        String found = words.find(labelKey(feature));
        return found == null ? spaced(feature.getName()) : found;
    }

    /** The key of a reading's label. */
    static String labelKey(EStructuralFeature feature) {
        return "label." + feature.getEContainingClass().getName() + "." + feature.getName();
    }

    private static String spaced(String name) {
        String spaced = name.replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }
}
