// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

class FaultSheetTest {
    private static FaultSheet sheet(Survey survey, OptionAssessment present) {
        return PricedVisits.desk(survey, present).sheet();
    }

    @Test
    void theFeedIsBlamedWhereItsMarginFails() throws IOException {
        OptionAssessment present = PricedVisits.with(CheckTopic.SWITCH_DROP_OUT, Outcome.FAILS, "The tap takes it.");
        FaultSheetBuilder desk = PricedVisits.desk(PricedVisits.survey("goesColdWhenTapOpens"), present);
        FaultSheet sheet =
                desk.sheet(PricedVisits.book(), PricedVisits.DAY, List.of(PricedVisits.offer("a", "400.00")));
        assertEquals("supply", sheet.conclusion());
        assertTrue(sheet.links().get(0).contains("The tap takes it."));
        assertNull(sheet.repair(), "no part is blamed, so none is priced");
        assertTrue(sheet.answers().stream()
                .anyMatch(answer -> answer.observation().equals("feedMarginFails")
                        && answer.origin().equals("feed")));
    }

    @Test
    void theUnitIsBlamedWhereTheMarginIsGood() {
        FaultSheet sheet = sheet(
                PricedVisits.survey("goesColdWhenTapOpens"),
                PricedVisits.with(CheckTopic.SWITCH_ON, Outcome.PASSES, "Enough."));
        assertEquals("part", sheet.conclusion());
        assertFalse(sheet.links().isEmpty());
    }

    @Test
    void aMarginTooCloseToCallSaysNothing() {
        FaultSheet sheet = sheet(
                PricedVisits.survey("goesColdWhenTapOpens"),
                PricedVisits.with(CheckTopic.SWITCH_ON, Outcome.TOO_CLOSE, "Close."));
        assertTrue(sheet.answers().stream().noneMatch(answer -> answer.origin().equals("feed")));
    }

