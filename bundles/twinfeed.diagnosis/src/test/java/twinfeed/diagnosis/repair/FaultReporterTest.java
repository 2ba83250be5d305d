// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.FaultReport;

/** What a quote says of the fault, and when a repair is sound. */
class FaultReporterTest {
    private static final String[] STEPS = {
        "showerOff",
        "breakerLocked",
        "noticeUp",
        "isolatorOpen",
        "waterShut",
        "testerProvedBefore",
        "deadAtTerminals",
        "testerProvedAfter"
    };

    private final PriceBook book;
    private final Survey survey = PricedVisits.openElement();
    private final Heater heater = PricedVisits.heater();
    private final OptionAssessment present = PricedVisits.present();

    FaultReporterTest() throws IOException {
        book = PricedVisits.book();
        present.setVerdict(Verdict.SUITS);
        SampleVisits.isolate(survey, STEPS);
    }

    private FaultReport report() {
        return new FaultSheetBuilder(survey, heater, present, 0, Locale.ROOT).report(book, PricedVisits.DAY);
    }

    private String refusal() {
        FaultReport report = report();
        assertNull(report.repair());
        return Objects.requireNonNull(report.leftOut());
    }

    @Test
    void anOpenElementIsRenewed() {
        FaultReport report = report();
        assertEquals(List.of("it is warm only when the water runs very slowly"), report.reported());
        assertEquals("Most likely this has failed: one of the wires that heat the water.", report.fault());
        assertNull(report.leftOut());
        FaultReport.Repair repair = report.repair();
        assertNotNull(repair);
        assertEquals("elements", repair.part());
        assertEquals(List.of("part-elements"), repair.codes());
        assertTrue(repair.laterKept().compareTo(repair.laterNew()) > 0, repair.toString());
    }

    /** The page of the fault-finding and the quote weigh the same amounts. */
    @Test
    void theAmountsAreThoseOfTheAdvice() {
        FaultReport.Repair repair = Objects.requireNonNull(report().repair());
        RepairAdvice advice = Objects.requireNonNull(new FaultSheetBuilder(survey, heater, present, 0, Locale.ROOT)
                .sheet(book, PricedVisits.DAY, List.of())
                .repair());
        assertEquals(advice.lines().get(1).amount().add(advice.later()), repair.laterKept());
    }

    @Test
    void nothingIsSaidWhereNothingWasReported() {
        survey.getSymptoms().clear();
        survey.setFaultFinding(null);
        assertEquals(FaultReport.NONE, report());
    }

    @Test
    void aRecalledUnitIsNotRepaired() {
        heater.setRecalledOn(LocalDate.of(2026, 1, 5));
        assertTrue(refusal().contains("called it back"));
    }

    @Test
    void aUnitUnderGuaranteeIsItsMakers() {
        heater.setGuaranteeYears(10);
        assertTrue(refusal().contains("guarantee"));
    }

    @Test
    void aUnitOfUnknownAgeIsNotRepairedAtAFixedPrice() {
        survey.getUnit().setAge(null);
        assertTrue(refusal().contains("how old"));
    }

    @Test
    void aUnitThatDoesNotSuitIsNotRepaired() {
        present.setVerdict(Verdict.DOES_NOT_SUIT);
        assertTrue(refusal().startsWith("it does not suit this house."));
        present.setVerdict(Verdict.CANNOT_TELL);
        assertTrue(refusal().contains("still has to be measured"));
    }

    @Test
    void aPartThatTheListLacksHasNoPrice() {
        book.getItems().removeIf(item -> item.getCode().equals("part-elements"));
        assertTrue(refusal().contains("price list"));
    }

    @Test
    void whatWasMeasuredWithoutIsolationIsMeasuredAgain() {
        survey.getFaultFinding().getIsolation().clear();
        assertTrue(refusal().contains("measured again"));
    }

    @Test
    void anOpenDiagnosisHasNoFixedPrice() {
        survey.setFaultFinding(null);
        survey.getSymptoms().get(0).setKey("shutsOffAndReturns");
        FaultReport report = report();
        assertEquals("We do not know yet which part has failed.", report.fault());
        assertTrue(refusal().contains("further test"));
    }

    /** The last day that the papers name is still under guarantee; without papers the age tells. */
    @Test
    void theLastDayOfTheGuarantee() {
        survey.setTakenOn(LocalDate.of(2026, 10, 6));
        survey.getUnit().setGuaranteeUntil(LocalDate.of(2026, 10, 6));
        assertTrue(refusal().contains("guarantee"));
        survey.getUnit().setGuaranteeUntil(LocalDate.of(2026, 10, 5));
        heater.setGuaranteeYears(10);
        assertNotNull(report().repair(), "the papers count before the age");
        survey.setTakenOn(null);
        assertTrue(refusal().contains("guarantee"));
        heater.setGuaranteeYears(7);
        assertNotNull(report().repair(), "seven years old");
        survey.getUnit().setAge(null);
        assertTrue(refusal().contains("how old"));
        survey.setUnit(null);
        assertTrue(refusal().contains("how old"));
    }

