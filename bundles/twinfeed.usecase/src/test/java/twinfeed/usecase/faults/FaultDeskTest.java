// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.faults.Isolation;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

class FaultDeskTest {
    private static FaultSheet sheet(Survey survey, OptionAssessment present) {
        return Visits.desk(survey, present).sheet();
    }

    @Test
    void theFeedIsBlamedWhereItsMarginFails() throws IOException {
        OptionAssessment present = Visits.with("pressure.dropOut", Outcome.FAILS, "The tap takes it.");
        FaultDesk desk = Visits.desk(Visits.survey("goesColdWhenTapOpens"), present);
        FaultSheet sheet = desk.sheet(Visits.book(), Visits.DAY, List.of(Visits.offer("a", "400.00")));
        assertEquals("supply", sheet.conclusion());
        assertTrue(sheet.links().get(0).contains("The tap takes it."));
        assertNull(sheet.repair(), "no part is blamed, so none is priced");
        assertTrue(sheet.answers().stream()
                .anyMatch(answer -> answer.observation().equals("feedMarginFails")
                        && answer.origin().equals("feed")));
    }

    @Test
    void theUnitIsBlamedWhereTheMarginIsGood() {
        FaultSheet sheet =
                sheet(Visits.survey("goesColdWhenTapOpens"), Visits.with("pressure.switch", Outcome.PASSES, "Enough."));
        assertEquals("part", sheet.conclusion());
        assertFalse(sheet.links().isEmpty());
    }

    @Test
    void aMarginTooCloseToCallSaysNothing() {
        FaultSheet sheet = sheet(
                Visits.survey("goesColdWhenTapOpens"), Visits.with("pressure.switch", Outcome.TOO_CLOSE, "Close."));
        assertTrue(sheet.answers().stream().noneMatch(answer -> answer.origin().equals("feed")));
    }