    @Test
    void repeatedCutOutsAreLinkedToTheSummer() {
        FaultSheet sheet = sheet(
                PricedVisits.survey("cutOutTripsRepeatedly"),
                PricedVisits.with(CheckTopic.SUMMER_OUTLET_LOW_POWER, Outcome.FAILS, "In July it runs at 61 °C."));
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("In July it runs at 61 °C.")));
        assertEquals("cut-out", sheet.causes().get(0).part());
    }

    @Test
    void repeatedCutOutsAreLinkedToABlockedOutlet() {
        FaultSheet sheet = sheet(PricedVisits.survey("cutOutTripsRepeatedly", "hoseBlocked"), PricedVisits.present());
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("blocked outlet overheats")));
    }

    @Test
    void repeatedCutOutsWithoutACauseAskForOne() {
        FaultSheet sheet = sheet(PricedVisits.survey("cutOutTripsRepeatedly"), PricedVisits.present());
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("opens for a reason")));
    }

    /** Switch the power off: still runs, the valve; stops, the board or the switch. Some seconds are phased shutdown (common practice). */
    @Test
    void waterThatRunsOnIsToldApartFromPhasedShutdown() {
        Survey survey = PricedVisits.survey("waterRunsOn");
        assertTrue(links(survey).contains("switch the power off at the isolator"));
        say(survey, "runsOnPowerOff", FaultAnswer.NO);
        assertTrue(links(survey).contains("It stops with the power off"));
        assertTrue(links(PricedVisits.survey("waterRunsOn", "runsOnPowerOff")).contains("the solenoid valve itself"));
        Survey normal = PricedVisits.survey("someHeatButWeak");
        say(normal, "waterRunsOn", FaultAnswer.NO);
        assertTrue(links(normal).contains("normal and no fault"));
    }

    @Test
    void dangerIsSaidWithTheComplaint() {
        assertTrue(links(PricedVisits.survey("leakFromCase")).startsWith("Water near live parts"));
        assertTrue(links(PricedVisits.survey("tooHot")).contains("44 °C and above scalds"));
        assertTrue(links(PricedVisits.survey("deadNothing", "deviceFoundOff"))
                .contains("switch a tripped breaker or RCD on again on a guess"));
        assertTrue(links(PricedVisits.survey("deadNothing")).contains("start at the consumer unit"));
        assertTrue(links(PricedVisits.survey("onceCutOutOpen")).contains("never bridged"));
        assertTrue(links(PricedVisits.survey("manualCutOutTripped")).contains("do not press it a third time"));
        assertTrue(links(PricedVisits.survey("dripsWhenOff")).contains("drips for a minute"));
    }

    private static String links(Survey survey) {
        return String.join("\n", sheet(survey, PricedVisits.present()).links());
    }

    private static void say(Survey survey, String key, FaultAnswer answer) {
        var symptom = SurveyFactory.eINSTANCE.createSymptom();
        symptom.setKey(key);
        symptom.setAnswer(answer);
        survey.getSymptoms().add(symptom);
    }

    @Test
    void aScorchedIsolatorIsLinkedToItsRating() {
        Survey survey = PricedVisits.survey();
        SurveyFactory make = SurveyFactory.eINSTANCE;
        ElectricalFeed electricity = make.createElectricalFeed();
        Circuit circuit = make.createCircuit();
        Isolator isolator = make.createIsolator();
        isolator.setCondition(IsolatorCondition.SCORCHED);
        circuit.setIsolator(isolator);
        electricity.setCircuit(circuit);
        survey.setElectricity(electricity);
        FaultSheet low =
                sheet(survey, PricedVisits.with(CheckTopic.ISOLATOR_RATING, Outcome.FAILS, "30 A under 40 A."));
        assertEquals("isolator", low.causes().get(0).part());
        assertTrue(low.links().get(0).contains("30 A under 40 A."));
        FaultSheet enough = sheet(survey, PricedVisits.with(CheckTopic.ISOLATOR_RATING, Outcome.PASSES, "45 A."));
        assertTrue(enough.links().get(0).contains("loose terminal"));
    }

    @Test
    void aReadingWithoutIsolationIsReportedAndTheProcedurePrinted() {
        Survey survey = PricedVisits.openElement();
        FaultSheet sheet = sheet(survey, PricedVisits.present());
        assertTrue(sheet.isolationNotice().startsWith("Something was measured"));
        assertEquals(8, sheet.isolation().size());
        assertTrue(sheet.isolation().stream().noneMatch(FaultSheet.Tick::done));
        SampleVisits.isolate(survey, IsolationRecord.PROCEDURE.toArray(new String[0]));
        FaultSheet safe = sheet(survey, PricedVisits.present());
        assertEquals("", safe.isolationNotice());
        assertTrue(safe.isolation().stream()
                .allMatch(tick ->
                        tick.by().equals("Demonstration engineer") && tick.at().equals("2026-10-06 09:45")));
    }

    @Test
    void aStepUnderTheCoverCarriesTheProcedureUntilItIsTicked() {
        Survey survey = PricedVisits.survey("coldOnEverySettingFlowGood");
        twinfeed.diagnosis.data.FaultData.own().observations().values().stream()
                .filter(each -> each.place().safe() && !each.key().equals("coldOnEverySettingFlowGood"))
                .forEach(each -> {
                    var symptom = SurveyFactory.eINSTANCE.createSymptom();
                    symptom.setKey(each.key());
                    symptom.setAnswer(twinfeed.model.survey.FaultAnswer.UNKNOWN);
                    survey.getSymptoms().add(symptom);
                });
        FaultSheet.Next shut = sheet(survey, PricedVisits.present()).next();
        assertEquals("cover", shut.place());
        assertEquals(8, shut.procedure().size());
        survey.setFaultFinding(SurveyFactory.eINSTANCE.createFaultFinding());
        SampleVisits.isolate(survey, IsolationRecord.PROCEDURE.subList(0, 7).toArray(new String[0]));
        assertEquals(8, sheet(survey, PricedVisits.present()).next().procedure().size());
        SampleVisits.isolate(survey, "testerProvedAfter");
        assertEquals(List.of(), sheet(survey, PricedVisits.present()).next().procedure());
    }

    @Test
    void aFreshSheetAsksBeforeItOpens() {
        FaultSheet.Next next = sheet(PricedVisits.survey("noWaterSupplyGood"), PricedVisits.present())
                .next();
        assertFalse(next.place().equals("cover"));
    }

    @Test
    void readingsStandBesideTheirBands() {
        List<FaultSheet.Reading> readings =
                sheet(PricedVisits.openElement(), PricedVisits.present()).readings();
        assertEquals(true, readings.get(0).sound());
        assertEquals(false, readings.get(1).sound());
        assertEquals("no continuity", readings.get(1).value());
        assertTrue(readings.get(0).expected().contains("to"), readings.get(0).expected());
    }

    @Test
    void whatAnOpenElementDoesIsSaid() {
        FaultSheet sheet = sheet(
                PricedVisits.openElement(),
                PricedVisits.with(CheckTopic.OPEN_ELEMENT, Outcome.FAILS, "Half the power is left."));
        assertTrue(sheet.links().contains("Half the power is left."));
    }

    @Test
    void nothingClaimsCertaintyAndCautionsArePrinted() {
        FaultSheet sheet = sheet(PricedVisits.openElement(), PricedVisits.present());
        assertTrue(sheet.summary().contains("not a proof"));
        String cautions = String.join(" ", sheet.cautions());
        for (String words : List.of("competent", "local codes", "prove the tester again", "none of them is certain")) {
            assertTrue(cautions.contains(words), words);
        }
        assertTrue(sheet.causes().get(0).chance() < 1);
        assertTrue(sheet.source().contains("judgement"));
    }

    @Test
    void allTextsAreThere() {
        for (Survey survey : List.of(
                PricedVisits.openElement(),
                PricedVisits.survey(),
                PricedVisits.survey("goesColdWhenTapOpens", "singsAtNight"))) {
            String all = sheet(survey, PricedVisits.present()).toString();
            assertFalse(all.matches("(?s).*\\[[a-z]+\\.[A-Za-z.]+\\].*"), all);
            assertFalse(all.matches("(?s).*\\{[a-z]+(:\\d)?}.*"), all);
        }
    }

    @Test
    void aWeakRankingSaysSo() {
        FaultSheet sheet = sheet(PricedVisits.survey("coldOnEverySettingFlowGood"), PricedVisits.present());
        assertTrue(sheet.summary().startsWith("No cause stands out yet"), sheet.summary());
    }

    @Test
    void anUnknownObservationIsNamed() {
        assertTrue(sheet(PricedVisits.survey("singsAtNight"), PricedVisits.present())
                .notices()
                .get(0)
                .contains("singsAtNight"));
    }

    @Test
    void nothingReportedInfersNothing() {
        FaultSheet sheet = sheet(PricedVisits.survey(), PricedVisits.present());
        assertEquals("nothing-reported", sheet.conclusion());
        assertNull(sheet.next());
    }

    /** 8.5 kW at 240 V by Ohm's law is 6.776 ohm; at 230 V 7.806 kW, by the tolerance of the appliance 7.0 to 8.2 kW. */
    @Test
    void expectedValuesAfterTheRepair() {
        List<FaultSheet.Expected> after = sheet(PricedVisits.survey("someHeatButWeak"), PricedVisits.present())
                .expected();
        assertTrue(
                after.stream().anyMatch(each -> each.value().startsWith("7.0 to 8.2 kW at 230 V")), after.toString());
        assertTrue(after.stream().anyMatch(each -> each.value().contains("1 MΩ")));
    }
}
