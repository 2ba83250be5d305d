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
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
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
