// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.SampleHouse;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.Survey;
import twinfeed.units.Duration;
import twinfeed.units.Flow;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;

/** Readings become answers, each at its limit. */
class EvidenceTest {
    private final Survey survey = SampleVisits.survey();
    private final FaultFinding finding = SampleVisits.record(survey);

    private String answer(String key) {
        return SampleVisits.evidence(survey).answers().stream()
                .filter(each -> each.key().equals(key))
                .map(each -> (each.yes() ? "yes " : "no ") + each.origin())
                .findFirst()
                .orElse("none");
    }

    /** 1.3 times the flow of the hottest setting is enough of a difference. */
    @Test
    void theBucketTest() {
        finding.setFlowHottest(Flow.ofSi(1));
        assertEquals("none", answer("littleFlowDifference"));
        finding.setFlowColdest(Flow.ofSi(1.3));
        assertEquals("no READING", answer("littleFlowDifference"));
        finding.setFlowColdest(Flow.ofSi(1.29));
        assertEquals("yes READING", answer("littleFlowDifference"));
        finding.setFlowHottest(null);
        assertEquals("none", answer("littleFlowDifference"));
    }

    @Test
    void theRunningPressure() {
        finding.setRunningPressure(Pressure.valueOf("0.7 bar"));
        assertEquals("no READING", answer("runningPressureLow"));
        finding.setRunningPressure(Pressure.valueOf("0.69 bar"));
        assertEquals("yes READING", answer("runningPressureLow"));
        survey.getUnit().getHeater().setMinimumRunningPressure(null);
        assertEquals("none", answer("runningPressureLow"));
    }

    /** A warm coil lets go after 30 s to 15 min. */
    @Test
    void theTimeUntilItShutsOff() {
        for (String each : List.of("30 s", "900 s")) {
            finding.setShutOffTime(Duration.valueOf(each));
            assertEquals("yes READING", answer("shutsOffAndReturns"), each);
        }
        for (String each : List.of("29 s", "901 s")) {
            finding.setShutOffTime(Duration.valueOf(each));
            assertEquals("no READING", answer("shutsOffAndReturns"), each);
        }
    }

    @Test
    void continuityOfCutOutAndSwitch() {
        finding.setCutOutCloses(true);
        finding.setSwitchCloses(false);
        assertEquals("no READING", answer("cutOutOpen"));
        assertEquals("yes READING", answer("switchOpen"));
    }

    /** A reading overrules what was said. */
    @Test
    void elementsAndCoil() {
        SampleVisits.say(survey, "elementOpen", FaultAnswer.YES);
        assertEquals("yes SAID", answer("elementOpen"));
        SampleVisits.elements(survey, 12.8);
        assertEquals("yes SAID", answer("elementOpen"), "one of two says nothing of both");
        SampleVisits.elements(survey, 14.4);
        assertEquals("no READING", answer("elementOpen"));
        finding.setCoil(Resistance.valueOf("3900 ohm"));
        assertEquals("no READING", answer("coilOutOfBand"));
        finding.setCoil(Resistance.valueOf("300 ohm"));
        assertEquals("yes READING", answer("coilOutOfBand"));
    }

    /** 1 Mohm is enough; below, the unit is not switched on (BS 7671 Table 64, from memory). */
    @Test
    void theInsulation() {
        survey.setElectricity(SampleHouse.wired().getElectricity());
        assertEquals("none", answer("insulationLow"));
        survey.getElectricity().getCircuit().setInsulationResistance(Resistance.valueOf("1 Mohm"));
        assertEquals("no READING", answer("insulationLow"));
        survey.getElectricity().getCircuit().setInsulationResistance(Resistance.valueOf("0.99 Mohm"));
        assertEquals("yes READING", answer("insulationLow"));
        survey.getElectricity().getCircuit().setUnitDisconnected(true);
        assertEquals("none", answer("insulationLow"));
        assertEquals("yes READING", answer("circuitInsulationLow"));
        assertFalse(SampleVisits.evidence(survey).mayBePowered());
    }

    @Test
    void aVisitHasBegunWithTheFirstQuestion() {
        assertFalse(SampleVisits.evidence(survey).begun());
        SampleVisits.say(survey, "kettling", FaultAnswer.UNKNOWN);
        assertTrue(SampleVisits.evidence(survey).begun());
        assertFalse(SampleVisits.evidence(survey).any());
        survey.getSymptoms().get(0).setKey("singsAtNight");
        assertTrue(SampleVisits.evidence(survey).begun(), "something was reported, though nobody knows it");
        survey.getSymptoms().get(0).setKey(null);
        assertFalse(SampleVisits.evidence(survey).begun());
    }

    @Test
    void whatWasFoundUnderTheCover() {
        SampleVisits.say(survey, "kettling", FaultAnswer.YES);
        assertEquals(List.of(), SampleVisits.evidence(survey).underCover(FaultData.own()));
        assertFalse(SampleVisits.evidence(survey).unsafeReading(FaultData.own()));
        finding.setCutOutCloses(true);
        assertEquals(List.of("cutOutOpen"), SampleVisits.evidence(survey).underCover(FaultData.own()));
        assertTrue(SampleVisits.evidence(survey).unsafeReading(FaultData.own()));
        SampleVisits.isolate(survey);
        assertFalse(SampleVisits.evidence(survey).unsafeReading(FaultData.own()));
    }
}
