// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.Kind;

/** What is kept of a finding. */
class CheckMarginTest {
    private static final Check CHECK = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_MOST, Kind.RATIO);

    private static CheckMargin kept(UnaryOperator<FindingBuilder> said) {
        List<Finding> findings = new ArrayList<>();
        said.apply(new FindingBuilder("made", CHECK, findings::add)).add();
        return CheckMargin.of(findings.get(0));
    }

    @Test
    void aMarginPassesOrFails() {
        assertEquals(new CheckMargin("made.up", true, 0.5), kept(finding -> finding.compare(1, 1.5)));
        assertEquals(new CheckMargin("made.up", false, -0.5), kept(finding -> finding.compare(2, 1.5)));
    }

    @Test
    void whatDoesNotApplyPassesAndWhatCannotBeToldDoesNot() {
        assertEquals(
                new CheckMargin("made.up", true, Double.NaN), kept(finding -> finding.outcome(Outcome.NOT_APPLICABLE)));
        assertEquals(new CheckMargin("made.up", true, Double.NaN), kept(finding -> finding.outcome(Outcome.PASSES)));
        assertEquals(
                new CheckMargin("made.up", false, Double.NaN),
                kept(finding -> finding.cannotTell(List.of("survey.water"))));
    }
}
