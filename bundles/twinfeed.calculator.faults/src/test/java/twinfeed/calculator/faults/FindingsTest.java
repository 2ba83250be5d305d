// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.formula.Step;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.Phrase;

/** What the findings of a visit say, and what they lack where it is only half done. */
class FindingsTest {
    private static double number(Finding finding, String argument) {
        return ((Number) finding.arguments().get(argument)).doubleValue();
    }

    @Test
    void nobodyHasBegun() {
        assertEquals(
                Outcome.NOT_APPLICABLE,
                Showers.finding(SampleVisits.survey(), "faults.likely").outcome());
    }

    /** The customer does not know, and nothing was measured. */
    @Test
    void anAnswerUnknownIsNoEvidence() {
        Survey survey = SampleVisits.survey();
        SampleVisits.say(survey, "halfHeatSlowestSetting", FaultAnswer.UNKNOWN);
        Finding likely = Showers.finding(survey, "faults.likely");
        assertEquals(Outcome.CANNOT_TELL, likely.outcome());
        assertEquals(List.of("survey.symptoms"), likely.missing());
    }

    @Test
    void oneSoundElementOfTwoSaysNothingYet() {
        Survey survey = SampleVisits.survey();
        SampleVisits.isolate(survey);
        SampleVisits.elements(survey, 12.8);
        Finding elements = Showers.finding(survey, "faults.elements");
        assertEquals(Outcome.CANNOT_TELL, elements.outcome());
        assertEquals(List.of("survey.faultFinding.elements"), elements.missing());
    }

    /** Of 8.5 kW an open element of 4 kW leaves 4.5, 53 %; one of 25 ohm where 14.4 were right is not open, and leaves more. */
    @Test
    void anOpenElementIsToldFromAWeakOne() {
        Survey open = SampleVisits.survey();
        SampleVisits.elements(open, 12.8, -1);
        Finding lost = Showers.finding(open, "faults.elements");
        assertEquals("open", lost.variant());
        assertEquals(4.5 / 8.5 * 100, number(lost, "share"), 1e-9);
        Survey weak = SampleVisits.survey();
        SampleVisits.elements(weak, 12.8, 25);
        Finding weaker = Showers.finding(weak, "faults.elements");
        assertEquals(Outcome.FAILS, weaker.outcome());
        assertEquals("", weaker.variant());
        assertEquals((4500 + 240 * 240 / 25.0) / 8500 * 100, number(weaker, "share"), 1e-9);
    }

    @Test
    void allElementsOpenHaveAWorkingOfOneLine() {
        Survey survey = SampleVisits.survey();
        SampleVisits.elements(survey, -1, -1);
        Finding none = Showers.finding(survey, "faults.elements");
        List<Step> steps = none.working().steps();
        assertEquals("P", steps.get(0).symbol());
        assertEquals(0, steps.get(0).value());
        assertEquals(0, number(none, "flow"));
    }

    /** What can be seen with the cover on is asked first; who answers no to all of that is told to isolate before the cover comes off. */
    @Test
    void theNextQuestionSaysWhetherTheCoverComesOff() {
        Survey survey = SampleVisits.survey("halfHeatSlowestSetting");
        Phrase next = next(survey);
        assertEquals("next.safe", next.key());
        for (int asked = 0; asked < 40 && next.key().equals("next.safe"); asked++) {
            String question = ((Phrase) next.arguments().get("question")).key();
            SampleVisits.say(survey, question.substring("question.".length()), FaultAnswer.NO);
            next = next(survey);
        }
        assertEquals("next.cover", next.key());
    }

    private static Phrase next(Survey survey) {
        return (Phrase) Showers.finding(survey, "faults.likely").arguments().get("next");
    }
}
