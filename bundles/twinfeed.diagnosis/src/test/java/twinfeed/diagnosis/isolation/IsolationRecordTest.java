// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.isolation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.NextStep;
import twinfeed.diagnosis.visit.FaultLog;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;

/** The procedure is common practice: supplies off with the cover on, proved dead with the cover off, then touched. */
class IsolationRecordTest {
    private static IsolationRecord record(String... steps) {
        Survey survey = SampleVisits.survey();
        SampleVisits.isolate(survey, steps);
        return IsolationRecord.of(survey.getFaultFinding(), false);
    }

    private static FaultLog log(Survey survey) {
        return new FaultLog(survey, "test.job", "Demonstration engineer", "2026-10-06 09:45");
    }

    @Test
    void theCoverMayComeOffBeforeAnythingMayBeTouched() {
        IsolationRecord first = record(IsolationRecord.COVER_ON.toArray(new String[0]));
        assertTrue(first.coverMayComeOff());
        assertFalse(first.complete());
        assertEquals(IsolationRecord.COVER_OFF, first.open());
        assertFalse(record("showerOff", "breakerLocked").coverMayComeOff());
        assertTrue(record(IsolationRecord.PROCEDURE.toArray(new String[0])).complete());
    }

    @Test
    void ticksOfTheEarlierProcedureDoNotProveDead() {
        IsolationRecord old =
                record("isolatorOpen", "breakerLocked", "testerProved", "provedDead", "testerProvedAgain", "waterShut");
        assertTrue(old.superseded());
        assertTrue(old.begun(), "the unit may be isolated");
        assertFalse(old.complete());
        assertTrue(old.open().containsAll(IsolationRecord.COVER_OFF));
    }

    @Test
    void theOrderCountsButForTheWater() {
        assertFalse(record("isolatorOpen", "breakerLocked").inOrder());
        assertTrue(record("waterShut", "showerOff", "breakerLocked").inOrder());
        Survey survey = SampleVisits.survey();
        FaultLog log = log(survey);
        log.tick("waterShut");
        log.tick("showerOff");
        String message = assertThrows(InputException.class, () -> log.tick("testerProvedBefore"))
                .getMessage();
        assertTrue(message.contains("breakerLocked comes before it"), message);
    }

    @Test
    void aSuspectedIsolatorIsProvedDeadOnItsSupplySideFirst() {
        Survey survey = SampleVisits.survey("isolatorHot");
        FaultLog log = log(survey);
        List.of("showerOff", "breakerLocked", "noticeUp").forEach(log::tick);
        String message = assertThrows(InputException.class, () -> log.tick("isolatorOpen"))
                .getMessage();
        assertTrue(message.contains("isolatorSupplyDead comes before it"), message);
        log.tick("isolatorSupplyDead");
        log.tick("isolatorOpen");
    }

    @Test
    void aTimeIsATime() {
        for (String real : List.of("2026-10-06 09:45", "2026-10-06T09:45:10", "2026-10-06", "09:45")) {
            assertTrue(IsolationTime.isReal(real), real);
        }
        for (String wrong : List.of("Infinity-10-13", "2026-02-30", "25:00", "soon", "")) {
            assertFalse(IsolationTime.isReal(wrong), wrong);
        }
        String message = assertThrows(
                        InputException.class,
                        () -> new FaultLog(SampleVisits.survey(), "test.job", "A", "Infinity-10-13"))
                .getMessage();
        assertTrue(message.contains("Infinity-10-13"), message);
    }

    /** Asks on until nothing more is proposed; every answer is "cannot be told". */
    private static void nothingPoweredIsProposed(Survey survey) {
        for (int i = 0; i < 100; i++) {
            Optional<NextStep> next =
                    Diagnosis.of(SampleVisits.evidence(survey), FaultData.own()).next();
            if (next.isEmpty()) {
                return;
            }
            assertFalse(
                    next.get().observation().powered(), next.get().observation().key());
            SampleVisits.say(survey, next.get().observation().key(), FaultAnswer.UNKNOWN);
        }
    }

    @Test
    void noStepThatWantsPowerIsProposedWhileIsolationIsTicked() {
        Survey survey = SampleVisits.survey("shutsOffAndReturns");
        SampleVisits.isolate(survey, "showerOff");
        nothingPoweredIsProposed(survey);
    }

    @Test
    void noPoweredStepIsProposedOnAUnitThatTripsBeforeItsInsulationWasTested() {
        for (String trips : List.of("rcdTrips", "overcurrentTrips", "breakerTrips")) {
            nothingPoweredIsProposed(SampleVisits.survey(trips, "shutsOffAndReturns"));
        }
    }

    @Test
    void withoutEitherPoweredStepsAreProposed() {
        Survey survey = SampleVisits.survey("shutsOffAndReturns");
        assertTrue(SampleVisits.evidence(survey).mayBePowered());
        assertThrows(AssertionError.class, () -> nothingPoweredIsProposed(survey));
    }
}
