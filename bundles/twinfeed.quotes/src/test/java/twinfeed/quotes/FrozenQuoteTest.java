// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Step;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.work.WorkDone;
import twinfeed.units.Temperature;

/** The file of an issued quote: workings of any length come back as they were, and each step of them is written once. */
class FrozenQuoteTest {
    private static Step step(String symbol, @Nullable Double value) {
        Step step = AssessmentFactory.eINSTANCE.createStep();
        step.setSymbol(symbol);
        step.setMeaning("meaning of " + symbol);
        if (value != null) {
            step.setValue(value);
        }
        return step;
    }

    private static List<Finding> findings(Issued issued) {
        return issued.assessment().getOptions().get(0).getFindings();
    }

    private static FrozenQuote withWorkings() {
        Issued issued = Issued.today();
        Finding first = findings(issued).get(0);
        findings(issued).addAll(List.of(EcoreUtil.copy(first), EcoreUtil.copy(first)));
        findings(issued).get(0).getSteps().addAll(List.of(step("p", 1.5), step("q", 2.0), step("r", 3.25)));
        findings(issued)
                .get(1)
                .getSteps()
                .addAll(List.of(step("q", 2.0), step("r", 3.25), step("q", 4.0), step("p", 1.5)));
        findings(issued).get(2).getSteps().add(step("not reckoned", null));
        return FrozenQuote.of(issued.draft(), issued.survey(), issued.assessment(), issued.book(), "0.1.0");
    }

    private static String text(FrozenQuote quote) {
        return new String(quote.bytes(), StandardCharsets.UTF_8);
    }

    private static FrozenQuote read(String text) {
        return FrozenQuote.read(text.getBytes(StandardCharsets.UTF_8), "made-up.quote");
    }

    @Test
    void workingsComeBackAsTheyWere() {
        FrozenQuote frozen = withWorkings();
        FrozenQuote opened = read(text(frozen));
        assertTrue(EcoreUtil.equals(frozen.assessment(), opened.assessment()));
        assertArrayEquals(frozen.bytes(), opened.bytes());
    }

    /** A device that is replaced by its like has the same readings: what is new is written beside them. */
    @Test
    void whatTheWorkRenewsComesBack() {
        WorkDone done = new WorkDone(
                SurveyFactory.eINSTANCE.createSurvey(), List.of("@electricity/@circuit/@device", "@water/source"));
        FrozenQuote frozen = withWorkings().with(done);
        FrozenQuote opened = read(text(frozen));
        WorkDone back = Objects.requireNonNull(opened.withWork());
        assertEquals(done.renewed(), back.renewed());
        assertArrayEquals(frozen.bytes(), opened.bytes());
        FrozenQuote earlier = read(text(withWorkings().with(new WorkDone(done.supplies(), List.of()))));
        assertEquals(List.of(), Objects.requireNonNull(earlier.withWork()).renewed());
        assertFalse(text(earlier).contains("\"renewed\":"), "as an earlier program froze it");
    }

    @Test
    void eachStepIsWrittenOnce() {
        String text = text(withWorkings());
        assertEquals(2, text.split("meaning of q", -1).length);
        assertTrue(text.contains("\"steps\":[[0,3]]"));
        assertTrue(text.contains("\"steps\":[[1,3],[0,1]]"));
    }

    @Test
    void readsTheFormWithStepsInFull() {
        FrozenQuote frozen = withWorkings();
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("form", "twinfeed-quote-1");
        tree.put("program", "0.1.0");
        tree.put("quote", ModelTree.of(frozen.quote()));
        tree.put("survey", ModelTree.of(frozen.survey()));
        tree.put("assessment", ModelTree.of(frozen.assessment()));
        tree.put("book", ModelTree.of(frozen.book()));
        FrozenQuote opened = read(CanonicalJson.write(tree));
        assertTrue(EcoreUtil.equals(frozen.assessment(), opened.assessment()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[[0,30]]", "[[-1,3]]", "[[0]]", "[3]", "[[\"0\",3]]", "[[0,1e9]]"})
    void refusesRunsThatPointAtNothing(String runs) {
        String damaged = text(withWorkings()).replace("\"steps\":[[0,3]]", "\"steps\":" + runs);
        assertEquals(
                "notAQuote",
                assertThrows(LifeException.class, () -> read(damaged)).key());
    }

    @Test
    void refusesAFormThatIsNotKnown() {
        String later = text(withWorkings()).replace(FrozenQuote.FORM, "twinfeed-quote-3");
        assertEquals(
                "unknownForm",
                assertThrows(LifeException.class, () -> read(later)).key());
    }

    /** Damaged files, found by chance. */
    @ParameterizedTest
    @ValueSource(strings = {"k\u0007", "{\"form\":\u001b[2J}"})
    void damageIsToldWithoutWhatAScreenWouldObey(String damaged) {
        String said = String.valueOf(
                assertThrows(LifeException.class, () -> read(damaged)).getMessage());
        assertTrue(said.chars().noneMatch(Character::isISOControl), said);
    }

    /** Found by chance: a key that had grown by copies of its own end. */
    @Test
    void longNameInADamagedFileIsToldByItsBeginning() {
        String damaged = text(withWorkings()).replaceFirst("\"symbol\"", "\"e" + "xpress".repeat(1000) + "\"");
        String said = String.valueOf(
                assertThrows(LifeException.class, () -> read(damaged)).getMessage());
        assertTrue(said.contains("has no expressxpress") && said.contains("...; "), said);
        assertTrue(said.length() < 500, said);
    }

    @Test
    void valueThatIsNoneIsToldWithoutNamesOfClasses() {
        Issued issued = Issued.today();
        issued.survey().setTargetOutlet(Temperature.valueOf("40 °C"));
        String damaged = text(FrozenQuote.of(
                        issued.draft(), issued.survey(), issued.assessment(), issued.book(), "0.1.0"))
                .replace("40 °C", "40 A?s");
        String said = String.valueOf(
                assertThrows(LifeException.class, () -> read(damaged)).getMessage());
        assertTrue(said.contains("A?s"), said);
        assertTrue(!said.contains("Exception"), said);
    }
}
