// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.form.Page.Item;
import twinfeed.desktop.form.Page.Section;
import twinfeed.desktop.form.Page.Several;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.SurveyPackage;

final class SurveyPagesTest {
    private final Words words = new Words(Locale.ENGLISH);

    private static List<Item> items(Page page) {
        List<Item> all = new ArrayList<>();
        page.sections().stream().map(Section::items).forEach(items -> collect(items, all));
        return all;
    }

    private static void collect(List<Item> items, List<Item> all) {
        for (Item item : items) {
            all.add(item);
            if (item instanceof Several several) {
                collect(several.items(), all);
            }
        }
    }

    private static List<ReadingPath> asked() {
        return SurveyPages.all().stream()
                .flatMap(page -> items(page).stream())
                .map(Item::path)
                .toList();
    }

    @Test
    void everyReadingThatASurveyCanHoldIsAskedSomewhere() {
        Set<String> model = new TreeSet<>();
        readings(SurveyPackage.Literals.SURVEY, model, new TreeSet<>());
        Set<String> asked = new TreeSet<>();
        asked().forEach(path -> asked.add(path.key()));
        assertTrue(model.size() > 120, "readings of the model: " + model.size());
        model.removeAll(asked);
        // Given on the page of the fault-finding, with the person and the time.
        model.removeAll(
                Set.of("Symptom.key", "Symptom.answer", "IsolationTick.step", "IsolationTick.by", "IsolationTick.at"));
        assertEquals(Set.of(), model);
    }

    private static void readings(EClass type, Set<String> found, Set<String> seen) {
        if (!seen.add(type.getName())) {
            return;
        }
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute) {
                found.add(type.getName() + "." + feature.getName());
            } else {
                readings(((EReference) feature).getEReferenceType(), found, seen);
            }
        }
    }

    @Test
    void everyQuestionHasALabelAndAnExplanation() {
        FieldDocumentation documentation = FieldDocumentation.ofModel(Locale.UK);
        for (ReadingPath path : asked()) {
            assertTrue(words.find("label." + path.key()) != null, "label of " + path.key());
            assertTrue(documentation.help(path.last()).length() > 3, "explanation of " + path.key());
        }
    }

    /** Whatever a remark, a finding or a help page may name: by its own words, and never by its name in the model. */
    @Test
    void everyFeatureOfTheModelIsCalledByALabel() {
        Set<String> raw = new TreeSet<>();
        int seen = 0;
        for (EClass type : classes(SurveyPackage.Literals.SURVEY, new java.util.LinkedHashSet<>())) {
            for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
                String key = feature.getEContainingClass().getName() + "." + feature.getName();
                String label = words.find("label." + key);
                seen++;
                if (label == null || label.isBlank() || label.contains(feature.getName() + ".")) {
                    raw.add(key);
                }
            }
        }
        assertTrue(seen > 150, "features: " + seen);
        assertEquals(Set.of(), raw);
    }

    @Test
    void everyWordOfTheModelHasAText() {
        Set<String> raw = new TreeSet<>();
        for (EClass type : classes(SurveyPackage.Literals.SURVEY, new java.util.LinkedHashSet<>())) {
            for (EAttribute attribute : type.getEAllAttributes()) {
                if (attribute.getEAttributeType() instanceof org.eclipse.emf.ecore.EEnum words) {
                    words.getELiterals().stream()
                            .map(literal -> "choice." + words.getName() + "." + literal.getLiteral())
                            .filter(key -> this.words.find(key) == null)
                            .forEach(raw::add);
                }
            }
        }
        assertEquals(Set.of(), raw);
    }

    private static Set<EClass> classes(EClass type, Set<EClass> found) {
        if (found.add(type)) {
            type.getEAllReferences().forEach(reference -> classes(reference.getEReferenceType(), found));
        }
        return found;
    }

    /** Readings that any check, also one of a third party, may wait for. */
    @Test
    void readingsThatChecksNeedAreNamedInWords() throws Exception {
        Set<String> raw = new TreeSet<>();
        int needs = 0;
        for (var calculator : DemoFiles.service().calculators()) {
            for (var check : calculator.descriptor().checks()) {
                for (String need : check.needs()) {
                    needs++;
                    String name =
                            twinfeed.desktop.text.ReadingName.of(need.replaceFirst("^heater\\.", "heaters."), words);
                    if (name.contains(".")) {
                        raw.add(need);
                    }
                }
            }
        }
        assertTrue(needs > 60, "needs: " + needs);
        assertEquals(Set.of(), raw);
    }

    @Test
    void everyPageAndSectionHasATitle() {
        for (Page page : SurveyPages.all()) {
            assertTrue(words.find("page." + page.key()) != null, page.key());
            page.sections()
                    .forEach(section -> assertTrue(words.find("section." + section.key()) != null, section.key()));
        }
    }

    @Test
    void noTwoQuestionsOfAPageShareAMnemonic() {
        for (Page page : SurveyPages.all()) {
            // The same question asked of every element of a list may have the same mnemonic.
            Map<Character, String> seen = new TreeMap<>();
            for (Item item : items(page)) {
                String label = words.get("label." + item.path().key());
                int mark = label.indexOf('&');
                if (mark >= 0) {
                    char key = Character.toLowerCase(label.charAt(mark + 1));
                    String other = seen.putIfAbsent(key, item.path().key());
                    assertTrue(
                            other == null || other.equals(item.path().key()),
                            page.key() + ": " + item.path().key() + " has the mnemonic of " + other);
                }
            }
        }
    }

    @Test
    void defaultsComeFromTheModelsOwnDocumentation() {
        FieldDocumentation documentation = FieldDocumentation.ofModel(Locale.UK);
        assertEquals(
                "40 °C",
                documentation
                        .defaultValue(SurveyPackage.Literals.SURVEY__TARGET_OUTLET)
                        .orElse(""));
        assertEquals(
                "copper",
                documentation
                        .defaultValue(SurveyPackage.Literals.PIPE_SEGMENT__MATERIAL)
                        .orElse(""));
        assertTrue(documentation
                .defaultValue(SurveyPackage.Literals.WATER_TEST__FLOW)
                .isEmpty());
    }

    @Test
    void questionsAreAskedInTheFormOfTheirAnswers() {
        Map<String, FieldForm> forms = new TreeMap<>();
        for (Page page : SurveyPages.all()) {
            for (Item item : items(page)) {
                if (item instanceof Page.Field field) {
                    forms.put(field.path().key(), field.form());
                }
            }
        }
        assertEquals(FieldForm.LINE, forms.get("Survey.takenBy"));
        assertEquals(FieldForm.DAY, forms.get("Survey.takenOn"));
        assertEquals(FieldForm.LINES, forms.get("Survey.notes"));
        assertEquals(FieldForm.KNOWN, forms.get("Survey.climate"));
        assertEquals(FieldForm.WHOLE, forms.get("PresentUnit.age"));
        assertEquals(FieldForm.QUANTITY, forms.get("WaterTest.flow"));
        assertEquals(FieldForm.CHOICE, forms.get("WaterTest.atPeak"));
        assertEquals(FieldForm.CHOICE, forms.get("PipeSegment.material"));
    }
}
