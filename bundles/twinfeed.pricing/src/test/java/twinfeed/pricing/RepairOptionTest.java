// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.units.Power;
import twinfeed.units.Ratio;

/** The repair, and the heater like the one that is there, among the options. Amounts by hand from the demonstration's prices. */
class RepairOptionTest {
    private final PriceBook book = DemoBook.read();
    private final Survey survey = Samples.survey(Confidence.SEEN);
    private final Assessment assessment = Samples.assessment();

    RepairOptionTest() {
        present().setVerdict(Verdict.SUITS);
    }

    private OptionAssessment present() {
        return assessment.getOptions().get(0);
    }

    private static FaultReport.Repair repair(String laterKept, String laterNew, String... codes) {
        return new FaultReport.Repair(
                "elements", "New tank fitted", List.of(codes), new BigDecimal(laterKept), new BigDecimal(laterNew), 8);
    }

    private Quote draft(FaultReport.Repair repair) {
        FaultReport report = new FaultReport(List.of("it is cold"), "The tank has failed.", repair, null);
        return QuoteBuilder.draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY)
                .in(Locale.ENGLISH)
                .reporting(report));
    }

    private static List<String> names(Quote quote) {
        return quote.getOptions().stream().map(QuoteOption::getName).toList();
    }

    private static List<String> codes(QuoteOption option) {
        return option.getSections().stream()
                .flatMap(section -> section.getLines().stream())
                .map(QuoteLine::getCode)
                .distinct()
                .toList();
    }

    /** Visit 20.00 and 45 min, part 69.00 and 40 min, the hour at 54.00: 165.50, no circuit test, no second journey. */
    @Test
    void aVisitAndThePartAreCharged() {
        Quote quote = draft(repair("0", "0", "part-elements"));
        QuoteOption first = quote.getOptions().get(0);
        assertEquals("present", first.getName());
        assertEquals(new BigDecimal("165.50"), first.getNet());
        assertEquals(new BigDecimal("198.60"), first.getTotal());
        assertEquals("elements", first.getPart());
        assertEquals("New tank fitted", first.getRepairWork());
        assertEquals("Repair: Heater 8.5 kW, two-element", first.getTitle());
        assertFalse(codes(first).contains("travel"), codes(first).toString());
        assertFalse(codes(first).contains("certificate"), codes(first).toString());
    }

    /** A new isolator is work on the circuit: 15.00 and 40.50 for certificate and test are charged as well. */
    @Test
    void workOnTheCircuitIsTestedAndCertified() {
        QuoteOption first = draft(repair("0", "0", "isolator-50", "task-change-isolator"))
                .getOptions()
                .get(0);
        assertTrue(
                codes(first).containsAll(List.of("task-test-certify", "certificate")),
                codes(first).toString());
        assertFalse(codes(first).contains("travel"), codes(first).toString());
        // 20.00 + 40.50 visit, 18.00 + 27.00 isolator, 40.50 test, 15.00 certificate
        assertEquals(new BigDecimal("161.00"), first.getNet());
    }

    /** The supplies alone are put right: nothing of the unit is renewed, and nothing is said of a repair. */
    @Test
    void withoutAPartTheUnitStaysAsItIs() {
        FaultReport.Repair supplies =
                new FaultReport.Repair(null, "", List.of(), new BigDecimal("0"), new BigDecimal("0"), 8);
        QuoteOption first = draft(supplies).getOptions().stream()
                .filter(option -> option.getName().equals("present"))
                .findFirst()
                .orElseThrow();
        assertNull(first.getPart());
        assertEquals("The heater that is there suits this house as it is.", first.getText());
        QuoteOption repaired =
                draft(repair("0", "0", "part-elements")).getOptions().get(0);
        assertEquals("The heater that is there stays and suits this house once it is repaired.", repaired.getText());
    }

    /** Other work of the house renews no part of the unit. */
    @Test
    void whatTheWorkDoesNotRenewIsCharged() {
        present().setVerdict(Verdict.SUITS_WITH_WORK);
        present().getRemedies().add(Samples.newCable());
        QuoteOption first = draft(repair("0", "900", "isolator-50", "task-change-isolator"))
                .getOptions()
                .get(0);
        assertTrue(codes(first).contains("isolator-50"), codes(first).toString());
        assertEquals("New tank fitted", first.getRepairWork());
    }

    @Test
    void whereNoHeaterWasCheckedNoneIsCounted() {
        assessment.getOptions().subList(1, assessment.getOptions().size()).clear();
        assertEquals(
                "No new heater was checked.\nYou told us: it is cold. The tank has failed. It goes cold when"
                        + " the kitchen tap opens.",
                draft(repair("0", "0", "part-elements")).getSummary());
    }

    /** Inside the unit no route is in doubt; with work on the supplies it is again. */
    @Test
    void aContingencyIsForTheSuppliesAlone() {
        survey.getElectricity().getCircuit().getSegments().get(0).setConfidence(Confidence.CONCEALED);
        book.setContingency(Ratio.valueOf("10 %"));
        assertFalse(codes(draft(repair("0", "0", "part-elements")).getOptions().get(0))
                .contains("contingency"));
        present().setVerdict(Verdict.SUITS_WITH_WORK);
        present().getRemedies().add(Samples.newCable());
        QuoteOption worked =
                draft(repair("0", "0", "part-elements")).getOptions().get(0);
        assertTrue(codes(worked).contains("contingency"), codes(worked).toString());
    }

    /** The work that the house needs renews the isolator already: 20.00 + 40.50 visit, 13.50 + 27.00 isolator, 40.50 test, 15.00 certificate. */
    @Test
    void whatTheWorkRenewsIsNotChargedTwice() {
        present().setVerdict(Verdict.SUITS_WITH_WORK);
        present()
                .getRemedies()
                .add(Samples.remedy("isolator", "New isolator", "isolator-45", "1", "task-change-isolator", "1"));
        QuoteOption first = draft(repair("0", "0", "isolator-50", "task-change-isolator"))
                .getOptions()
                .get(0);
        assertFalse(codes(first).contains("isolator-50"), codes(first).toString());
        assertEquals(new BigDecimal("156.50"), first.getNet());
        assertNull(first.getRepairWork());
    }

    /** The quote says what was reported and found, and why the repair is recommended: 165.50 + 100 against 286.50 and more. */
    @Test
    void theCheaperOverTheYearsIsRecommended() {
        Quote quote = draft(repair("100.00", "40.00", "part-elements"));
        assertEquals(List.of("present", "h75", "h95"), names(quote));
        assertTrue(quote.getSummary().contains("\nYou told us: it is cold. The tank has failed. "), quote.getSummary());
        assertTrue(
                quote.getSummary()
                        .startsWith(
                                "We recommend option 1, Repair: Heater 8.5 kW, two-element: it costs least over 8 years,"
                                        + " with what may fail later counted. "),
                quote.getSummary());
        assertEquals(List.of("it is cold"), quote.getReported());
        assertEquals("The tank has failed.", quote.getFault());
    }

    @Test
    void aRepairThatCostsMoreOverTheYearsStandsBesideTheNewHeater() {
        Quote quote = draft(repair("300.00", "40.00", "part-elements"));
        assertEquals(List.of("h75", "h95", "present"), names(quote));
        assertTrue(
                quote.getSummary().contains("but more over 8 years, with what may fail later counted. We checked"),
                quote.getSummary());
    }

    /** Who asks for 9.5 kW is not told to keep 8.5 kW. */
    @Test
    void whoAsksForMorePowerIsOfferedItFirst() {
        survey.setRequestedPower(Power.valueOf("9.5 kW"));
        Quote quote = draft(repair("0", "40.00", "part-elements"));
        assertEquals(List.of("h95", "h75", "present"), names(quote));
        assertFalse(quote.getSummary().contains("keep the old heater"), quote.getSummary());
    }

    /** "Closest to what you asked for" alone would be no reason against a repair of the power asked for that costs less today. */
    @Test
    void whoAsksForThePowerThatIsThereReadsWhyItIsNotRepaired() {
        survey.setRequestedPower(Power.valueOf("8.5 kW"));
        Quote quote = draft(repair("300.00", "40.00", "part-elements"));
        assertFalse(quote.getSummary().startsWith("We recommend option 1, Repair"), quote.getSummary());
        assertTrue(
                quote.getSummary().contains("To keep the old heater costs less today, but more over 8 years"),
                quote.getSummary());
    }

    /** 10.5 kW has no price yet, so that 9.5 kW is recommended to who asks for 10.5 kW; that it is the nearest of all is not said then. */
    @Test
    void aNearerHeaterWithoutAPriceIsMentioned() {
        survey.setRequestedPower(Power.valueOf("10.5 kW"));
        assertTrue(summaryWith105("126.00").contains("x10.5: it comes closest to the power"), summaryWith105("126.00"));
        String open = summaryWith105(null);
        assertTrue(open.contains("of those whose whole price we know, it comes closest"), open);
        assertTrue(open.contains("Heater 9.5 kW"), open);
    }

    private String summaryWith105(@Nullable String price) {
        assessment.getOptions().removeIf(option -> "x10.5".equals(option.getHeaterId()));
        assessment.getOptions().add(Samples.option("x10.5", "x10.5", 10.5, Verdict.SUITS));
        book.getItems().removeIf(item -> "x10.5".equals(item.getCode()));
        addItem("x10.5");
        PriceItem item = book.getItems().get(book.getItems().size() - 1);
        item.setPrice(price == null ? null : new BigDecimal(price));
        item.setCost(price == null ? null : item.getCost());
        return String.valueOf(draft(repair("0", "0", "part-elements")).getSummary());
    }

    @Test
    void noMoreThanFourStandSideBySide() {
        for (double kw : new double[] {9.0, 10.5, 8.5, 10.0}) {
            assessment.getOptions().add(Samples.option("x" + kw, "x" + kw, kw, Verdict.SUITS));
            addItem("x" + kw);
        }
        assertEquals(4, names(draft(repair("0", "0", "part-elements"))).size());
    }

    /** Nearest to 11 kW are 10.5, 10.0, 9.5 and 9.0 kW: of the rating that is there one takes the last place. */
    @Test
    void aHeaterOfTheSameRatingHasItsPlace() {
        survey.setRequestedPower(Power.valueOf("11 kW"));
        for (double kw : new double[] {9.0, 9.5, 8.5, 10.0, 10.5}) {
            assessment.getOptions().add(Samples.option("x" + kw, "x" + kw, kw, Verdict.SUITS));
            addItem("x" + kw);
        }
        Quote quote = QuoteBuilder.draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
        assertEquals(List.of("x10.5", "x10.0", "x9.5", "x8.5"), names(quote));
    }

    private void addItem(String code) {
        var item = org.eclipse.emf.ecore.util.EcoreUtil.copy(book.getItems().get(0));
        item.setCode(code);
        book.getItems().add(item);
    }
}
