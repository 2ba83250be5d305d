// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.texts.StandingTexts;

class ContingencyReasonsTest {
    private final Survey survey = Samples.survey(Confidence.CONCEALED);
    private final ContingencyReasons reasons = new ContingencyReasons(survey, StandingTexts.of(Locale.ENGLISH));

    private List<String> reasons() {
        return reasons.of(Samples.option("h75", "Heater", 7.5, Verdict.SUITS));
    }

    @Test
    void aHiddenRouteIsNamedWithTheMethodByWhichItIsTaken() {
        assertEquals(1, reasons().size());
        assertTrue(reasons().get(0).contains("board to shower"), reasons().get(0));
        assertTrue(reasons().get(0).contains("method C"), reasons().get(0));
    }

    /** The missing reading of its check says so already. */
    @Test
    void aHiddenRouteWhoseMethodNobodyStatedIsNotTakenAsAny() {
        survey.getElectricity().getCircuit().getSegments().get(0).setMethod(null);
        assertEquals(List.of(), reasons());
    }
}
