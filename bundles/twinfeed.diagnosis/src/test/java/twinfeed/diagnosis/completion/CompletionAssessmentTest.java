// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.ExpectedText;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.SurveyFactory;

/** The readings when the work is finished, against limits worked out by hand; the expected texts were read line by line. */
class CompletionAssessmentTest {
    private final FinishedHouse finished = new FinishedHouse();

    private void same(String name) throws IOException {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            ExpectedText.same(
                    CompletionAssessmentTest.class, name + "_" + locale.getLanguage() + ".txt", finished.text(locale));
        }
    }

    private void judgedBy(CheckTopic topic, Outcome outcome, double value, double limit, double margin, String unit) {
        FinishedHouse.found(finished.judged, topic, outcome, value, limit, margin, unit);
    }

    private Boolean sound(String key, String value) {
        return finished.enter(key, value).reading(key).sound();
    }

    /**
     * 8.5 kW at 240 V; the fall to 232 V leaves 7943 W, and with 10 % less and 5 % more by the appliance's tolerance (EN 60335-1, from
     * memory) and 10 % for the bucket 6.4 to 9.2 kW; 3.6 L/min from 10 to 41 °C carry 7.7 kW.
     */
    @Test
    void everyReadingIsSound() throws IOException {
        finished.measured();
        judgedBy(CheckTopic.EARTH_PATH, Outcome.PASSES, 0.01, 0.05, 0.04, "Ω");
        judgedBy(CheckTopic.EXTERNAL_LOOP, Outcome.PASSES, 0.3, 0.8, 0.5, "Ω");
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.PASSES, 0.52, 0.874, 0.354, "Ω");
        judgedBy(CheckTopic.FAULT_LEVEL, Outcome.PASSES, 1.2, 16, 14.8, "kA");
        judgedBy(CheckTopic.RESIDUAL_TRIP_TIME, Outcome.PASSES, 28, 300, 272, "ms");
        same("sound-house");
        assertTrue(finished.sheet().complete());
        assertEquals("complete", finished.sheet().state());
    }

    /** The limits are those for readings that were not taken; of the earth path nothing can be said without its readings. */
    @Test
    void nothingWasMeasuredYet() throws IOException {
        FinishedHouse.found(finished.limits, CheckTopic.EXTERNAL_LOOP, Outcome.PASSES, 0.001, 0.8, 0.8, "Ω");
        FinishedHouse.found(finished.limits, CheckTopic.LOOP_IMPEDANCE, Outcome.PASSES, 0.001, 0.874, 0.87, "Ω");
        FinishedHouse.found(finished.limits, CheckTopic.FAULT_LEVEL, Outcome.NOT_CHECKED, 0, 6.0, 6, "kA");
        FinishedHouse.found(finished.limits, CheckTopic.RESIDUAL_TRIP_TIME, Outcome.PASSES, 1, 300.0, 299, "ms");
        FinishedHouse.found(finished.limits, CheckTopic.EARTH_PATH, Outcome.PASSES, 0, 0.05, 0.05, "Ω");
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.PASSES, 0.9, 1.1, 0.2, "Ω");
        same("nothing-measured");
        assertEquals("open", finished.sheet().state());
        assertFalse(finished.sheet().complete());
        assertTrue(finished.sheet().wrong().isEmpty());
        assertEquals(16, finished.sheet().open().size(), "R1+R2 and the elements alone are not needed");
    }

    /** A TT house of a frail customer in which everything is wrong, and a breaker that nobody changed. */
    @Test
    void everyReadingIsWrong() throws IOException {
        finished.enter("cpcContinuous", "false").enter("line", "0.80 ohm").enter("bonding", "0.06 ohm");
        finished.enter("insulation", "0.4 Mohm").enter("elements", "12.8 ohm");
        finished.enter("polaritySupply", "false").enter("polarity", "false");
        finished.enter("externalLoop", "250 ohm").enter("loop", "260 ohm").enter("prospectiveFault", "7 kA");
        finished.enter("residualTime", "400 ms")
                .enter("residualButton", "false")
                .enter("loadedVoltage", "200 V");
        finished.enter("runningPressure", "0.6 bar").enter("flow", "9 L/min").enter("intake", "10 °C");
        finished.enter("outlet", "43 °C").enter("tight", "false").enter("shutsDown", "false");
        finished.house.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
        finished.house.getCustomer().setVulnerable(true);
        judgedBy(CheckTopic.EARTH_PATH, Outcome.FAILS, 0.45, 0.05, -0.4, "Ω");
        judgedBy(CheckTopic.ELECTRODE, Outcome.FAILS, 250, 200, -50, "Ω");
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.NOT_APPLICABLE, 0, 0, 0, "Ω");
        judgedBy(CheckTopic.FAULT_LEVEL, Outcome.FAILS, 7, 6, -1, "kA");
        judgedBy(CheckTopic.RESIDUAL_TRIP_TIME, Outcome.FAILS, 400, 300, -100, "ms");
        judgedBy(CheckTopic.INSULATION, Outcome.FAILS, 0.4, 1, -0.6, "MΩ");
        judgedBy(CheckTopic.OTHER, Outcome.FAILS, 50, 40, -10, "A");
        finished.judged.getFindings().get(6).setKey("circuit.device");
        judgedBy(CheckTopic.ISOLATOR_RATING, Outcome.FAILS, 50, 40, -10, "A");
        finished.judged.getFindings().get(7).setKind(FindingClass.ADVICE);
        same("everything-wrong");
        CompletionSheet sheet = finished.sheet();
        assertEquals("unsafe", sheet.state());
        assertFalse(sheet.complete());
        assertEquals(
                List.of("elements", "loadedVoltage", "runningPressure", "flow"),
                sheet.wrong().stream()
                        .filter(each -> !sheet.unsafe().contains(each))
                        .map(CompletionReading::key)
                        .toList());
        assertTrue(sheet.open().isEmpty());
    }

    /** A house without an RCD, without metal services, a heater of which little is known. */
    @Test
    void whatIsNotNeeded() throws IOException {
        finished.house.getElectricity().setMetalServices(false);
        finished.house.getElectricity().getCircuit().getRcd().setKind(RcdKind.NONE);
        finished.heater.setVoltage(null);
        finished.heater.setMinimumRunningPressure(null);
        finished.enter("elements", "6.8 ohm").enter("flow", "3.6 L/min").enter("runningPressure", "1 bar");
        finished.enter("loop", "0.5 ohm").enter("externalLoop", "0.3 ohm");
        same("little-known");
        finished.heater.setVoltage(twinfeed.units.Voltage.valueOf("240 V"));
        finished.heater.setPower(null);
        same("little-known");
        finished.house.getElectricity().setCircuit(null);
        assertFalse(finished.reading("residualButton").needed());
        finished.house.setElectricity(null);
        assertFalse(finished.reading("residualButton").needed());
        assertTrue(finished.reading("bonding").needed());
    }

    /** 0.05 ohm of main bonding and 1 Mohm of insulation are themselves still right (guidance of the trade; BS 7671, from memory). */
    @Test
    void aReadingAtItsLimitIsSound() {
        assertEquals(true, sound("bonding", "0.05 ohm"));
        assertEquals(false, sound("bonding", "0.0501 ohm"));
        assertEquals(true, sound("insulation", "1 Mohm"));
        assertEquals(false, sound("insulation", "0.999 Mohm"));
        assertEquals(true, sound("runningPressure", "0.7 bar"));
        assertEquals(false, sound("runningPressure", "0.69 bar"));
        assertEquals(true, sound("outlet", "44 °C"));
        assertEquals(false, sound("outlet", "44.1 °C"));
        finished.house.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
        assertEquals(true, sound("outlet", "44 °C"));
        finished.house.getCustomer().setVulnerable(true);
        assertEquals(true, sound("outlet", "41 °C"));
        assertEquals(false, sound("outlet", "41.1 °C"));
    }

    /** 230 V less 6 % at the origin (216.2 V) and 5 % of 230 V in the house (11.5 V): 204.7 V; 10 % more: 253 V. */
    @Test
    void theVoltageAtTheUnit() {
        assertEquals(true, sound("loadedVoltage", "204.8 V"));
        assertEquals(false, sound("loadedVoltage", "204.6 V"));
        assertEquals(true, sound("loadedVoltage", "253 V"));
        assertEquals(false, sound("loadedVoltage", "253.1 V"));
    }

    /** 8.5 kW at 240 V: 6.88 to 9.82 kW of heat. At 40 °C a litre has 4.15 kJ/K; so from 10 °C 3.31 and 4.73 L/min. */
    @Test
    void theHeatInTheWater() {
        finished.enter("intake", "10 °C").enter("outlet", "40 °C");
        assertEquals(false, sound("flow", "3.25 L/min"));
        assertEquals(true, sound("flow", "3.4 L/min"));
        assertEquals(true, sound("flow", "4.65 L/min"));
        assertEquals(false, sound("flow", "4.8 L/min"));
    }

    /** At 216 V the unit gives 81 % of its power: what is enough there is too little at 240 V. */
    @Test
    void theHeatFollowsTheVoltageAtTheUnit() {
        finished.enter("intake", "10 °C").enter("outlet", "40 °C").enter("loadedVoltage", "216 V");
        assertEquals(true, sound("flow", "2.8 L/min"));
        assertEquals(false, sound("flow", "4.0 L/min"));
    }

    @Test
    void withoutATemperatureTheHeatIsNotJudged() {
        finished.enter("flow", "3.6 L/min").enter("outlet", "40 °C");
        assertNull(finished.reading("flow").sound());
        assertEquals("3.6 L/min", finished.reading("flow").value());
        finished.enter("intake", "45 °C");
        assertNull(finished.reading("flow").sound(), "the water got colder");
    }

    /** One figure is enough to tell which way a limit goes: a value above it with a margin has to be at least the limit. */
    @Test
    void aLimitThatMayNotBeUndercutIsALeastValue() {
        finished.enter("prospectiveFault", "1.2 kA");
        judgedBy(CheckTopic.FAULT_LEVEL, Outcome.PASSES, 1.2, 0.5, 0.7, "kA");
        assertEquals("at least 0.50 kA", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setLimit(10.0);
        finished.judged.getFindings().get(0).setMargin(-8.8);
        assertEquals("at least 10.0 kA", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setLimit(100.0);
        finished.judged.getFindings().get(0).setMargin(98.8);
        assertEquals("at most 100 kA", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setValue(100.0);
        finished.judged.getFindings().get(0).setMargin(0.0);
        assertEquals("at most 100 kA", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setMargin(null);
        assertEquals("", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setMargin(1.0);
        finished.judged.getFindings().get(0).setValue(null);
        assertEquals("", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setLimit(null);
        assertEquals("", finished.reading("prospectiveFault").expected());
    }

    /** What is printed is never laxer than what is judged: 0.876 ohm at most prints 0.87, 0.501 kA at least 0.51. */
    @Test
    void aPrintedLimitIsRoundedToTheSafeSide() {
        finished.enter("loop", "0.5 ohm").enter("prospectiveFault", "1.2 kA");
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.PASSES, 0.5, 0.876, 0.376, "Ω");
        judgedBy(CheckTopic.FAULT_LEVEL, Outcome.PASSES, 1.2, 0.501, 0.699, "kA");
        assertEquals("at most 0.87 Ω", finished.reading("loop").expected());
        assertEquals("at least 0.51 kA", finished.reading("prospectiveFault").expected());
        finished.judged.getFindings().get(0).setLimit(0.1 + 0.7);
        finished.judged.getFindings().get(1).setLimit(0.1 + 0.2);
        assertEquals("at most 0.80 Ω", finished.reading("loop").expected(), "0.7999999999999999 is 0.8");
        assertEquals("at least 0.30 kA", finished.reading("prospectiveFault").expected(), "0.30000000000000004 is 0.3");
    }

    /** 50 V over 30 mA are 1,666 ohm (BS 7671 411.5.3, from memory): a supply whose earth is lost stays under that too. */
    @Test
    void aLoopThatOnlyTheRcdDisconnectsHasToBeExplained() {
        finished.enter("loop", "300 ohm");
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.PASSES, 300, 1666.7, 1366.7, "Ω");
        assertNull(finished.reading("loop").sound(), "nothing to compare with");
        assertEquals(
                "what Ze and R1+R2 account for; the RCD disconnects",
                finished.reading("loop").expected());
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.FAILS, 300, 0.699, -299.3, "Ω");
        finished.judged.getFindings().get(1).setKind(FindingClass.ADVICE);
        judgedBy(CheckTopic.EARTH_PATH, Outcome.FAILS, 299, 0.25, -298.75, "Ω");
        assertTrue(finished.reading("loop").wrong());
        assertTrue(finished.reading("loop").safety());
        assertEquals(
                "at most 0.69 Ω for breaker or fuse alone; with the RCD more, if Ze and R1+R2 account for it",
                finished.reading("loop").expected());
        finished.judged.getFindings().get(2).setOutcome(Outcome.PASSES);
        assertEquals(true, finished.reading("loop").sound());
    }

    /** A failed check that a reading has answered is not listed twice. */
    @Test
    void aFailedCheckStandsOnce() {
        judgedBy(CheckTopic.LOOP_IMPEDANCE, Outcome.FAILS, 2, 0.874, -1.126, "Ω");
        assertTrue(finished.readings(Locale.ENGLISH).stream()
                .anyMatch(each -> each.key().equals("check.LOOP_IMPEDANCE")));
        finished.enter("loop", "2 ohm");
        assertTrue(finished.readings(Locale.ENGLISH).stream()
                .noneMatch(each -> each.key().equals("check.LOOP_IMPEDANCE")));
        assertTrue(finished.reading("loop").wrong());
        judgedBy(CheckTopic.INSULATION, Outcome.FAILS, 0.4, 1, -0.6, "MΩ");
        assertTrue(finished.reading("check.INSULATION").wrong());
    }

    @Test
    void wrongButSafe() {
        finished.measured().enter("elements", "12.8 ohm");
        assertEquals("wrong", finished.sheet().state());
        assertTrue(finished.sheet().unsafe().isEmpty());
        assertEquals(1, finished.sheet().wrong().size());
        assertFalse(finished.sheet().complete());
    }
}
