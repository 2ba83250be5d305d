// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Resistance;

/** A leak to earth is convicted by the insulation test; an element that leaks usually reads the right resistance (common practice). */
class InsulationTest {
    private static Survey survey(String insulation, boolean unitDisconnected) {
        Survey survey = SampleVisits.survey("rcdTrips");
        SampleVisits.isolate(survey);
        SampleVisits.elements(survey, 12.8, 14.4);
        ElectricalFeed feed = SurveyFactory.eINSTANCE.createElectricalFeed();
        Circuit circuit = SurveyFactory.eINSTANCE.createCircuit();
        circuit.setInsulationResistance(Resistance.valueOf(insulation));
        circuit.setUnitDisconnected(unitDisconnected);
        feed.setCircuit(circuit);
        survey.setElectricity(feed);
        return survey;
    }

    private static Posterior posterior(Survey survey) {
        return Diagnosis.of(SampleVisits.evidence(survey), FaultData.own()).posterior();
    }

    @Test
    void aLowReadingOutweighsTheRightOhms() {
        Posterior low = posterior(survey("0.02 Mohm", false));
        assertEquals("element-leak", low.first().part(), () -> String.valueOf(low.ranked()));
        assertTrue(low.first().chance() > 0.8, () -> String.valueOf(low.ranked()));
        Posterior high = posterior(survey("200 Mohm", false));
        assertTrue(high.chance("element-leak") < low.chance("element-leak") / 2, () -> String.valueOf(high.ranked()));
    }

    @Test
    void withTheUnitDisconnectedItIsTheCircuit() {
        Posterior posterior = posterior(survey("0.02 Mohm", true));
        assertEquals("terminals", posterior.first().part(), () -> String.valueOf(posterior.ranked()));
    }

    @Test
    void aUnitWithLowInsulationIsNotSwitchedOn() {
        assertFalse(SampleVisits.evidence(survey("0.02 Mohm", false)).mayBePowered());
    }

    /** It is tested from the board in every survey: a sound one is neither a report of a fault nor a look under the cover. */
    @Test
    void soundInsulationAloneIsNoSignOfAFault() {
        for (boolean unitDisconnected : new boolean[] {false, true}) {
            Survey survey = survey("200 Mohm", unitDisconnected);
            survey.getSymptoms().clear();
            survey.setFaultFinding(null);
            Evidence evidence = SampleVisits.evidence(survey);
            assertFalse(evidence.any() || evidence.begun());
            assertFalse(evidence.unsafeReading(FaultData.own()));
        }
        Survey low = survey("0.02 Mohm", false);
        low.getSymptoms().clear();
        low.setFaultFinding(null);
        assertTrue(SampleVisits.evidence(low).any());
    }

    @Test
    void aUnitWithoutElectronicsHasNoBoardToFail() {
        Survey survey = SampleVisits.survey("deadNothing");
        assertTrue(posterior(survey).chance("board") > 0);
        survey.getUnit().getHeater().setElectronics(false);
        assertEquals(0, posterior(survey).chance("board"));
        assertTrue(posterior(survey).ranked().stream()
                .noneMatch(each -> each.part().equals("board")));
    }
}
