// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.pricebook.TaxRate;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.units.Power;
import twinfeed.units.Ratio;

/** Drafts with the demonstration book. Amounts are worked out by hand in the comments, from the rows of the book. */
class QuoteBuilderTest {
    private final PriceBook book = DemoBook.read();
    private final Survey seen = Samples.survey(Confidence.SEEN);

    private Quote draft(QuoteRequest request) {
        return QuoteBuilder.draft(request);
    }

    private QuoteRequest request() {
        return QuoteRequest.of(seen, Samples.assessment(), book, DemoBook.DAY);
    }

    private static QuoteLine line(QuoteOption option, String section, String code) {
        return option.getSections().stream()
                .filter(one -> one.getKey().equals(section))
                .flatMap(one -> one.getLines().stream())
                .filter(one -> one.getCode().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + code + " in " + section));
    }

    private static List<String> codes(QuoteOption option, String section) {
        return option.getSections().stream()
                .filter(one -> one.getKey().equals(section))
                .flatMap(one -> one.getLines().stream())
                .map(QuoteLine::getCode)
                .toList();
    }

    private static List<String> names(Quote quote) {
        return quote.getOptions().stream().map(QuoteOption::getName).toList();
    }

    @Test
    void offersWhatSuitsFirstAndNeverWhatDoesNot() {
        assertEquals(List.of("h75", "h95"), names(draft(request())));
    }

    @Test
    void offersAtMostFourNearestToTheRequestedPower() {
        Assessment assessment = Samples.assessment();
        for (double kw : new double[] {9.0, 10.5, 8.5}) {
            String id = "h" + (int) Math.round(kw * 10);
            assessment.getOptions().add(Samples.option(id, id, kw, Verdict.SUITS));
        }
        seen.setRequestedPower(Power.valueOf("9 kW"));
        QuoteRequest request = QuoteRequest.of(seen, assessment, book, DemoBook.DAY);
        assertEquals(List.of("h90", "h85", "h75", "h105"), names(draft(request)));
    }

    @Test
    void offersTheUndecidedMarkedWhereNothingSuits() {
        Assessment assessment = Samples.assessment();
        assessment
                .getOptions()
                .removeIf(option ->
                        option.getVerdict() == Verdict.SUITS || option.getVerdict() == Verdict.SUITS_WITH_WORK);
        Quote quote = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
        assertEquals(List.of("h108"), names(quote));
        assertTrue(quote.getOptions().get(0).getText().contains("do not know yet"));
        assertTrue(quote.getCautions().get(0).contains("we promise nothing"));
        assertTrue(quote.getAssumptions()
                .contains("Still to be measured, in the words of the trade: make pressure of the heater's switch"));
    }

    @Test
    void saysSoWhereNothingCanBeOffered() {
        Assessment assessment = Samples.assessment();
        assessment.getOptions().removeIf(option -> option.getVerdict() != Verdict.DOES_NOT_SUIT);
        Quote quote = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
        assertEquals(List.of(), names(quote));
        assertTrue(quote.getSummary().contains("it does not suit, with or without work"), quote.getSummary());
    }

    @Test
    void offersWhatDoesNotSuitOnlyWhenAskedAndMarksIt() {
        Quote quote = draft(request().choosing(List.of("h105s", "h95")));
        assertEquals(List.of("h105s", "h95"), names(quote));
        assertEquals(Verdict.DOES_NOT_SUIT, quote.getOptions().get(0).getVerdict());
        assertEquals(
                "It does not suit this house. We give a price only because you asked for it. The cable carries 36 A, 43.8 A are"
                        + " needed.",
                quote.getOptions().get(0).getText());
        assertTrue(quote.getCautions().get(0).contains("we do not recommend it"));
    }

    @Test
    void refusesUnknownRepeatedAndTooManyOptions() {
        assertEquals(
                "unknownOption", trouble(request().choosing(List.of("h12"))).key());
        assertTrue(trouble(request().choosing(List.of("h12"))).getMessage().contains("present, h75, h95, h105s, h108"));
        assertEquals(
                "optionTwice",
                trouble(request().choosing(List.of("h95", "h95"))).key());
        assertEquals(
                "tooManyOptions",
                trouble(request().choosing(List.of("h75", "h95", "h105s", "h108", "present")))
                        .key());
    }

    private QuoteException trouble(QuoteRequest request) {
        return assertThrows(QuoteException.class, () -> draft(request));
    }

    /** Who runs a cable anew lays it clear of the insulation: the old one is not lifted beside. */
    @Test
    void aNewCableMakesTheLiftingOfTheOldOneNeedless() {
        Assessment assessment = Samples.assessment();
        OptionAssessment option = assessment.getOptions().get(2);
        option.getRemedies()
                .add(Samples.remedy("lift", "Lift the cable", "lift-out-of-insulation", "4.2", "clip-cable", "4.2"));
        QuoteOption quoted = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY)).getOptions().stream()
                .filter(one -> one.getName().equals("h95"))
                .findFirst()
                .orElseThrow();
        assertTrue(codes(quoted, "remedial").contains("cable-10"));
        assertFalse(codes(quoted, "remedial").contains("lift-out-of-insulation"));
        assertFalse(codes(quoted, "remedial").contains("clip-cable"));
    }

    /** Common practice: a cable needs clips and leaves an old one, a consumer unit is tested with every circuit on it. */
    @Test
    void aCableAndAConsumerUnitBringTheirCompanionsWhereTheBookHasThem() {
        OptionAssessment plain = Samples.option("h95", "Heater", 9.5, Verdict.SUITS_WITH_WORK);
        plain.getRemedies().add(Samples.newCable());
        plain.getRemedies().add(Samples.remedy("cu", "New consumer unit", "consumer-unit", "1"));
        Assessment assessment = Samples.assessment();
        assessment.getOptions().set(2, plain);
        PriceBook without = EcoreUtil.copy(book);
        without.getItems().removeIf(item -> List.of("clips-cable", "remove-cable", "test-circuits")
                .contains(item.getCode()));
        assertTrue(allCodes(without, assessment).stream()
                .noneMatch(code ->
                        List.of("clips-cable", "remove-cable", "test-circuits").contains(code)));
        List<String> with = allCodes(book, assessment);
        assertTrue(with.containsAll(List.of("clips-cable", "remove-cable", "test-circuits")), with.toString());
    }

    private List<String> allCodes(PriceBook prices, Assessment assessment) {
        return draft(QuoteRequest.of(seen, assessment, prices, DemoBook.DAY)).getOptions().stream()
                .filter(option -> option.getName().equals("h95"))
                .flatMap(option -> option.getSections().stream())
                .flatMap(section -> section.getLines().stream())
                .map(QuoteLine::getCode)
                .toList();
    }

    /** Cable 12.5 m and 5 % waste are 13.125 m, never less than needed, so 13.13 m; 13.13 x 3.95 = 51.8635. */
    @Test
    void turnsRemediesIntoLinesWithWasteSourceAndReason() {
        QuoteOption option = draft(request()).getOptions().get(1);
        QuoteLine cable = line(option, "remedial", "cable-10");
        assertEquals(new BigDecimal("13.13"), cable.getQuantity());
        assertEquals("m", cable.getUnit());
        assertEquals(new BigDecimal("3.95"), cable.getUnitPrice());
        assertEquals(new BigDecimal("51.86"), cable.getNet());
        assertEquals(new BigDecimal("10.37"), cable.getTax());
        assertEquals("standard", cable.getTaxClass());
        assertEquals(0, cable.getTaxRate().compareTo(new BigDecimal("0.20")));
        assertEquals("cable-10, price of 1 September 2026", cable.getSource());
        assertEquals("cable-10-all", cable.getReason());
        assertEquals("12.5 m built in, 5 % for waste", cable.getNote());
        // 13.13 x 2.74 = 35.9762
        assertEquals(new BigDecimal("35.98"), cable.getCost());
    }

    /** 12.5 m at 8 min are 100 min, 1.6667 h; at 54.00 an hour 90.0018. */
    @Test
    void chargesLabourByMinutes() {
        QuoteLine run = line(draft(request()).getOptions().get(1), "labour", "task-run-cable");
        assertEquals(new BigDecimal("1.6667"), run.getQuantity());
        assertEquals(new BigDecimal("90.00"), run.getNet());
        assertEquals("task-run-cable: 12.5 × 8 min at 54.00 GBP an hour, 1 September 2026", run.getSource());
    }

    /** Unit 126.00; labour 13.50 + 67.50; testing 40.50 + 15.00; travel and disposal 18.00 + 6.00; together 286.50. */
    @Test
    void addsUpAPlainReplacement() {
        QuoteOption option = draft(request()).getOptions().get(0);
        assertEquals(new BigDecimal("286.50"), option.getNet());
        assertEquals(new BigDecimal("57.30"), option.getTax());
        assertEquals(new BigDecimal("343.80"), option.getTotal());
        assertEquals(2, option.getLeadDays());
        // A quarter of 343.80 is 85.95.
        assertEquals(new BigDecimal("85.95"), option.getPayments().get(0).getAmount());
        assertEquals(new BigDecimal("257.85"), option.getPayments().get(1).getAmount());
        assertEquals("on acceptance", option.getPayments().get(0).getTitle());
    }

    @Test
    void notifiesOnlyWhereACableIsRun() {
        Quote quote = draft(request());
        assertFalse(codes(quote.getOptions().get(0), "testing").contains("notification"));
        assertTrue(codes(quote.getOptions().get(1), "testing").contains("notification"));
    }

    @Test
    void printsSectionsInOrderWithTitles() {
        List<String> keys = draft(
                        QuoteRequest.of(Samples.survey(Confidence.ASSUMED), Samples.assessment(), book, DemoBook.DAY)
                                .discounted(Discount.ofShare(new BigDecimal("0.1"), "")))
                .getOptions()
                .get(1)
                .getSections()
                .stream()
                .map(section -> section.getKey() + "=" + section.getTitle())
                .toList();
        assertEquals(
                List.of(
                        "unit=Unit",
                        "remedial=Remedial work: materials",
                        "labour=Labour",
                        "testing=Testing and certification",
                        "travel=Travel and disposal",
                        "contingency=Contingency",
                        "discount=Discount"),
                keys);
    }

    /** A repair of 10 min on top of 15 + 45 min is 70 min; a visit of at least 120 min lacks 50 min, 45.00. */
    @Test
    void chargesALeastVisit() {
        book.setMinimumMinutes(120);
        Quote quote = draft(request()
                .choosing(List.of(QuoteRequest.PRESENT))
                .adding(QuoteRequest.PRESENT, List.of(RequiredItem.of("part-hose", 1))));
        QuoteOption option = quote.getOptions().get(0);
        QuoteLine rest = line(option, "labour", "minimum-visit");
        assertEquals(new BigDecimal("45.00"), rest.getNet());
        assertEquals("Minimum visit charge (120 minutes), less the labour above", rest.getDescription());
        assertEquals(0, rest.getCost().signum());
        assertEquals(
                "Hose and handset, set (labour)",
                line(option, "labour", "part-hose").getDescription());
        assertTrue(codes(option, "unit").isEmpty());
        assertEquals("present", option.getName());
        assertEquals("h85", option.getHeaterId());
        assertFalse(codes(option, "labour").contains("task-replace-unit"));
    }

    @Test
    void chargesNoLeastVisitAboveIt() {
        assertFalse(codes(draft(request()).getOptions().get(0), "labour").contains("minimum-visit"));
    }

    /**
     * Doubt bears on work and labour: 51.86 for cable, 90.00 to run it, 13.50 and 67.50 for isolating and fitting; clips 12.5 x 0.25 =
     * 3.13, the old cable 25 min = 0.4167 h, 22.50; together 248.49; 5 % are 12.4245.
     */
    @Test
    void addsAContingencyForAConcealedRoute() {
        Survey survey = Samples.survey(Confidence.CONCEALED);
        Quote quote = draft(QuoteRequest.of(survey, Samples.assessment(), book, DemoBook.DAY));
        QuoteLine doubt = line(quote.getOptions().get(1), "contingency", "contingency");
        assertEquals(new BigDecimal("0.05"), doubt.getQuantity());
        assertEquals(new BigDecimal("248.49"), doubt.getUnitPrice());
        assertEquals(new BigDecimal("12.42"), doubt.getNet());
        assertNull(doubt.getCost());
        assertTrue(quote.getAssumptions()
                .contains("How the cable “board to shower” runs is hidden (taken as installed by method C)"));
    }

    @Test
    void addsAContingencyForACheckTooCloseToCall() {
        Assessment assessment = Samples.assessment();
        Finding close = Samples.finding("pressure.switch", Outcome.TOO_CLOSE, "Close.");
        close.setKind(FindingClass.SAFETY);
        assessment.getOptions().get(1).getFindings().add(close);
        Quote quote = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
        assertEquals(List.of("contingency"), codes(quote.getOptions().get(0), "contingency"));
        assertTrue(codes(quote.getOptions().get(1), "contingency").isEmpty());
        assertTrue(quote.getTerms().stream().anyMatch(term -> term.contains("contingency")));
    }

    /** Whether a shower gives 2.9 or 3.1 L/min in winter changes no work: nobody pays for that doubt, but it is told. */
    @Test
    void addsNoContingencyForADoubtThatBringsNoWork() {
        for (FindingClass comfort : List.of(FindingClass.PERFORMANCE, FindingClass.ADVICE)) {
            Assessment assessment = Samples.assessment();
            Finding close = Samples.finding("flow.winter", Outcome.TOO_CLOSE, "Close.");
            close.setKind(comfort);
            assessment.getOptions().get(1).getFindings().add(close);
            Quote quote = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
            assertTrue(codes(quote.getOptions().get(0), "contingency").isEmpty());
            assertTrue(quote.getAssumptions().stream().anyMatch(doubt -> doubt.contains("flow.winter")));
            assertTrue(quote.getTerms().stream().noneMatch(term -> term.contains("contingency")));
        }
    }

    @Test
    void addsNoContingencyWithoutDoubtOrWithoutARule() {
        assertTrue(codes(draft(request()).getOptions().get(0), "contingency").isEmpty());
        book.setContingency(null);
        Survey survey = Samples.survey(Confidence.CONCEALED);
        Quote quote = draft(QuoteRequest.of(survey, Samples.assessment(), book, DemoBook.DAY));
        assertTrue(codes(quote.getOptions().get(0), "contingency").isEmpty());
    }

    @Test
    void namesEveryMissingCodeAndWhoAsksForIt() {
        Assessment assessment = Samples.assessment();
        assessment.getOptions().get(2).getRemedies().add(Samples.remedy("odd", "Odd", "no-such", "1", "nor-this", "2"));
        book.getItems().removeIf(item -> item.getCode().equals("travel"));
        QuoteException missing = trouble(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
        assertEquals(
                "the price book “Demonstration prices (invented)” lacks travel (standard-work), no-such (odd), nor-this"
                        + " (odd), asked for in the options h75, h95",
                missing.wrong(Locale.ENGLISH));
        assertTrue(missing.right(Locale.ENGLISH).contains("0.00"));
    }

    @Test
    void listsWhatIsOnEnquiryAndPricesItAtNothing() {
        Assessment assessment = Samples.assessment();
        OptionAssessment option = assessment.getOptions().get(1);
        option.getRemedies().add(Samples.remedy("fuse", "Larger service fuse", "operator-fuse", "1"));
        Remedy pipe = Samples.remedy("trench", "Deeper trench", "pipe-15", "0");
        pipe.setEnquiry(true);
        pipe.setLeadDays(40);
        option.getRemedies().add(pipe);
        List<QuoteOption> quoted =
                draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY)).getOptions();
        assertEquals("h95", quoted.get(0).getName(), "what has no price yet we do not recommend it");
        QuoteOption written = quoted.get(1);
        assertEquals(
                List.of(
                        "Larger service fuse by the network operator: price on request",
                        "Deeper trench: price on request"),
                written.getEnquiries());
        assertEquals(new BigDecimal("286.50"), written.getNet());
        assertEquals(40, written.getLeadDays());
        assertTrue(codes(written, "remedial").isEmpty());
    }

    /** 4 m and 5 % are 4.2 m, sold by 3 m: 6 m. Two remedies that ask for 2 m each are one line. */
    @Test
    void sellsWholeLengthsOfWhatSeveralRemediesNeedTogether() {
        Assessment assessment = Samples.assessment();
        OptionAssessment option = assessment.getOptions().get(1);
        option.getRemedies().add(Samples.remedy("one", "One", "pipe-15", "2"));
        option.getRemedies().add(Samples.remedy("two", "Two", "pipe-15", "2"));
        QuoteLine pipe = line(
                draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY))
                        .getOptions()
                        .get(0),
                "remedial",
                "pipe-15");
        assertEquals(new BigDecimal("6"), pipe.getQuantity());
        assertEquals("one, two", pipe.getReason());
        assertEquals("4 m built in, 5 % for waste, sold in lengths of 3 m", pipe.getNote());
    }

    @Test
    void chargesOncePerJobWhatIsSoldByTheVisit() {
        Assessment assessment = Samples.assessment();
        OptionAssessment option = assessment.getOptions().get(1);
        option.getRemedies().add(Samples.remedy("one", "One", "task-isolate", "1", "certificate", "1"));
        option.getRemedies().add(Samples.remedy("two", "Two", "task-isolate", "1"));
        QuoteOption written = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY))
                .getOptions()
                .get(0);
        assertEquals(
                new BigDecimal("0.25"), line(written, "labour", "task-isolate").getQuantity());
        assertEquals(
                "one, two, standard-work",
                line(written, "labour", "task-isolate").getReason());
        assertEquals(new BigDecimal("286.50"), written.getNet());
    }

    @Test
    void takesTheHeatersOwnPriceItem() {
        Assessment assessment = Samples.assessment();
        assessment.getOptions().get(1).setPriceItem("h105s");
        QuoteOption written = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY))
                .getOptions()
                .get(0);
        assertEquals("h105s", line(written, "unit", "h105s").getCode());
        assertEquals("h75", written.getName());
    }

    @Test
    void dividesADiscountOverTaxClasses() {
        book.getItems().stream()
                .filter(item -> item.getCode().equals("h75"))
                .forEach(item -> item.setTaxClass("reduced"));
        QuoteOption option = draft(request().discounted(Discount.of(Money.parse("GBP 10.00"), "Loyal customer")))
                .getOptions()
                .get(0);
        // 126.00 reduced and 160.50 standard: 10.00 x 126.00 / 286.50 = 4.3979..., 10.00 x 160.50 / 286.50 = 5.6020...
        List<BigDecimal> parts = option.getSections().get(option.getSections().size() - 1).getLines().stream()
                .map(QuoteLine::getNet)
                .toList();
        assertEquals(List.of(new BigDecimal("-5.60"), new BigDecimal("-4.40")), parts);
        assertEquals(new BigDecimal("276.50"), option.getNet());
        // 20 % of 160.50 is 32.10 line by line, less 1.12; 5 % of 126.00 is 6.30, less 0.22.
        assertEquals(new BigDecimal("37.06"), option.getTax());
        assertEquals("Loyal customer", line(option, "discount", "discount").getDescription());
    }

    @Test
    void refusesADiscountAboveTheSumOrInAnotherCurrency() {
        assertEquals(
                "discountTooLarge",
                trouble(request().discounted(Discount.of(Money.parse("GBP 286.51"), "")))
                        .key());
        assertEquals(
                "discountCurrency",
                trouble(request().discounted(Discount.of(Money.parse("EUR 1.00"), "")))
                        .key());
        assertThrows(IllegalArgumentException.class, () -> Discount.ofShare(new BigDecimal("1.01"), ""));
        assertThrows(IllegalArgumentException.class, () -> Discount.of(Money.parse("GBP -1.00"), ""));
    }

    @Test
    void leavesTheTaxToTheCustomerWhereHeAccountsForIt() {
        book.getItems().forEach(item -> item.setTaxClass("customer-accounts"));
        book.setLabourTaxClass("customer-accounts");
        QuoteOption option = draft(request()).getOptions().get(0);
        assertEquals(new BigDecimal("0.00"), option.getTax());
        assertEquals(new BigDecimal("286.50"), option.getTotal());
        assertEquals(new BigDecimal("57.30"), option.getTaxes().get(0).getCustomerAccounts());
        assertEquals(0, option.getTaxes().get(0).getRate().signum());
        assertEquals(
                "Customer accounts for the tax at 20 %",
                option.getTaxes().get(0).getLabel());
    }

    @Test
    void takesTheTaxRateOfTheDay() {
        book.getTaxRates().get(0).setUntil(LocalDate.of(2026, 11, 24));
        QuoteException none = trouble(request());
        assertEquals("the price book has no rate of the tax class standard on 2026-11-25", none.wrong(Locale.ENGLISH));
        Quote before = draft(QuoteRequest.of(seen, Samples.assessment(), book, DemoBook.DAY.minusDays(1)));
        assertEquals(new BigDecimal("57.30"), before.getOptions().get(0).getTax());
    }

    @Test
    void aComingTaxRateCountsFromItsFirstDay() {
        TaxRate coming = PricebookFactory.eINSTANCE.createTaxRate();
        coming.setTaxClass("standard");
        coming.setRate(Ratio.valueOf("25 %"));
        coming.setFrom(DemoBook.DAY);
        book.getTaxRates().get(0).setUntil(DemoBook.DAY.minusDays(1));
        book.getTaxRates().add(coming);
        TaxSum sum = draft(request()).getOptions().get(0).getTaxes().get(0);
        assertEquals("standard", sum.getTaxClass());
        assertEquals(0, new BigDecimal("0.25").compareTo(sum.getRate()));
        assertTrue(sum.getLabel().contains("25"), sum.getLabel());
        coming.setFrom(DemoBook.DAY.plusDays(1));
        book.getTaxRates().get(0).setUntil(DemoBook.DAY);
        assertEquals(
                "Standard rate 20 %",
                draft(request()).getOptions().get(0).getTaxes().get(0).getLabel());
    }

    /** What a supplier holds until a day is priced on that day, and on request from the next. */
    @Test
    void aPriceThatNoLongerHoldsIsOnRequest() {
        PriceItem heater = book.getItems().stream()
                .filter(item -> item.getCode().equals("h75"))
                .findFirst()
                .orElseThrow();
        heater.setHoldsUntil(DemoBook.DAY);
        assertTrue(draft(request()).getOptions().get(0).getEnquiries().isEmpty());
        heater.setHoldsUntil(DemoBook.DAY.minusDays(1));
        QuoteOption lapsed =
                draft(request().choosing(List.of("h75"))).getOptions().get(0);
        assertEquals(1, lapsed.getEnquiries().size(), lapsed.getEnquiries().toString());
    }

    /** Who asks for 7.5 kW and would need a tank and pump for it (595.00 and 5 h) is better served by 9.5 kW with a new cable. */
    @Test
    void recommendsMoreForLessOverTheNearest() {
        Survey survey = Samples.survey(Confidence.SEEN);
        survey.setRequestedPower(Power.valueOf("7.5 kW"));
        Assessment assessment = Samples.assessment();
        Quote near = draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
        assertEquals("h75", near.getOptions().get(0).getName());
        assertTrue(near.getSummary().contains("it comes closest to the power"), near.getSummary());
        OptionAssessment weaker = assessment.getOptions().get(1);
        weaker.setVerdict(Verdict.SUITS_WITH_WORK);
        weaker.getRemedies().add(Samples.remedy("pump", "Tank and pump", "break-tank-pump", "1"));
        Quote more = draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
        assertEquals("h95", more.getOptions().get(0).getName());
        assertTrue(more.getSummary().contains("it gives at least the power that you asked for"), more.getSummary());
        survey.setRequestedPower(Power.valueOf("9.5 kW"));
        weaker.getRemedies().clear();
        Quote less = draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
        assertEquals("h95", less.getOptions().get(0).getName(), "one that is too weak is no bargain");
        weaker.setPowerKw(9.2);
        Quote little = draft(QuoteRequest.of(survey, assessment, book, DemoBook.DAY));
        assertEquals("h95", little.getOptions().get(0).getName(), "nor is one that is a little too weak");
    }

    @Test
    void refusesABookThatDoesNotHoldYet() {
        assertEquals(
                "bookDate",
                trouble(QuoteRequest.of(seen, Samples.assessment(), book, LocalDate.of(2026, 8, 31)))
                        .key());
    }

    @Test
    void writesTheHead() {
        Quote quote = draft(request());
        assertNull(quote.getNumber());
        assertEquals(1, quote.getRevision());
        assertEquals(QuoteState.DRAFT, quote.getState());
        assertEquals(DemoBook.DAY, quote.getDate());
        assertEquals(LocalDate.of(2026, 12, 25), quote.getValidUntil());
        assertEquals("GBP", quote.getCurrency());
        assertEquals("line", quote.getRounding());
        assertEquals("Demonstration prices (invented)", quote.getBookTitle());
        assertEquals(
                "We recommend option 1, Heater 7.5 kW, two-element: of those that suit, it costs least over 10 years with one"
                        + " shower a day, price and electricity together. We checked 4 heaters against the water and the"
                        + " electricity of your house: 2 of them suit. One does not suit, with or without work. Of one we"
                        + " cannot say yet whether it suits: something still has to be measured.\nIt goes cold when the"
                        + " kitchen tap opens.",
                quote.getSummary());
    }

    /** Nobody reads "it suits" over a list of work that has to be done first. */
    @Test
    void summarySaysWhereNoneSuitsWithoutWork() {
        QuoteRequest request = request();
        request.assessment().getOptions().stream()
                .filter(option -> option.getVerdict() == Verdict.SUITS)
                .forEach(option -> option.setVerdict(Verdict.SUITS_WITH_WORK));
        String summary = draft(request).getSummary();
        assertTrue(summary.contains("2 of them suit once the work is done."), summary);
    }

    @Test
    void saysWhatIsAssumedExcludedAgreedAndDangerous() {
        seen.getSite().setTexturedCoating(true);
        seen.getSite().setLoftAccess("hatch above the landing");
        seen.setCustomer(twinfeed.model.survey.SurveyFactory.eINSTANCE.createCustomer());
        seen.getCustomer().setVulnerable(true);
        book.getTerms().add("Keys from the office.");
        book.getExclusions().add("Parking charges.");
        Quote quote = draft(request());
        String terms = String.join("\n", quote.getTerms());
        assertTrue(quote.getAssumptions().contains("Winter intake taken as 5 °C (common practice)"));
        for (String word : List.of(
                "25 December 2026",
                "line by line",
                "building authority",
                "certificate",
                "another way than we thought",
                "hatch above the landing",
                "asbestos",
                "14 days: check your local law",
                "Keys from the office.")) {
            assertTrue(terms.contains(word), word);
        }
        assertTrue(quote.getExclusions().contains("Parking charges."));
        String cautions = String.join("\n", quote.getCautions());
        for (String word : List.of(
                "Electricity can kill",
                "scalds",
                "scalds more easily",
                "licensed practice come first",
                "follow Invented wiring rules;",
                "current edition of the wiring rules")) {
            assertTrue(cautions.contains(word), word);
        }
    }

    @Test
    void tellsHowHotItGetsWhenATapOpens() {
        Assessment assessment = EcoreUtil.copy(request().assessment());
        assertFalse(String.join(" ", draft(request()).getCautions()).contains("another tap"));
        for (OptionAssessment option : assessment.getOptions()) {
            Finding advice = Samples.finding("pressure.scald", Outcome.FAILS, "It scalds.");
            advice.setTopic(CheckTopic.SCALDING);
            advice.setValue(66.4);
            advice.setLimit(44.0);
            (option.getAfterWork().isEmpty() ? option.getFindings() : option.getAfterWork()).add(advice);
        }
        Quote quote = draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY));
        String caution = quote.getCautions().stream()
                .filter(one -> one.contains("another tap"))
                .findFirst()
                .orElseThrow();
        for (QuoteOption option : quote.getOptions()) {
            assertTrue(caution.contains("66 °C with “" + option.getTitle() + "”"), caution);
        }
        assertTrue(caution.contains("From 44 °C water can scald"), caution);
    }

    @Test
    void tellsOfFiguresFromTablesByTheirNumber() {
        Assessment assessment = EcoreUtil.copy(request().assessment());
        for (String text : List.of("Wall roughness 0.0015 mm", "Loss coefficient 0.3")) {
            var figure = twinfeed.model.assessment.AssessmentFactory.eINSTANCE.createAssumption();
            figure.setText(text);
            figure.setTabulated(true);
            assessment.getAssumptions().add(figure);
        }
        List<String> told =
                draft(QuoteRequest.of(seen, assessment, book, DemoBook.DAY)).getAssumptions();
        assertTrue(told.contains("Winter intake taken as 5 °C (common practice)"));
        assertTrue(
                told.stream().anyMatch(one -> one.contains("Usual figures") && one.contains(": 2,")), told.toString());
        assertFalse(told.stream().anyMatch(one -> one.contains("roughness")), told.toString());
    }

    @Test
    void saysNothingOfCoatingsWhereThereAreNone() {
        seen.getSite().setTexturedCoating(false);
        assertFalse(String.join(" ", draft(request()).getTerms()).contains("coating"));
    }

    @Test
    void changesNothingItIsGivenAndRepeatsItself() {
        QuoteRequest request = request();
        Assessment assessment = EcoreUtil.copy(request.assessment());
        PriceBook before = EcoreUtil.copy(book);
        Quote first = draft(request);
        assertTrue(EcoreUtil.equals(first, draft(request)));
        assertTrue(EcoreUtil.equals(assessment, request.assessment()));
        assertTrue(EcoreUtil.equals(before, book));
    }

    /** The contingency's cost is not known; of the rest 286.50 less 88.00 + 7.38 + 36.88 + 22.13 + 0 + 9.00 + 2.00. */
    @Test
    void knowsItsMarginForTheFirm() {
        QuoteOption option = draft(
                        QuoteRequest.of(Samples.survey(Confidence.CONCEALED), Samples.assessment(), book, DemoBook.DAY))
                .getOptions()
                .get(0);
        OptionMargin margin = OptionMargin.of(option, CurrencyUnit.GBP);
        assertEquals(Money.parse("GBP 165.39"), margin.cost());
        assertEquals(Money.parse("GBP 121.11"), margin.amount());
        assertEquals(new BigDecimal("0.4227"), margin.share().orElseThrow());
        assertEquals(List.of("contingency"), margin.unknown());
    }

    /** 126 and 2.5 h at 54 and the rest in yen, which has no smaller unit: 15 min at 54 are 13.5, rounded 14. */
    @Test
    void roundsToTheCurrencysOwnUnit() {
        book.setCurrency("JPY");
        QuoteOption option = draft(request()).getOptions().get(0);
        assertEquals(
                new BigDecimal("14"), line(option, "labour", "task-isolate").getNet());
        assertEquals(new BigDecimal("3"), line(option, "labour", "task-isolate").getTax());
        assertEquals(0, option.getTotal().scale());
    }

    /** Handworked: 120.00 / (1 - 0.28) = 166.666...; 5.40 x 1.6 = 8.64. */
    @Test
    void worksOutPricesByMarginAndMarkup() {
        Quote quote = draft(
                request().choosing(List.of("h108")).adding("h108", List.of(RequiredItem.of("full-bore-valve", 1))));
        QuoteOption option = quote.getOptions().get(0);
        assertEquals(new BigDecimal("166.67"), line(option, "unit", "h108").getUnitPrice());
        assertEquals(
                new BigDecimal("8.64"),
                line(option, "remedial", "full-bore-valve").getUnitPrice());
        assertEquals("estimator", line(option, "remedial", "full-bore-valve").getReason());
    }

    @Test
    void usesTheBooksMarkupWhereAnItemHasNoRule() {
        book.getItems().get(0).setPrice(null);
        assertEquals("noRule", trouble(request()).key());
        book.setMarkup(twinfeed.units.Ratio.valueOf("17.5 %"));
        // 88.00 x 1.175 = 103.40
        assertEquals(
                new BigDecimal("103.40"),
                line(draft(request()).getOptions().get(0), "unit", "h75").getUnitPrice());
    }

    /** By hand: 9.5 kW for 8 of 60 minutes are 1.2667 kWh, at 0.27 each 0.342. */
    @Test
    void saysWhatTheElectricityOfAShowerCosts() {
        book.setEnergyPrice(new BigDecimal("0.27"));
        Quote quote = draft(request().choosing(List.of("h95")));
        assertEquals(new BigDecimal("0.34"), quote.getOptions().get(0).getShowerCost());
        book.setEnergyPrice(null);
        assertEquals(
                null,
                draft(request().choosing(List.of("h95"))).getOptions().get(0).getShowerCost());
    }
}
