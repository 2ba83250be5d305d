// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.Recommendation.Reason;
import twinfeed.units.Power;

/** Which of some options is recommended, by their powers, prices and verdicts alone. */
class RecommendationTest {
    private final Survey survey = Samples.survey(Confidence.SEEN);
    private final Quote quote = QuoteFactory.eINSTANCE.createQuote();
    private final List<OptionAssessment> assessed = new ArrayList<>();
    private FaultReport.Repair repair;

    private QuoteOption option(String name, double powerKw, int net) {
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setName(name);
        option.setVerdict(Verdict.SUITS);
        option.setNet(new BigDecimal(net));
        option.setTotal(new BigDecimal(net));
        option.setShowerCost(new BigDecimal("0.10"));
        quote.getOptions().add(option);
        assessed.add(Samples.option(name, name, powerKw, Verdict.SUITS));
        return option;
    }

    private void asked(String power) {
        survey.setRequestedPower(Power.valueOf(power));
    }

    private Optional<Recommendation> recommended(List<String> chosen) {
        FaultReport faults = repair == null ? FaultReport.NONE : new FaultReport(List.of(), null, repair, null);
        QuoteRequest request = QuoteRequest.of(survey, Samples.assessment(), DemoBook.read(), DemoBook.DAY)
                .choosing(chosen)
                .reporting(faults);
        return Recommendation.of(request, quote, assessed);
    }

    private void assertRecommended(String name, Reason reason) {
        Recommendation found = recommended(List.of()).orElseThrow();
        assertEquals(name + " " + reason, found.option().getName() + " " + found.reason());
    }

    @Test
    void whatTheEstimatorNamesFirstIsRecommendedIfItSuitsAtAKnownPrice() {
        QuoteOption first = option("first", 9, 900);
        option("second", 8, 100);
        Recommendation chosen = recommended(List.of("first")).orElseThrow();
        assertEquals(first, chosen.option());
        assertEquals(Reason.CHOSEN, chosen.reason());
        assertFalse(chosen.over());
        first.getEnquiries().add("A fuse: price on request");
        assertTrue(recommended(List.of("first")).isEmpty());
    }

    @Test
    void theNearestToThePowerAskedForIsRecommended() {
        asked("9 kW");
        option("weak", 8, 500);
        option("near", 8.5, 600);
        assertRecommended("near", Reason.REQUEST);
    }

    /** One of no other power, or a watt nearer at most, is no reason to wait; nor is one that does not suit. */
    @Test
    void oneThatIsNearerAndWaitsForAPriceIsTold() {
        asked("9 kW");
        option("near", 8, 500);
        QuoteOption waiting = option("waiting", 8, 700);
        waiting.getEnquiries().add("A fuse: price on request");
        assertRecommended("near", Reason.REQUEST);
        assessed.get(1).setPowerKw(9.999);
        assertRecommended("near", Reason.REQUEST);
        assessed.get(1).setPowerKw(9.5);
        assertRecommended("near", Reason.REQUEST_OF_KNOWN);
        waiting.setVerdict(Verdict.DOES_NOT_SUIT);
        assertRecommended("near", Reason.REQUEST);
    }

    @Test
    void nobodyPaysMoreForLess() {
        asked("9 kW");
        option("near", 9, 600);
        QuoteOption other = option("other", 10.5, 600);
        assertRecommended("near", Reason.REQUEST);
        other.setNet(new BigDecimal("599.99"));
        assertRecommended("other", Reason.MORE_FOR_LESS);
        assessed.get(1).setPowerKw(8.999);
        assertRecommended("other", Reason.MORE_FOR_LESS);
        assessed.get(1).setPowerKw(8.99);
        assertRecommended("near", Reason.REQUEST);
    }

    /** A shower a day for ten years is 3,650 showers: 200 and 365 of electricity are less than 100 and 1,825. */
    @Test
    void withoutARequestTheCheapestIsRecommendedOverTheYearsIfElectricityIsKnown() {
        QuoteOption cheap = option("cheap", 9, 100);
        cheap.setShowerCost(new BigDecimal("0.50"));
        option("sparing", 9, 200);
        assertRecommended("sparing", Reason.YEARS);
        cheap.setShowerCost(null);
        assertRecommended("cheap", Reason.CHEAPEST);
    }

    private void repair(String laterKept, String laterNew) {
        repair = new FaultReport.Repair(
                "elements", "", List.of(), new BigDecimal(laterKept), new BigDecimal(laterNew), 8);
    }

    @Test
    void aRepairThatCostsLessWithWhatMayFollowIsRecommended() {
        asked("9 kW");
        option("present", 9, 300);
        option("new", 9, 500);
        repair("250", "50");
        assertRecommended("new", Reason.REQUEST);
        assertTrue(recommended(List.of()).orElseThrow().over(), "it is dearer today");
        repair("249.99", "50");
        assertRecommended("present", Reason.REPAIR);
        repair("900", "0");
        quote.getOptions().get(0).setNet(new BigDecimal(500));
        assertFalse(recommended(List.of()).orElseThrow().over(), "as dear today");
    }

    /** A watt farther from what was asked for is as near; two are not. */
    @Test
    void aRepairIsRecommendedOnlyIfItIsAsNearToThePowerAskedFor() {
        asked("9 kW");
        option("present", 9.001, 300);
        option("new", 9, 500);
        repair("0", "0");
        assertRecommended("present", Reason.REPAIR);
        assessed.get(0).setPowerKw(8.998);
        assertRecommended("new", Reason.REQUEST);
        assertFalse(recommended(List.of()).orElseThrow().over());
    }
}
