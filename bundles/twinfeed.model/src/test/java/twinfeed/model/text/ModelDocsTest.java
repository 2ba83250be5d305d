// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.JobPackage;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.quote.QuotePackage;
import twinfeed.model.survey.SurveyPackage;

/** Everything in the model is documented, and the documentation of each thing is its own. */
class ModelDocsTest {
    private static final List<EPackage> PACKAGES = List.of(
            JobPackage.eINSTANCE,
            SurveyPackage.eINSTANCE,
            CataloguePackage.eINSTANCE,
            PricebookPackage.eINSTANCE,
            AssessmentPackage.eINSTANCE,
            QuotePackage.eINSTANCE);

    @Test
    void itsOwnWords() {
        assertEquals("Gauge reading with no flow.", ModelDocs.of(SurveyPackage.Literals.WATER_TEST__STATIC_PRESSURE));
        assertEquals("Separate earth from the supply.", ModelDocs.of(literal("Earthing", "TN-S")));
        assertEquals("Some equal fittings.", ModelDocs.of(SurveyPackage.Literals.FITTING));
        assertEquals("The file of one job.", ModelDocs.of((EPackage) JobPackage.eINSTANCE));
    }

    @Test
    void everythingIsDocumented() {
        int seen = 0;
        for (EPackage pack : PACKAGES) {
            assertFalse(ModelDocs.of(pack).isBlank(), pack.getName());
            for (EClassifier classifier : pack.getEClassifiers()) {
                seen += assertDocumented(classifier);
            }
        }
        assertTrue(seen > 400, "documented things seen: " + seen);
    }

    /** Whatever the window and the pages of help show of classes and values is said in German too, and nothing besides. */
    @Test
    void germanSaysAllThatEnglishSays() throws IOException {
        Properties german = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(ModelDocs.class.getResourceAsStream("documentation_de.properties")),
                StandardCharsets.UTF_8)) {
            german.load(reader);
        }
        Set<String> known = new TreeSet<>();
        for (EPackage pack : PACKAGES) {
            for (EClassifier classifier : pack.getEClassifiers()) {
                if (classifier instanceof EClass type) {
                    known.add(type.getName());
                    assertSentence(ModelDocs.printed(type, Locale.GERMAN), type.getName());
                    for (EStructuralFeature feature : type.getEStructuralFeatures()) {
                        known.add(type.getName() + "." + feature.getName());
                        assertSentence(ModelDocs.printed(feature, Locale.GERMAN), feature.getName());
                    }
                }
            }
        }
        assertEquals(known, new TreeSet<>(german.stringPropertyNames()));
        assertEquals(
                "Ruhedruck.", ModelDocs.printed(SurveyPackage.Literals.WATER_TEST__STATIC_PRESSURE, Locale.GERMANY));
        assertEquals(
                "Gauge reading with no flow.",
                ModelDocs.printed(SurveyPackage.Literals.WATER_TEST__STATIC_PRESSURE, Locale.UK));
        assertEquals(
                "Einige gleiche Formst\u00fccke.", ModelDocs.printed(SurveyPackage.Literals.FITTING, Locale.GERMAN));
        assertEquals("Some equal fittings.", ModelDocs.printed(SurveyPackage.Literals.FITTING, Locale.ROOT));
    }

    @Test
    void nothingIsSaidOfOtherModels() {
        assertEquals("", ModelDocs.of((EClassifier) EcorePackage.Literals.ECLASS));
        assertEquals("", ModelDocs.of((EStructuralFeature) EcorePackage.Literals.ENAMED_ELEMENT__NAME));
    }

    private static int assertDocumented(EClassifier classifier) {
        assertSentence(ModelDocs.of(classifier), classifier.getName());
        int seen = 1;
        if (classifier instanceof EClass type) {
            for (EStructuralFeature feature : type.getEStructuralFeatures()) {
                assertSentence(ModelDocs.of(feature), classifier.getName() + "." + feature.getName());
                seen++;
            }
        } else if (classifier instanceof EEnum choice) {
            for (EEnumLiteral literal : choice.getELiterals()) {
                assertSentence(ModelDocs.of(literal), classifier.getName() + "." + literal.getName());
                seen++;
            }
        }
        return seen;
    }

    private static void assertSentence(String documentation, String name) {
        assertTrue(documentation.length() > 3 && documentation.endsWith("."), name + ": " + documentation);
    }

    private static EEnumLiteral literal(String choice, String literal) {
        return ((EEnum) SurveyPackage.eINSTANCE.getEClassifier(choice)).getEEnumLiteralByLiteral(literal);
    }
}