    @Test
    void repeatedCutOutsAreLinkedToTheSummer() {
        FaultSheet sheet = sheet(
                Visits.survey("cutOutTripsRepeatedly"),
                Visits.with("pressure.summerLow", Outcome.FAILS, "In July it runs at 61 °C."));
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("In July it runs at 61 °C.")));
        assertEquals("cut-out", sheet.causes().get(0).part());
    }

    @Test
    void repeatedCutOutsAreLinkedToABlockedOutlet() {
        FaultSheet sheet = sheet(Visits.survey("cutOutTripsRepeatedly", "hoseBlocked"), Visits.present());
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("blocked outlet overheats")));
    }

    @Test
    void repeatedCutOutsWithoutACauseAskForOne() {
        FaultSheet sheet = sheet(Visits.survey("cutOutTripsRepeatedly"), Visits.present());
        assertTrue(sheet.links().stream().anyMatch(link -> link.contains("has a cause")));
    }

    @Test
    void aScorchedIsolatorIsLinkedToItsRating() {
        Survey survey = Visits.survey();
        SurveyFactory make = SurveyFactory.eINSTANCE;
        ElectricalFeed electricity = make.createElectricalFeed();
        Circuit circuit = make.createCircuit();
        Isolator isolator = make.createIsolator();
        isolator.setCondition(IsolatorCondition.SCORCHED);
        circuit.setIsolator(isolator);
        electricity.setCircuit(circuit);
        survey.setElectricity(electricity);
        FaultSheet low = sheet(survey, Visits.with("circuit.isolatorRating", Outcome.FAILS, "30 A under 40 A."));
        assertEquals("isolator", low.causes().get(0).part());
        assertTrue(low.links().get(0).contains("30 A under 40 A."));
        FaultSheet enough = sheet(survey, Visits.with("circuit.isolatorRating", Outcome.PASSES, "45 A."));
        assertTrue(enough.links().get(0).contains("loose terminal"));
    }

    @Test
    void aReadingWithoutIsolationIsReportedAndTheProcedurePrinted() {
        Survey survey = Visits.openElement();
        FaultSheet sheet = sheet(survey, Visits.present());
        assertTrue(sheet.isolationNotice().startsWith("Something was measured"));
        assertEquals(6, sheet.isolation().size());
        assertTrue(sheet.isolation().stream().noneMatch(FaultSheet.Tick::done));
        Visits.isolate(survey, Isolation.PROCEDURE.toArray(new String[0]));
        FaultSheet safe = sheet(survey, Visits.present());
        assertEquals("", safe.isolationNotice());
        assertTrue(safe.isolation().stream()
                .allMatch(tick ->
                        tick.by().equals("Demonstration engineer") && tick.at().equals("2026-10-06 09:45")));
    }

    @Test
    void aStepUnderTheCoverCarriesTheProcedureUntilItIsTicked() {
        Survey survey = Visits.survey("coldOnEverySettingFlowGood");
        twinfeed.calculator.faults.FaultData.own().observations().values().stream()
                .filter(each -> each.place().safe() && !each.key().equals("coldOnEverySettingFlowGood"))
                .forEach(each -> {
                    var symptom = SurveyFactory.eINSTANCE.createSymptom();
                    symptom.setKey(each.key());
                    symptom.setAnswer(twinfeed.model.survey.FaultAnswer.UNKNOWN);
                    survey.getSymptoms().add(symptom);
                });
        FaultSheet.Next shut = sheet(survey, Visits.present()).next();
        assertEquals("cover", shut.place());
        assertEquals(6, shut.procedure().size());
        survey.setFaultFinding(SurveyFactory.eINSTANCE.createFaultFinding());
        Visits.isolate(survey, Isolation.PROCEDURE.subList(0, 5).toArray(new String[0]));
        assertEquals(6, sheet(survey, Visits.present()).next().procedure().size());
        Visits.isolate(survey, "waterShut");
        assertEquals(List.of(), sheet(survey, Visits.present()).next().procedure());
    }

    @Test
    void aFreshSheetAsksBeforeItOpens() {
        FaultSheet.Next next =
                sheet(Visits.survey("noWaterSupplyGood"), Visits.present()).next();
        assertFalse(next.place().equals("cover"));
    }

    @Test
    void readingsStandBesideTheirBands() {
        List<FaultSheet.Reading> readings =
                sheet(Visits.openElement(), Visits.present()).readings();
        assertEquals(true, readings.get(0).sound());
        assertEquals(false, readings.get(1).sound());
        assertEquals("no continuity", readings.get(1).value());
        assertTrue(readings.get(0).expected().contains("to"), readings.get(0).expected());
    }

    @Test
    void whatAnOpenElementDoesIsSaid() {
        FaultSheet sheet =
                sheet(Visits.openElement(), Visits.with("faults.elements", Outcome.FAILS, "Half the power is left."));
        assertTrue(sheet.links().contains("Half the power is left."));
    }

    @Test
    void nothingClaimsCertaintyAndCautionsArePrinted() {
        FaultSheet sheet = sheet(Visits.openElement(), Visits.present());
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
        for (Survey survey :
                List.of(Visits.openElement(), Visits.survey(), Visits.survey("goesColdWhenTapOpens", "singsAtNight"))) {
            String all = sheet(survey, Visits.present()).toString();
            assertFalse(all.matches("(?s).*\\[[a-z]+\\.[A-Za-z.]+\\].*"), all);
            assertFalse(all.matches("(?s).*\\{[a-z]+(:\\d)?}.*"), all);
        }
    }

    @Test
    void aWeakRankingSaysSo() {
        FaultSheet sheet = sheet(Visits.survey("coldOnEverySettingFlowGood"), Visits.present());
        assertTrue(sheet.summary().startsWith("No cause stands out yet"), sheet.summary());
    }

    @Test
    void anUnknownObservationIsNamed() {
        assertTrue(sheet(Visits.survey("singsAtNight"), Visits.present())
                .notices()
                .get(0)
                .contains("singsAtNight"));
    }

    @Test
    void nothingReportedInfersNothing() {
        FaultSheet sheet = sheet(Visits.survey(), Visits.present());
        assertEquals("nothing-reported", sheet.conclusion());
        assertNull(sheet.next());
    }

    /** 8.5 kW at 240 V by Ohm's law is 6.776 ohm; at 230 V 7.806 kW, by the tolerance of the appliance 7.0 to 8.2 kW. */
    @Test
    void expectedValuesAfterTheRepair() {
        List<FaultSheet.Expected> after =
                sheet(Visits.survey("someHeatButWeak"), Visits.present()).expected();
        assertTrue(
                after.stream().anyMatch(each -> each.value().startsWith("7.0 to 8.2 kW at 230 V")), after.toString());
        assertTrue(after.stream().anyMatch(each -> each.value().contains("1 Mohm")));
    }
}
