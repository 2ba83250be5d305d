// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;

/** Which finding stands at which piece, and by which sign. */
class PieceFindingsTest {
    private final OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();

    private Finding finding(String key, Outcome outcome, FindingClass kind, Double margin, Double limit) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setKey(key);
        finding.setTitle(key);
        finding.setOutcome(outcome);
        finding.setKind(kind);
        finding.setMargin(margin);
        finding.setLimit(limit);
        finding.getNeeds().add("survey.electricity.serviceFuse");
        option.getFindings().add(finding);
        return finding;
    }

    private String atTheFuse() {
        PieceAnswer answer =
                PieceFindings.of(option, Set.of("hall"), Locale.UK).answer(null, List.of(PieceFindings.POWER));
        return answer == null ? "nothing" : answer.check();
    }

    /** The electrical supply comes before the heater's data, these before the water; the longest known beginning of the path counts. */
    @Test
    void theReadingsOfACheckSayWhereItStands() {
        assertEquals(
                "survey.electricity.circuit.segments",
                PieceFindings.place(
                        List.of("survey.water.test", "survey.electricity.circuit.segments.length", "heater.power")));
        assertEquals(
                "heater", PieceFindings.place(List.of("survey.water.test", "heater.power", "survey.targetOutlet")));
        assertEquals("survey.water.segments", PieceFindings.place(List.of("survey.water.segments.bore")));
        assertEquals(
                "survey.water.drawOffs",
                PieceFindings.place(List.of("survey.water.segments.bore", "survey.water.drawOffs.flow")));
        assertEquals(
                "survey.electricity.circuit", PieceFindings.place(List.of("survey.electricity.circuit.measuredLoop")));
        assertEquals("", PieceFindings.place(List.of("survey.site.name")));
    }

    /** What decides first, then failures, then doubts, then what only advises, then what passes; the closest margin among equals. */
    @Test
    void theFindingThatBearsHardest() {
        assertEquals("nothing", atTheFuse());
        finding("far", Outcome.PASSES, FindingClass.SAFETY, 50.0, 100.0);
        finding("close", Outcome.PASSES, FindingClass.SAFETY, 10.0, 100.0);
        finding("none", Outcome.PASSES, FindingClass.SAFETY, null, null);
        assertEquals("close", atTheFuse());
        finding("doubted advice", Outcome.TOO_CLOSE, FindingClass.ADVICE, 1.0, 100.0);
        assertEquals("doubted advice", atTheFuse());
        finding("advice", Outcome.FAILS, FindingClass.ADVICE, -1.0, 100.0);
        assertEquals("advice", atTheFuse());
        finding("doubt", Outcome.CANNOT_TELL, FindingClass.SAFETY, null, null);
        assertEquals("doubt", atTheFuse());
        finding("failure", Outcome.FAILS, FindingClass.COMPLIANCE, -1.0, 100.0);
        assertEquals("failure", atTheFuse());
        finding("small limit", Outcome.FAILS, FindingClass.COMPLIANCE, -1.0, 10.0);
        assertEquals("small limit", atTheFuse(), "a tenth is lacking, not a hundredth");
        option.setBinding("far");
        assertEquals("far", atTheFuse());
        option.getFindings().forEach(each -> each.setOutcome(Outcome.NOT_APPLICABLE));
        assertEquals("nothing", atTheFuse());
    }

    /** A name of another house places nothing; a finding that names a piece stands there and nowhere else. */
    @Test
    void aFindingThatNamesAPiece() {
        Finding named = finding("cable", Outcome.FAILS, FindingClass.SAFETY, -1.0, 10.0);
        named.setSubject("garage");
        assertEquals("cable", atTheFuse());
        named.setSubject("hall");
        assertEquals("nothing", atTheFuse());
        PieceFindings findings = PieceFindings.of(option, Set.of("hall"), Locale.UK);
        assertEquals("cable", findings.answer("hall", List.of()).check());
        assertNull(findings.answer("loft", List.of()));
        assertNull(PieceFindings.none(Locale.UK).answer("hall", List.of()));
    }

    @Test
    void aSignAWordAndAColour() {
        assertEquals("✓ passes", Mark.of(Outcome.PASSES, Locale.UK).toString());
        assertEquals(
                List.of(
                        "○ not checked DOUBT",
                        "✓ passes GOOD",
                        "✗ fails BAD",
                        "≈ too close to call DOUBT",
                        "? cannot tell DOUBT",
                        "– not applicable QUIET"),
                Arrays.stream(Outcome.values())
                        .map(each -> Mark.of(each, Locale.UK))
                        .map(each -> each + " " + each.tone())
                        .toList());
        assertEquals(
                "? + ? ✓ ?",
                String.join(
                        " ",
                        List.of(
                                Mark.of(Verdict.NOT_CHECKED, Locale.UK).sign(),
                                Mark.of(Verdict.SUITS_WITH_WORK, Locale.UK).sign(),
                                Mark.of(Verdict.NOT_AS_IT_IS, Locale.UK).sign(),
                                Mark.of(Verdict.SUITS, Locale.UK).sign(),
                                Mark.of(Verdict.CANNOT_TELL, Locale.UK).sign())));
        assertEquals(Tone.BAD, Mark.of(Verdict.DOES_NOT_SUIT, Locale.UK).tone());
        assertTrue(Mark.of(Verdict.SUITS, Locale.GERMANY).word().startsWith("passt"));
        Finding advice = finding("advice", Outcome.FAILS, FindingClass.ADVICE, null, null);
        assertEquals("▸ advice", Mark.of(advice, Locale.UK).toString());
        advice.setOutcome(Outcome.PASSES);
        assertEquals("✓ passes", Mark.of(advice, Locale.UK).toString());
    }
}
