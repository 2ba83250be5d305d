// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Step;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.diagnosis.reading.ElementAssessment;
import twinfeed.diagnosis.reading.ResistanceBand;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Duration;
import twinfeed.units.Flow;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;

class ReadingsTest {
    private static ElementAssessment judged(double... ohms) {
        Survey survey = SampleVisits.survey();
        SampleVisits.elements(survey, ohms);
        return SampleVisits.evidence(survey).elements();
    }

    /** Two healthy elements measured at 13.1 and 13.6 ohm: 6.673 ohm together, 8.632 kW at 240 V (closed form). */
    @Test
    void aPublishedPairOfSoundElements() {
        Survey survey = SampleVisits.survey();
        Heater heater = survey.getUnit().getHeater();
        heater.getElements().get(0).setPower(Power.valueOf("4.5 kW"));
        heater.getElements().get(1).setPower(Power.valueOf("4.25 kW"));
        SampleVisits.elements(survey, 13.1, 13.6);
        ElementAssessment elements = SampleVisits.evidence(survey).elements();
        assertEquals(8632, elements.powerW(), 0.5);
        assertTrue(elements.sound());
    }

    /** 4.5 kW at 240 V is 12.8 ohm (Ohm's law). */
    @Test
    void anOpenElementLeavesHalf() {
        ElementAssessment elements = judged(12.8, -1);
        assertTrue(elements.faulty());
        assertEquals(1, elements.openCount());
        assertEquals(4500, elements.powerW(), 1e-9);
    }

    /** The band is 0.952..1.111 of Ur^2/Pr (+5/-10 % of the power, from memory), widened by 2 % and 0.2 ohm of the meter. */
    @Test
    void theBandOfAnElement() {
        ResistanceBand band = judged(12.8, 14.4).states().get(0).band();
        assertEquals(12.8, band.ratedOhm(), 1e-12);
        assertEquals(12.8 / 1.05 - 0.456, band.leastOhm(), 1e-12);
        assertEquals(12.8 / 0.9 + 0.456, band.mostOhm(), 1e-12);
    }

    @Test
    void aStatedToleranceOfTheMeterCounts() {
        Survey survey = SampleVisits.survey();
        SampleVisits.elements(survey, 12.8);
        SampleVisits.record(survey).getElements().get(0).setResistance(Resistance.valueOf("15.0 ohm ± 1 ohm"));
        assertTrue(SampleVisits.evidence(survey).elements().states().get(0).sound());
        SampleVisits.record(survey).getElements().get(0).setResistance(Resistance.valueOf("15.0 ohm ± 0.1 ohm"));
        assertTrue(SampleVisits.evidence(survey).elements().faulty());
    }

    @Test
    void oneSoundReadingOfTwoSaysNothingOfTheOther() {
        ElementAssessment elements = judged(12.8);
        assertFalse(elements.sound());
        assertFalse(elements.faulty());
    }

    @Test
    void theFindingTellsWhatIsLeft() {
        Survey survey = SampleVisits.survey("halfHeatSlowestSetting");
        SampleVisits.isolate(survey);
        SampleVisits.elements(survey, 12.8, -1);
        Finding finding = Showers.finding(survey, "faults.elements");
        assertEquals(Outcome.FAILS, finding.outcome());
        assertEquals(4.5, finding.printed().value(), 1e-12);
        List<Step> steps = finding.working().steps();
        assertEquals(4.5, steps.get(steps.size() - 1).value(), 1e-12);
        double limit = steps.stream()
                .filter(step -> step.symbol().equals(LimitType.SYMBOL))
                .findFirst()
                .orElseThrow()
                .value();
        assertEquals(finding.printed().limit(), limit, 1e-12);
        double flow = ((Number) finding.arguments().get("flow")).doubleValue();
        double full = ((Number) finding.arguments().get("fullFlow")).doubleValue();
        assertEquals(4.5 / 8.5, flow / full, 1e-9);
        // 8.5 kW from 5 to 40 degC: 8.5 / (167.7118 - 21.2176) kg/s by IAPWS-IF97, 992.27 kg/m3 at 40 degC.
        assertEquals(8.5 / (167.7118 - 21.2176) / 992.2674 * 60_000, full, 0.01);
    }

    @Test
    void allElementsOpenGiveNoPower() {
        Survey survey = SampleVisits.survey();
        SampleVisits.elements(survey, -1, -1);
        assertEquals(0, Showers.finding(survey, "faults.elements").printed().value());
    }

    @Test
    void coils() {
        Survey survey = SampleVisits.survey();
        SampleVisits.record(survey).setCoil(Resistance.valueOf("3600 ohm"));
        assertEquals(Outcome.PASSES, Showers.finding(survey, "faults.coil").outcome());
        SampleVisits.record(survey).setCoil(Resistance.valueOf("1900 ohm"));
        assertEquals(Outcome.FAILS, Showers.finding(survey, "faults.coil").outcome());
        SampleVisits.record(survey).setCoilOpen(true);
        Finding open = Showers.finding(survey, "faults.coil");
        assertEquals(Outcome.FAILS, open.outcome());
        assertEquals("open", open.variant());
    }

