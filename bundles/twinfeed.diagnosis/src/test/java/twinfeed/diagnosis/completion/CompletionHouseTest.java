// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import twinfeed.model.job.Completion;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;
import twinfeed.units.Duration;
import twinfeed.units.Resistance;

/** What was measured when the work was finished takes the place of what was surveyed. */
class CompletionHouseTest {
    private final FinishedHouse finished = new FinishedHouse();
    private final ElectricalFeed feed = finished.house.getElectricity();
    private final Circuit circuit = feed.getCircuit();

    @Test
    void newReadingsTakeThePlaceOfTheOldOnes() {
        feed.setExternalLoop(Resistance.valueOf("0.9 ohm"));
        feed.setProspectiveFault(Current.valueOf("9 kA"));
        circuit.setMeasuredLoop(Resistance.valueOf("0.9 ohm"));
        circuit.setUnitDisconnected(true);
        CompletionHouse.enter(finished.measured().completion(), finished.house);
        assertEquals(0.30, feed.getExternalLoop().si());
        assertNull(feed.getElectrode());
        assertEquals(1200, feed.getProspectiveFault().si());
        assertEquals(0.52, circuit.getMeasuredLoop().si());
        assertEquals(0.21, circuit.getMeasuredLine().si());
        assertEquals(50e6, circuit.getInsulationResistance().si());
        assertNull(circuit.getUnitDisconnected());
        assertEquals(0.028, circuit.getRcd().getTripTime().si(), 1e-12);
    }

    /** The loop of the supply and the prospective current stay as surveyed; readings of the old cable say nothing of the new one. */
    @Test
    void readingsOfTheOldCableAreTakenAway() {
        feed.setExternalLoop(Resistance.valueOf("0.3 ohm"));
        feed.setProspectiveFault(Current.valueOf("0.9 kA"));
        circuit.setMeasuredLoop(Resistance.valueOf("0.9 ohm"));
        circuit.setMeasuredLine(Resistance.valueOf("0.5 ohm"));
        circuit.setInsulationResistance(Resistance.valueOf("2 Mohm"));
        circuit.getRcd().setTripTime(Duration.valueOf("40 ms"));
        CompletionHouse.enter(finished.completion(), finished.house);
        assertEquals(0.3, feed.getExternalLoop().si());
        assertEquals(900, feed.getProspectiveFault().si());
        assertNull(circuit.getMeasuredLoop());
        assertNull(circuit.getMeasuredLine());
        assertNull(circuit.getInsulationResistance());
        assertNull(circuit.getRcd().getTripTime());
        circuit.setRcd(null);
        assertDoesNotThrow(() -> CompletionHouse.enter(finished.completion(), finished.house));
    }

    /** With TT the reading at the origin is the earth electrode's. */
    @Test
    void withTtTheElectrodeWasMeasured() {
        feed.setEarthing(Earthing.TT);
        CompletionHouse.enter(finished.enter("externalLoop", "80 ohm").completion(), finished.house);
        assertEquals(80, feed.getElectrode().si());
        assertNull(feed.getExternalLoop());
        feed.setEarthing(Earthing.TN_S);
        feed.setElectrode(null);
        CompletionHouse.enter(finished.completion(), finished.house);
        assertEquals(80, feed.getExternalLoop().si());
        assertNull(feed.getElectrode());
    }

    @Test
    void aHouseWithoutElectricityStaysAsItIs() {
        Survey bare = SurveyFactory.eINSTANCE.createSurvey();
        Completion all = finished.measured().completion();
        assertDoesNotThrow(() -> CompletionHouse.enter(all, bare));
        assertDoesNotThrow(() -> CompletionHouse.enterForLimits(bare));
        feed.setCircuit(null);
        assertDoesNotThrow(() -> CompletionHouse.enter(all, finished.house));
        CompletionHouse.enterForLimits(finished.house);
        assertNotNull(feed.getExternalLoop());
        assertFalse(CompletionHouse.residual(finished.house));
    }

    /** For limits alone: a milliohm and a millisecond where nothing was measured, never in the place of a reading. */
    @Test
    void harmlessValuesStandInForWhatWasNotMeasured() {
        CompletionHouse.enterForLimits(finished.house);
        assertEquals(0.001, feed.getExternalLoop().si());
        assertNull(feed.getElectrode());
        assertEquals(0.001, circuit.getMeasuredLoop().si());
        assertEquals(0.001, circuit.getRcd().getTripTime().si());
        CompletionHouse.enter(finished.measured().completion(), finished.house);
        CompletionHouse.enterForLimits(finished.house);
        assertEquals(0.30, feed.getExternalLoop().si());
        assertEquals(0.52, circuit.getMeasuredLoop().si());
        assertEquals(0.028, circuit.getRcd().getTripTime().si(), 1e-12);
        circuit.setRcd(null);
        assertDoesNotThrow(() -> CompletionHouse.enterForLimits(finished.house));
    }

    @Test
    void harmlessValuesInATtHouse() {
        feed.setEarthing(Earthing.TT);
        CompletionHouse.enterForLimits(finished.house);
        assertEquals(0.001, feed.getElectrode().si());
        assertNull(feed.getExternalLoop());
        feed.setElectrode(Resistance.valueOf("80 ohm"));
        CompletionHouse.enterForLimits(finished.house);
        assertEquals(80, feed.getElectrode().si());
        feed.setEarthing(Earthing.TN_S);
        CompletionHouse.enterForLimits(finished.house);
        assertEquals(0.001, feed.getExternalLoop().si());
    }

    @Test
    void whetherAnRcdProtectsTheShower() {
        assertTrue(CompletionHouse.residual(finished.house));
        circuit.getRcd().setKind(RcdKind.NONE);
        assertFalse(CompletionHouse.residual(finished.house));
        circuit.getRcd().unsetKind();
        assertFalse(CompletionHouse.residual(finished.house));
        circuit.setRcd(null);
        assertFalse(CompletionHouse.residual(finished.house));
        assertFalse(CompletionHouse.residual(SurveyFactory.eINSTANCE.createSurvey()));
    }
}
