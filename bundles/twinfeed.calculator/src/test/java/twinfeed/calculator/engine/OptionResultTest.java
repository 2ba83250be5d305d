// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.units.Kind;

/** Which finding decides, and how it is looked up. */
class OptionResultTest {
    private static FindingBuilder on(List<Finding> all, String key, FindingClass kind, LimitType limitType) {
        return new FindingBuilder("made-up", Check.of(key, kind, limitType, Kind.RATIO), all::add);
    }

    private static String binding(List<Finding> findings) {
        return OptionResult.of(Fixtures.candidate(), findings)
                .binding()
                .map(finding -> finding.check().key())
                .orElse("none");
    }

    @Test
    void theLeastMarginByItsLimitDecidesAmongThosePassed() {
        List<Finding> all = new ArrayList<>();
        on(all, "made.wide", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(12, 10)
                .add();
        on(all, "made.narrow", FindingClass.SAFETY, LimitType.AT_MOST)
                .compare(99, 100)
                .add();
        on(all, "made.advice", FindingClass.ADVICE, LimitType.AT_LEAST)
                .compare(0, 100)
                .add();
        on(all, "made.report", FindingClass.SAFETY, LimitType.REPORT).report(5).add();
        on(all, "made.idle", FindingClass.SAFETY, LimitType.AT_LEAST)
                .outcome(Outcome.NOT_APPLICABLE)
                .add();
        assertEquals("made.narrow", binding(all));
    }

    @Test
    void aFailureDecidesBeforeADoubtAndADoubtBeforeAPass() {
        List<Finding> all = new ArrayList<>();
        assertEquals("none", binding(all));
        on(all, "made.passed", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(10, 10)
                .add();
        assertEquals("made.passed", binding(all));
        on(all, "made.unknown", FindingClass.SAFETY, LimitType.AT_LEAST)
                .cannotTell(List.of("survey.water"))
                .add();
        assertEquals("made.unknown", binding(all));
        on(all, "made.failed", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(9, 10)
                .add();
        on(all, "made.worse", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(5, 10)
                .add();
        assertEquals("made.worse", binding(all));
    }

    @Test
    void aFindingIsFoundByItsCheck() {
        List<Finding> all = new ArrayList<>();
        on(all, "made.first", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(1, 1)
                .add();
        on(all, "made.second", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(2, 1)
                .add();
        OptionResult result = OptionResult.of(Fixtures.candidate(), all);
        assertEquals(Optional.of(all.get(1)), result.finding("made.second"));
        assertTrue(result.finding("made.third").isEmpty());
    }

    /** 3 over a limit of 0 counts as its own whole, 30 over a limit of 10 as twice its limit. */
    @Test
    void overALimitOfNothingTheValueIsTheMeasure() {
        List<Finding> all = new ArrayList<>();
        on(all, "made.far", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(30, 10)
                .add();
        on(all, "made.zero", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(3, 0)
                .add();
        on(all, "made.nothing", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(0, 0)
                .add();
        assertEquals("made.zero", binding(all));
    }

    @Test
    void theVerdictFollowsFromTheDecidingFindings() {
        List<Finding> all = new ArrayList<>();
        on(all, "made.idle", FindingClass.SAFETY, LimitType.AT_LEAST)
                .outcome(Outcome.NOT_APPLICABLE)
                .add();
        assertEquals("none", binding(all));
        assertEquals(Verdict.SUITS, OptionResult.verdictOf(all));
        on(all, "made.advice", FindingClass.ADVICE, LimitType.AT_LEAST)
                .compare(0, 1)
                .add();
        assertEquals(Verdict.SUITS, OptionResult.verdictOf(all));
        on(all, "made.close", FindingClass.SAFETY, LimitType.AT_LEAST)
                .compare(1, 1)
                .outcome(Outcome.TOO_CLOSE)
                .add();
        assertEquals(Verdict.CANNOT_TELL, OptionResult.verdictOf(all));
        on(all, "made.failed", FindingClass.COMPLIANCE, LimitType.AT_LEAST)
                .compare(0, 1)
                .add();
        assertEquals(Verdict.DOES_NOT_SUIT, OptionResult.verdictOf(all));
    }
}
