// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import java.util.Locale;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.document.DocumentTexts;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.workbook.text.WorkbookTexts;

/** What the readings of a survey and their values are called. */
public final class ReadingLabels {

    private final DocumentTexts words;
    private final Locale locale;

    public ReadingLabels(DocumentTexts words, Locale locale) {
        this.words = words;
        this.locale = locale;
    }

    /** What a reading is called; a feature that the texts do not know is called by its name, spaced. */
    public String label(EStructuralFeature feature) {
        String found = WorkbookTexts.READINGS.find(locale, labelKey(feature));
        return found == null ? spaced(feature.getName()) : found;
    }

    /** The key of a reading's label. */
    public static String labelKey(EStructuralFeature feature) {
        return "label." + feature.getEContainingClass().getName() + "." + feature.getName();
    }

    /** Whether the texts know a key. */
    public static boolean knows(String key) {
        return WorkbookTexts.READINGS.has(key);
    }

    /** A value that is no number, in words. */
    public String text(EAttribute attribute, Object value) {
        if (value instanceof Boolean answer) {
            return words.get(answer ? "yes" : "no");
        }
        if (value instanceof Enumerator literal) {
            String found = WorkbookTexts.READINGS.find(
                    locale, literalKey(attribute.getEAttributeType().getName(), literal));
            return found == null ? literal.getLiteral() : found;
        }
        boolean key = attribute == SurveyPackage.Literals.SYMPTOM__KEY
                || attribute == SurveyPackage.Literals.ISOLATION_TICK__STEP;
        return key ? spaced(value.toString()) : value.toString();
    }

    /** The key of a value of a list. */
    public static String literalKey(String list, Enumerator literal) {
        return "enum." + list + "." + literal.getLiteral();
    }

    private static String spaced(String name) {
        if (name.isEmpty()) {
            return name;
        }
        String spaced = name.replaceAll("(?<=[a-z])([A-Z])", " $1").toLowerCase(Locale.ROOT);
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }
}
