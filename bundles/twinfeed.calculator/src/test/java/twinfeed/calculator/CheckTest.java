// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

class CheckTest {
    private static final Check CHECK =
            Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.FLOW, "survey.water.test.flow");

    @Test
    void checksAreNamedByWhatTheyCompare() {
        assertEquals(
                new Check(
                        "made.up",
                        FindingClass.SAFETY,
                        LimitType.AT_LEAST,
                        DisplayUnit.of(Kind.FLOW),
                        List.of("survey.water.test.flow"),
                        CheckTopic.OTHER),
                CHECK);
        assertEquals(CheckTopic.SCALDING, CHECK.about(CheckTopic.SCALDING).topic());
        Check words = Check.inWords("made.words", FindingClass.COMPLIANCE, "heater.power");
        assertEquals(LimitType.REPORT, words.limitType());
        assertEquals(Kind.RATIO, words.unit().kind());
        Check report = Check.report("made.report", Kind.POWER, "heater.power");
        assertEquals(FindingClass.ADVICE, report.kind());
        assertEquals(List.of("heater.power"), report.needs());
        for (FindingClass kind : FindingClass.values()) {
            boolean decides = kind != FindingClass.ADVICE && kind != FindingClass.PERFORMANCE;
            assertEquals(decides, Check.inWords("made.words", kind).deciding(), kind.getName());
        }
    }

    /** At a limit of 0 the unit in which a check is printed sets how much counts as nothing: 1e-12 L/min are 1e-12 / 60000 m3/s. */
    @Test
    void whatIsNothingGoesByThePrintedUnit() {
        assertEquals(0, CHECK.margin(-1e-17, 0));
        assertEquals(-1e-16, CHECK.margin(-1e-16, 0));
    }
}