    @Test
    void aCoilWithoutARatingCannotBeJudged() {
        Survey survey = SampleVisits.survey();
        survey.getUnit().getHeater().setCoilResistance(null);
        SampleVisits.record(survey).setCoil(Resistance.valueOf("3600 ohm"));
        assertEquals(Outcome.CANNOT_TELL, Showers.finding(survey, "faults.coil").outcome());
    }

    @Test
    void readingsBecomeAnswers() {
        Survey survey = SampleVisits.survey();
        SampleVisits.record(survey).setFlowHottest(Flow.valueOf("4 L/min"));
        SampleVisits.record(survey).setFlowColdest(Flow.valueOf("4.8 L/min"));
        SampleVisits.record(survey).setRunningPressure(Pressure.valueOf("0.5 bar"));
        SampleVisits.record(survey).setShutOffTime(Duration.valueOf("130 s"));
        SampleVisits.record(survey).setCutOutCloses(false);
        SampleVisits.record(survey).setSwitchCloses(true);
        assertEquals(
                List.of(
                        "shutsOffAndReturns true",
                        "littleFlowDifference true",
                        "runningPressureLow true",
                        "cutOutOpen true",
                        "switchOpen false"),
                SampleVisits.evidence(survey).answers().stream()
                        .map(each -> each.key() + " " + each.yes())
                        .toList());
    }

    @Test
    void aReadingUnderTheCoverWithoutIsolationIsReported() {
        Survey survey = SampleVisits.survey("halfHeatSlowestSetting");
        SampleVisits.elements(survey, 12.8, 14.4);
        Finding finding = Showers.finding(survey, "faults.isolation");
        assertEquals(Outcome.CANNOT_TELL, finding.outcome());
        for (var said : Map.of(Locale.ENGLISH, "prove the tester again", Locale.GERMAN, "Spannungsprüfer erneut")
                .entrySet()) {
            String sentence = FaultsCalculator.TEXTS.format(
                    said.getKey(), "check.faults.isolation.cannotTell", finding.arguments());
            assertTrue(sentence.contains(said.getValue()), sentence);
        }
        SampleVisits.isolate(survey);
        assertEquals(Outcome.PASSES, Showers.finding(survey, "faults.isolation").outcome());
    }

    @Test
    void aLookUnderTheCoverCountsToo() {
        Survey survey = SampleVisits.survey("terminalsBurnt");
        assertEquals(
                Outcome.CANNOT_TELL, Showers.finding(survey, "faults.isolation").outcome());
    }

    @Test
    void aTickWithoutAPersonOrATimeIsNone() {
        Survey survey = SampleVisits.survey();
        SampleVisits.isolate(survey);
        survey.getFaultFinding().getIsolation().get(3).setAt("Infinity-10-13");
        assertEquals(
                List.of("isolatorOpen"),
                IsolationRecord.of(survey.getFaultFinding(), false).open());
    }

    @Test
    void theMarginAtTheSwitchCounts() {
        Survey survey = SampleVisits.survey("goesColdWhenTapOpens");
        assertEquals("supply", Showers.finding(survey, "faults.likely", -20_000).variant());
        assertEquals("", Showers.finding(survey, "faults.likely", 40_000).variant());
        // Within the error of a usual gauge it says nothing, so what was reported stands alone.
        assertEquals(
                Showers.finding(survey, "faults.likely").printed(),
                Showers.finding(survey, "faults.likely", -400).printed());
    }

    @Test
    void withoutSymptomsNothingApplies() {
        Survey survey = SampleVisits.survey();
        for (String key : List.of("faults.likely", "faults.elements", "faults.coil", "faults.isolation")) {
            assertEquals(Outcome.NOT_APPLICABLE, Showers.finding(survey, key).outcome());
        }
    }

    @Test
    void aFullSurveyOfThePresentUnitIsInWords() {
        Survey survey = SampleVisits.full();
        twinfeed.calculator.engine.Runner runner = new twinfeed.calculator.engine.Runner(
                List.of(new FaultsCalculator()), (mean, spread, month, southern) -> mean);
        twinfeed.calculator.engine.FindingText words =
                new twinfeed.calculator.engine.FindingText(runner, java.util.Locale.ENGLISH);
        for (String key : List.of("faults.likely", "faults.elements", "faults.coil", "faults.isolation")) {
            Finding finding = Showers.finding(survey, key);
            assertFalse(words.sentence(finding).matches(".*[\\[{].*"), words.sentence(finding));
            double last = finding.working().steps().isEmpty()
                    ? Double.NaN
                    : finding.working()
                            .steps()
                            .get(finding.working().steps().size() - 1)
                            .value();
            if (finding.printed() != null) {
                assertEquals(finding.printed().value(), last, 1e-9 * Math.max(1, last), key);
            }
        }
    }
}
