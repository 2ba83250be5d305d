// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.formula.Step;
import twinfeed.model.survey.Survey;

/** What open taps do to the unit, in whatever order and with whatever pipes they are listed. */
class OpenTapsTest {
    private static Finding finding(Survey survey, String check) {
        return Houses.finding(survey, Samples.heater(), check);
    }

    private static void workingEndsInTheFigure(Finding finding) {
        List<Step> steps = finding.working().steps();
        double value = Fixtures.value(finding);
        assertEquals(value, steps.get(steps.size() - 1).value(), 1e-8 * Math.abs(value));
    }

    /** The same taps are open whichever of them is listed first. */
    @ParameterizedTest
    @ValueSource(strings = {"pressure.switch", "pressure.activation", "pressure.throttle", "pressure.scald"})
    void theOrderOfTheTapsDoesNotMatter(String check) {
        Survey survey = Samples.survey();
        double listed = Fixtures.value(finding(survey, check));
        survey.getWater().getDrawOffs().move(0, 1);
        Finding reversed = finding(survey, check);
        assertEquals(listed, Fixtures.value(reversed), 1e-8 * Math.abs(listed));
        workingEndsInTheFigure(reversed);
    }

    /** Of a tap of which only its height is known, the height alone is lost on the way to it. */
    @ParameterizedTest
    @ValueSource(strings = {"pressure.switch", "pressure.throttle", "pressure.scald", "pressure.dropOut"})
    void aTapMayHaveAHeightAndNoPipe(String check) {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().forEach(tap -> tap.getSegments().clear());
        workingEndsInTheFigure(finding(survey, check));
    }
}