    /** What the customer reads is why it does not suit, in the customer's words where there are any. */
    @Test
    void theReasonWhyItDoesNotSuit() {
        present.setVerdict(Verdict.DOES_NOT_SUIT);
        Finding passes = finding("pressure.switch", Outcome.PASSES, "The switch keeps on.");
        Finding other = finding("circuit.drop", Outcome.FAILS, "7 % of the voltage is lost.");
        Finding binding = finding("circuit.cable", Outcome.FAILS, "The cable is too thin.");
        present.getFindings().addAll(List.of(passes, other, binding));
        present.setBinding("circuit.cable");
        assertEquals("it does not suit this house. The cable is too thin.", refusal());
        binding.setCustomerText("The wire is too thin.");
        assertEquals("it does not suit this house. The wire is too thin.", refusal());
        present.getUnmended().add("circuit.drop");
        assertEquals("it does not suit this house. 7 % of the voltage is lost.", refusal());
        present.setVerdict(Verdict.NOT_AS_IT_IS);
        assertEquals("it does not suit this house as it is. 7 % of the voltage is lost.", refusal());
        present.getUnmended().clear();
        present.setBinding("pressure.switch");
        assertTrue(refusal().contains("still has to be measured"));
        present.unsetVerdict();
        assertTrue(refusal().contains("still has to be measured"));
    }

    private static Finding finding(String key, Outcome outcome, String text) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setKey(key);
        finding.setOutcome(outcome);
        finding.setText(text);
        return finding;
    }

    /** Work on the supplies takes the place of a repair; where no work puts them right there is none. */
    @Test
    void whereTheSupplyIsToBlameNoPartIsRenewed() {
        survey.setFaultFinding(null);
        survey.getSymptoms().get(0).setKey("goesColdWhenTapOpens");
        Finding margin = finding("pressure.switch", Outcome.FAILS, "The tap takes it.");
        margin.setTopic(CheckTopic.SWITCH_DROP_OUT);
        present.getFindings().add(margin);
        present.setVerdict(Verdict.SUITS_WITH_WORK);
        FaultReport report = report();
        assertEquals(List.of("it goes cold when another tap is opened"), report.reported());
        assertTrue(report.fault().startsWith("Most likely no part of it has failed"), report.fault());
        FaultReport.Repair repair = Objects.requireNonNull(report.repair());
        assertNull(repair.part());
        assertEquals("", repair.work());
        assertEquals(List.of(), repair.codes());
        assertEquals(8, repair.years());
        assertTrue(repair.laterKept().compareTo(repair.laterNew()) > 0, repair.toString());
        present.setVerdict(Verdict.SUITS);
        assertTrue(refusal().contains("a further test"));
        survey.getSymptoms().clear();
        assertEquals(FaultReport.NONE, report(), "a weak supply alone is no fault");
    }

    @Test
    void twoFaultsHaveNoFixedPrice() {
        survey.getFaultFinding().setCoilOpen(true);
        survey.getSymptoms().clear();
        FaultReport report = report();
        assertTrue(report.fault().startsWith("More than one part may have failed."), report.fault());
        assertEquals(List.of(), report.reported(), "what only the engineer found is not the customer's");
        assertTrue(refusal().contains("no fixed price") || refusal().contains("cannot give a fixed price"));
    }

    /** What the engineer sees, and what the customer denied, is not told as the customer's report. */
    @Test
    void onlyWhatTheCustomerToldIsReported() {
        SampleVisits.say(survey, "hoseBlocked", null);
        SampleVisits.say(survey, "kettling", FaultAnswer.NO);
        assertEquals(List.of("it is warm only when the water runs very slowly"), report().reported());
        survey.getSymptoms().clear();
        survey.setFaultFinding(null);
        SampleVisits.say(survey, "kettling", FaultAnswer.NO);
        assertEquals(FaultReport.NONE, report());
    }

    /** By hand: the next visit with the second part as far as the first does not cure; then 0.04 failures a year, doubling in five years. */
    @Test
    void theExpectedAmountsByHand() {
        FaultReport.Repair repair = Objects.requireNonNull(report().repair());
        RepairAdvice advice = Objects.requireNonNull(new FaultSheetBuilder(survey, heater, present, 0, Locale.ROOT)
                .sheet(book, PricedVisits.DAY, List.of())
                .repair());
        double ratio = Math.pow(2, 7 / 5.0);
        assertEquals(repair.laterNew().doubleValue() * ratio, advice.later().doubleValue(), 0.02);
        assertEquals("New tank with heating wires (elements) fitted and tested", repair.work());
        assertEquals(8, repair.years());
    }

    /** Every part and everything that a customer may tell has its words for the customer. */
    @Test
    void everyPartAndEverySymptomHasItsWords() {
        FaultTexts words = new FaultTexts(Locale.ROOT);
        for (Observation each : FaultData.own().observations().values()) {
            if (each.place() == ObservationStage.TOLD) {
                assertTrue(words.reported(each.key()).isPresent(), each.key());
            }
        }
        FaultData.own().parts().values().stream()
                .filter(part -> !part.codes().isEmpty())
                .forEach(part -> {
                    assertTrue(FaultTexts.NAMES.find(Locale.ROOT, "customer.part." + part.key()) != null, part.key());
                    assertTrue(FaultTexts.NAMES.find(Locale.ROOT, "customer.renew." + part.key()) != null, part.key());
                });
    }
}
