// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.survey.SurveyPackage;

class ReadingLabelsTest {
    /** A reading that somebody adds to the survey gets its label here, too. */
    @Test
    void everyReadingHasALabel() {
        List<String> missing = new ArrayList<>();
        for (EPackage part : List.of(SurveyPackage.eINSTANCE, CataloguePackage.eINSTANCE)) {
            for (EClassifier classifier : part.getEClassifiers()) {
                missing(classifier, missing);
            }
        }
        missing.removeIf(key -> key.startsWith("label.Catalogue."));
        assertEquals(List.of(), missing);
    }

    private static void missing(EClassifier classifier, List<String> missing) {
        if (classifier instanceof EClass known) {
            for (EStructuralFeature feature : known.getEStructuralFeatures()) {
                add(ReadingLabels.labelKey(feature), missing);
            }
        } else if (classifier instanceof EEnum list) {
            list.getELiterals().forEach(literal -> add(ReadingLabels.literalKey(list.getName(), literal), missing));
        }
    }

    private static void add(String key, List<String> missing) {
        if (!ReadingLabels.knows(key)) {
            missing.add(key);
        }
    }
}
