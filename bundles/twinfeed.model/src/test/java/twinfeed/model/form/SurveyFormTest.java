// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.junit.jupiter.api.Test;
import twinfeed.model.survey.SurveyPackage;

/** Whether a form asks all that a survey can hold, each reading once. */
class SurveyFormTest {
    @Test
    void everyReadingOfASurveyIsAskedOnce() {
        List<String> asked = new ArrayList<>();
        SurveyForm.pages().forEach(page -> page.parts().forEach(part -> part.attributes()
                .forEach(attribute -> asked.add(
                        part.key().isEmpty() ? attribute.getName() : part.key() + "." + attribute.getName()))));
        Set<String> expected = new TreeSet<>(Set.of("catalogue"));
        collect("survey", SurveyPackage.Literals.SURVEY, expected);
        assertEquals(expected, new TreeSet<>(asked));
        assertEquals(expected.size(), asked.size(), "no reading twice");
    }

    private static void collect(String path, EClass type, Set<String> found) {
        for (EAttribute attribute : type.getEAllAttributes()) {
            found.add(path + "." + attribute.getName());
        }
        for (EReference part : type.getEAllContainments()) {
            collect(path + "." + part.getName(), part.getEReferenceType(), found);
        }
    }

    @Test
    void aTableOfElementsOfOthersNamesTheTableOfThose() {
        List<FormPart> tables = SurveyForm.pages().stream()
                .flatMap(page -> page.parts().stream())
                .filter(FormPart::table)
                .toList();
        assertEquals(
                "survey.water.drawOffs.segments",
                tables.stream()
                        .filter(part -> part.key().equals("survey.water.drawOffs.segments.fittings"))
                        .findFirst()
                        .orElseThrow()
                        .parent());
        assertTrue(tables.stream()
                .anyMatch(part -> part.key().equals("survey.water.segments")
                        && part.parent().isEmpty()));
    }

    @Test
    void theHouseIsWalkedFromTheDoorToTheShower() {
        assertEquals(
                List.of("visit", "unit", "faults", "water", "electricity", "request"),
                SurveyForm.pages().stream().map(FormPage::key).toList());
    }
}
