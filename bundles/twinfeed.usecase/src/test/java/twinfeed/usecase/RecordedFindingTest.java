// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.AssessmentPackage.Literals;
import twinfeed.model.assessment.Finding;

/** Each part of a finding is written when it is first asked for, whatever asks for it, and only once. */
class RecordedFindingTest {
    private static final AssessmentFactory MAKE = AssessmentFactory.eINSTANCE;
    private static final List<EStructuralFeature> WRITTEN_LATE = List.of(
            Literals.FINDING__TEXT,
            Literals.FINDING__CUSTOMER_TEXT,
            Literals.FINDING__STEPS,
            Literals.FINDING__SERIES,
            Literals.FINDING__LOW,
            Literals.FINDING__HIGH,
            Literals.FINDING__REMEASURE);

    private final List<String> written = new ArrayList<>();

    private <T> T write(String part, T value) {
        written.add(part);
        return value;
    }

    private RecordedFinding finding() {
        RecordedFinding finding = new RecordedFinding(
                new Object(),
                new RecordedFinding.Sentences(
                        () -> write("text", "It passes."), () -> write("customer text", "All is well.")),
                () -> write("steps", List.of(MAKE.createStep())),
                () -> write("series", List.of(MAKE.createSeries())));
        finding.later(() -> {
            written.add("interval");
            finding.setLow(1.5);
            finding.setHigh(2.5);
            finding.setRemeasure("flow");
        });
        return finding;
    }

    private static RecordedFinding saysNothing() {
        @Nullable String nothing = null;
        return new RecordedFinding(
                new Object(), new RecordedFinding.Sentences(() -> "", () -> nothing), () -> List.of(), () -> List.of());
    }

    @Test
    void eachPartIsWrittenOnceWhenItIsAskedFor() {
        Finding finding = finding();
        finding.setKey("flow.winter");
        assertEquals(List.of(), written);
        assertEquals("All is well.", finding.getCustomerText());
        assertEquals(List.of("text", "customer text"), written);
        assertEquals("It passes.", finding.getText());
        assertEquals(1, finding.getSteps().size());
        assertEquals(1, finding.getSteps().size());
        assertEquals(1, finding.getSeries().size());
        assertEquals(1.5, finding.getLow());
        assertEquals(2.5, finding.getHigh());
        assertEquals("flow", finding.getRemeasure());
        assertEquals(List.of("text", "customer text", "steps", "series", "interval"), written);
    }

    @Test
    void whoeverAsksWhetherAPartIsThereGetsTheAnswerOfTheWrittenOne() {
        for (EStructuralFeature part : WRITTEN_LATE) {
            assertTrue(finding().eIsSet(part), part.getName());
        }
        RecordedFinding nothing = saysNothing();
        for (EStructuralFeature part : WRITTEN_LATE) {
            assertEquals(part == Literals.FINDING__TEXT, nothing.eIsSet(part), part.getName());
        }
        nothing.setText(null);
        assertFalse(nothing.eIsSet(Literals.FINDING__TEXT));
        assertFalse(nothing.eIsSet(Literals.FINDING__KEY));
        nothing.setKey("flow.winter");
        assertTrue(nothing.eIsSet(Literals.FINDING__KEY));
    }

    @Test
    void theIntervalIsThereWhicheverOfItIsAskedFirst() {
        assertEquals(2.5, finding().getHigh());
        assertEquals("flow", finding().getRemeasure());
        assertNull(saysNothing().getLow());
    }

    @Test
    void aCopyIsWhole() {
        Finding copy = EcoreUtil.copy(finding());
        assertEquals("It passes.", copy.getText());
        assertEquals(1, copy.getSteps().size());
        assertEquals(1, copy.getSeries().size());
        assertEquals("flow", copy.getRemeasure());
    }
}
