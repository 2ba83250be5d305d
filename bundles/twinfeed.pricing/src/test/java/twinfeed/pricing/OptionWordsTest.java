// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;

/** What an option is said to give, to need and to wait for. */
class OptionWordsTest {
    private final PriceBook book = DemoBook.read();
    private final Survey survey = Samples.survey(Confidence.SEEN);
    private final Assessment assessment = Samples.assessment();

    private static String said(OptionAssessment option, boolean renewed) {
        return new OptionText(Locale.ENGLISH, renewed).of(option);
    }

    private OptionAssessment option(int number) {
        return assessment.getOptions().get(number);
    }

    private QuoteOption offered(String name) {
        return QuoteBuilder.draft(
                        QuoteRequest.of(survey, assessment, book, DemoBook.DAY).choosing(List.of(name)))
                .getOptions()
                .get(0);
    }

    @Test
    void aNewHeaterTheOneThatIsThereAndARepairedOneAreToldApart() {
        OptionAssessment heater = Samples.option("h75", "Heater", 7.5, Verdict.SUITS);
        assertEquals("It suits this house as it is.", said(heater, false));
        assertEquals("It suits this house as it is.", said(heater, true), "a new heater is never repaired");
        heater.setPresent(true);
        assertEquals("The heater that is there suits this house as it is.", said(heater, false));
        assertEquals("The heater that is there stays and suits this house once it is repaired.", said(heater, true));
    }

    @Test
    void theWorkIsNamedInTheCustomersWordsIfThereAreAny() {
        OptionAssessment heater = Samples.option("h95", "Heater", 9.5, Verdict.SUITS_WITH_WORK);
        Remedy cable = Samples.newCable();
        Remedy fuse = Samples.remedy("fuse", "Larger service fuse");
        fuse.setCustomerTitle("The network operator fits a larger fuse");
        Remedy nameless = Samples.remedy("pump", null);
        heater.getRemedies().addAll(List.of(cable, fuse, nameless));
        assertEquals(
                "It suits this house once this is done: Replace the cable by 10 mm²; The network operator fits a larger"
                        + " fuse; pump.",
                said(heater, false));
    }

    @Test
    void theFindingThatDecidesIsTheReasonAndOtherwiseAllThatFail() {
        OptionAssessment heater = Samples.option("h105s", "Heater", 10.5, Verdict.DOES_NOT_SUIT);
        heater.getFindings().add(Samples.finding("circuit.cable", Outcome.FAILS, "The cable is too thin."));
        heater.getFindings().add(Samples.finding("flow", Outcome.PASSES, "The flow is enough."));
        Finding fuse = Samples.finding("demand", Outcome.FAILS, "The fuse is too small.");
        fuse.setCustomerText("Your house cannot be given so much.");
        heater.getFindings().add(fuse);
        String begins = "It does not suit this house. We give a price only because you asked for it. ";
        assertEquals(begins + "The cable is too thin. Your house cannot be given so much.", said(heater, false));
        heater.setBinding("demand");
        assertEquals(begins + "Your house cannot be given so much.", said(heater, false));
    }

    @Test
    void theRemarkOfAnItemStandsAtItsLineAlone() {
        Remedy cable = option(2).getRemedies().get(0);
        cable.getItems().get(0).setNote("clipped to the joists");
        QuoteOption written = offered("h95");
        assertEquals(
                "clipped to the joists; 12.5 m built in, 5 % for waste",
                line(written, "remedial", "cable-10").getNote());
        QuoteLine unit = line(written, "unit", "h95");
        assertNull(unit.getNote());
        assertNull(line(written, "labour", "task-run-cable").getNote(), "the time that an item takes has no remark");
    }

    private static QuoteLine line(QuoteOption option, String section, String code) {
        return option.getSections().stream()
                .filter(one -> one.getKey().equals(section))
                .flatMap(one -> one.getLines().stream())
                .filter(one -> code.equals(one.getCode()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " in " + option.getSections()));
    }

    /** One work asks for the operator's fuse, and has words for the customer; where two do, the item is named. */
    @Test
    void whatWaitsForAPriceIsNamedInTheWordsOfTheWorkThatAsksForIt() {
        Remedy fuse = Samples.remedy("fuse", "Larger service fuse", "operator-fuse", "1");
        fuse.setCustomerTitle("The network operator fits a larger fuse: price on request");
        fuse.setEnquiry(true);
        option(1).getRemedies().add(fuse);
        option(1).getRemedies().add(Samples.remedy("clips", "Clips", "cable-10", "1"));
        assertEquals(
                List.of("The network operator fits a larger fuse: price on request"),
                offered("h75").getEnquiries());
        option(1).getRemedies().add(Samples.remedy("again", "Larger service fuse again", "operator-fuse", "0"));
        assertEquals(
                List.of("Larger service fuse by the network operator: price on request"),
                offered("h75").getEnquiries());
    }

    @Test
    void anItemOfWhichNoneIsNeededIsNotAskedFor() {
        option(1).getRemedies().add(Samples.remedy("fuse", "Larger service fuse", "operator-fuse", "0"));
        assertEquals(List.of(), offered("h75").getEnquiries());
    }

    @Test
    void whatIsReadyAtOnceHasNoDayOfDelivery() {
        book.getItems().forEach(item -> item.setLeadDays(null));
        assertNull(offered("h75").getLeadDays());
        option(1).getRemedies().add(Samples.newCable());
        option(1).getRemedies().get(0).setLeadDays(3);
        assertEquals(3, offered("h75").getLeadDays());
    }

    /** 7.5 kW for eight minutes is 1 kWh. */
    @Test
    void electricityThatCostsNothingIsNotReckoned() {
        book.setEnergyPrice(new BigDecimal("0.30"));
        assertEquals(new BigDecimal("0.30"), offered("h75").getShowerCost());
        book.setEnergyPrice(BigDecimal.ZERO);
        assertNull(offered("h75").getShowerCost());
    }
}
