// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** Findings by what matters. */
final class FindingFilterTest {
    private static final Words WORDS = new Words(Locale.UK);

    private static Finding finding(String calculator, String key, FindingClass kind, Outcome outcome) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setCalculator(calculator);
        finding.setKey(key);
        finding.setKind(kind);
        finding.setOutcome(outcome);
        return finding;
    }

    private static OptionAssessment option() {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.getFindings()
                .addAll(List.of(
                        finding("a", "passes", FindingClass.SAFETY, Outcome.PASSES),
                        finding("a", "advised", FindingClass.ADVICE, Outcome.FAILS),
                        finding("a", "missing", FindingClass.SAFETY, Outcome.CANNOT_TELL),
                        finding("b", "open", FindingClass.PERFORMANCE, Outcome.NOT_CHECKED),
                        finding("b", "close", FindingClass.SAFETY, Outcome.TOO_CLOSE),
                        finding("b", "fails", FindingClass.SAFETY, Outcome.FAILS),
                        finding("b", "none", FindingClass.SAFETY, Outcome.NOT_APPLICABLE),
                        finding("b", "kept", FindingClass.ADVICE, Outcome.PASSES)));
        return option;
    }

    private static List<String> keys(FindingFilter filter) {
        List<String> keys = new ArrayList<>();
        for (FindingGroup group : FindingGroup.of(option(), filter, List.of(), WORDS)) {
            group.findings().forEach(each -> keys.add(each.getKey()));
        }
        return keys;
    }

    @Test
    void failuresComeFirstAndAdviceBehindWhatIsMissing() {
        assertEquals(
                List.of("fails", "close", "open", "kept", "none", "missing", "advised", "passes"),
                keys(FindingFilter.ALL));
    }

    @Test
    void eachFilterShowsItsOwn() {
        assertEquals(List.of("fails"), keys(FindingFilter.FAILING));
        assertEquals(List.of("close"), keys(FindingFilter.TOO_CLOSE));
        assertEquals(List.of("missing", "open"), keys(FindingFilter.MISSING));
        assertEquals(List.of("advised"), keys(FindingFilter.ADVICE));
    }

    @Test
    void adviceHasAMarkOfItsOwnAndNeverFails() {
        for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
            Mark advice = Mark.of(finding("a", "x", FindingClass.ADVICE, Outcome.FAILS), locale);
            Mark fails = Mark.of(finding("a", "x", FindingClass.SAFETY, Outcome.FAILS), locale);
            assertNotEquals(fails.sign(), advice.sign());
            assertNotEquals(fails.word(), advice.word());
            assertEquals(Tone.ADVICE, advice.tone());
        }
        assertEquals("advice", Mark.of(option().getFindings().get(1), Locale.UK).word());
        FindingGroup first = FindingGroup.of(option(), FindingFilter.ADVICE, List.of(), WORDS)
                .get(0);
        assertFalse(
                first.tally(WORDS).contains(Mark.of(Outcome.FAILS, Locale.UK).sign()), first.tally(WORDS));
    }

    /** A shower that is weaker than was asked for is fitted all the same: only safety, the rules and the maker's instructions rule a heater out. */
    @Test
    void performanceFallsShortAndDoesNotFail() {
        Finding weak = finding("a", "x", FindingClass.PERFORMANCE, Outcome.FAILS);
        Mark mark = Mark.of(weak, Locale.UK);
        assertEquals("! falls short", mark.toString());
        assertEquals(Tone.DOUBT, mark.tone());
        assertEquals("! reicht nicht", Mark.of(weak, Locale.GERMANY).toString());
        assertFalse(FindingFilter.FAILING.accepts(weak));
        assertTrue(FindingFilter.ADVICE.accepts(weak));
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.getFindings().addAll(List.of(weak, finding("a", "y", FindingClass.SAFETY, Outcome.FAILS)));
        FindingGroup group =
                FindingGroup.of(option, FindingFilter.ALL, List.of(), WORDS).get(0);
        assertEquals(Tone.BAD, group.worst(WORDS).tone(), "the failure comes first");
        assertEquals("\u27171 !1", group.tally(WORDS));
    }

    @Test
    void findingStandsBesideTheSameWithTheWorkDone() {
        OptionAssessment option = option();
        Finding fails = option.getFindings().get(5);
        assertNull(FindingGroup.afterWork(option, fails), "no work is known");
        option.getAfterWork().add(finding("b", "fails", FindingClass.SAFETY, Outcome.PASSES));
        Finding after = FindingGroup.afterWork(option, fails);
        assertNotNull(after);
        assertEquals(Outcome.PASSES, after.getOutcome());
    }
}
