// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Works find the parts that they change, and make those that nobody has looked at. */
class CircuitChangesTest {
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    @Test
    void partsAreMadeOnceWhereTheSurveyHasNone() {
        assertSame(CircuitChanges.feed(survey), survey.getElectricity());
        assertSame(CircuitChanges.circuit(survey), survey.getElectricity().getCircuit());
        assertSame(
                CircuitChanges.device(survey),
                survey.getElectricity().getCircuit().getDevice());
        assertSame(
                CircuitChanges.isolator(survey),
                survey.getElectricity().getCircuit().getIsolator());
        assertNotNull(CircuitChanges.isolator(survey));
        assertSame(CircuitChanges.isolator(survey), CircuitChanges.isolator(survey));
        assertNotNull(CircuitChanges.device(survey));
        assertSame(CircuitChanges.device(survey), CircuitChanges.device(survey));
    }
}
