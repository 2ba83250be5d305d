// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
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

    @Test
    void checksThatAreTooCloseToCallShareASentence() {
        survey.getElectricity().getCircuit().getSegments().clear();
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        for (String title : List.of("Running pressure", "Scalding when a tap is opened")) {
            Finding finding = AssessmentFactory.eINSTANCE.createFinding();
            finding.setTitle(title);
            finding.setOutcome(Outcome.TOO_CLOSE);
            option.getFindings().add(finding);
        }
        assertEquals(
                List.of("Too close to call with the readings we have: Running pressure, Scalding when a tap is opened"),
                reasons.of(option));
    }
}
