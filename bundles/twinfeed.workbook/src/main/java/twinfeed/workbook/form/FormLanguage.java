// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.form.FormPart;
import twinfeed.model.job.JobPackage;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.ReadingLabels;
import twinfeed.workbook.text.WorkbookTexts;

/** What a form says in one language: labels, and the words of closed lists. */
public final class FormLanguage {
    private final Locale locale;
    private final FormWords words;
    private final ReadingLabels labels;

    /**
     * In a language.
     *
     * @param words words that only the calculators know
     */
    public FormLanguage(Locale locale, FormWords words) {
        this.locale = locale;
        this.words = words;
        this.labels = new ReadingLabels(QuoteSheets.words(locale), locale);
    }

    /** The language itself. */
    public Locale locale() {
        return locale;
    }

    /** A text of the form. */
    public String text(String key) {
        return WorkbookTexts.SHEETS.get(locale, "form." + key);
    }

    /** A text of the form with values in it. */
    public String text(String key, Map<String, ?> values) {
        return WorkbookTexts.SHEETS.format(locale, "form." + key, values);
    }

    /** What a reading is called. */
    public String label(EStructuralFeature feature) {
        return feature == JobPackage.Literals.JOB__CATALOGUE ? text("catalogue") : labels.label(feature);
    }

    /** What a part is called: the thing, and what it belongs to where that is no part of the survey itself. */
    public String title(FormPart part) {
        List<String> names = new ArrayList<>();
        for (EReference step :
                part.path().subList(Math.min(1, part.path().size()), part.path().size())) {
            names.add(labels.label(step));
        }
        return names.isEmpty() ? text("survey") : String.join(" \u203a ", names);
    }

    /** The words of a closed list, no two of them alike; none where any text is right. */
    public List<FormWords.Word> words(EAttribute attribute) {
        List<FormWords.Word> found = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (FormWords.Word word : all(attribute)) {
            found.add(
                    seen.add(word.text())
                            ? word
                            : new FormWords.Word(word.value(), word.text() + " (" + word.value() + ")"));
        }
        return found;
    }

    private List<FormWords.Word> all(EAttribute attribute) {
        if (attribute.getEAttributeType() instanceof EEnum list) {
            return list.getELiterals().stream()
                    .map(literal ->
                            new FormWords.Word(literal.getLiteral(), labels.text(attribute, literal.getInstance())))
                    .toList();
        }
        if (attribute.getEAttributeType().getInstanceClass() == Boolean.class) {
            return List.of(
                    new FormWords.Word("true", labels.text(attribute, true)),
                    new FormWords.Word("false", labels.text(attribute, false)));
        }
        String prefix = "form.word." + attribute.getEContainingClass().getName() + "." + attribute.getName() + ".";
        List<FormWords.Word> own = WorkbookTexts.SHEETS.keys().stream()
                .filter(key -> key.startsWith(prefix))
                .map(key -> new FormWords.Word(key.substring(prefix.length()), WorkbookTexts.SHEETS.get(locale, key)))
                .toList();
        return own.isEmpty() ? words.of(attribute) : own;
    }
}
