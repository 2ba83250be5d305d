// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.quote.IssueGate.Refusal;

/** A number cannot be taken back: a quote that lacks what every quote needs takes none. */
final class IssueGateTest {
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();
    private final Customer customer = SurveyFactory.eINSTANCE.createCustomer();
    private final Site site = SurveyFactory.eINSTANCE.createSite();
    private final PriceBook prices = PricebookFactory.eINSTANCE.createPriceBook();

    IssueGateTest() {
        customer.setName("A. Tenant");
        customer.setAddress("2 Mill Row");
        survey.setCustomer(customer);
        survey.setSite(site);
        prices.setTitle("List of spring");
    }

    private static Quote quote(@Nullable String... totals) {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        Arrays.stream(totals).forEach(total -> {
            QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
            option.setTotal(total == null ? null : new BigDecimal(total));
            quote.getOptions().add(option);
        });
        return quote;
    }

    private List<Refusal> refusals(@Nullable String... totals) {
        return IssueGate.refusals(survey, prices, quote(totals));
    }

    @Test
    void aCompleteQuoteIsIssued() {
        assertEquals(List.of(), refusals("480.00"));
        IssueGate.check(Path.of("house.job"), survey, prices, quote("480.00"));
    }

    @Test
    void somebodyMustBeNamedToWhomItIsAddressed() {
        customer.setName(" ");
        assertEquals(List.of(Refusal.NO_CUSTOMER), refusals("1"));
        customer.setName(null);
        assertEquals(List.of(Refusal.NO_CUSTOMER), refusals("1"));
        survey.setCustomer(null);
        assertEquals(List.of(Refusal.NO_CUSTOMER, Refusal.NO_ADDRESS), refusals("1"));
        site.setAddress("3 Mill Row");
        assertEquals(List.of(Refusal.NO_CUSTOMER), refusals("1"));
    }

    @Test
    void oneAddressIsEnough() {
        customer.setAddress(" ");
        assertEquals(List.of(Refusal.NO_ADDRESS), refusals("1"));
        site.setAddress("3 Mill Row");
        assertEquals(List.of(), refusals("1"));
        survey.setSite(null);
        assertEquals(List.of(Refusal.NO_ADDRESS), refusals("1"));
        customer.setAddress("2 Mill Row");
        assertEquals(List.of(), refusals("1"));
    }

    @Test
    void inventedPricesAreForInventedCustomersOnly() {
        prices.setTitle("Demonstration prices (Invented)");
        assertEquals(List.of(Refusal.DEMONSTRATION_PRICES), refusals("1"));
        customer.setName("A. Tenant (invented)");
        assertEquals(List.of(), refusals("1"));
        prices.setTitle(null);
        assertEquals(List.of(), refusals("1"), "real prices may be tried on an invented house");
    }

    @Test
    void whatIsInventedSaysSo() {
        assertFalse(Demonstration.prices(prices));
        assertFalse(Demonstration.survey(null));
        assertFalse(Demonstration.survey(survey));
        customer.setName(null);
        assertFalse(Demonstration.survey(survey));
        survey.setCustomer(null);
        assertFalse(Demonstration.survey(survey));
    }

    @Test
    void somethingMustBeOfferedAtAPrice() {
        assertEquals(List.of(Refusal.NOTHING_OFFERED), refusals());
        assertEquals(List.of(Refusal.NOTHING_PRICED), refusals((String) null));
        assertEquals(List.of(Refusal.NOTHING_PRICED), refusals("0.00", null));
        assertEquals(List.of(), refusals("0.00", "0.01"));
        assertEquals(List.of(Refusal.NOTHING_PRICED), IssueGate.refusals(survey, prices, null));
    }

    @Test
    void withoutPricesThatAloneIsSaid() {
        assertEquals(List.of(Refusal.NO_PRICES), IssueGate.refusals(survey, null, quote()));
        assertEquals(List.of(Refusal.NO_PRICES), IssueGate.refusals(survey, null, null));
    }

    @Test
    void allThatIsMissingIsSaidAtOnce() {
        customer.setName(null);
        customer.setAddress(null);
        InputException refused = assertThrows(
                InputException.class, () -> IssueGate.check(Path.of("house.job"), survey, prices, quote()));
        assertEquals(
                List.of("survey.customer.name", "survey.customer.address", ""),
                refused.problems().stream().map(InputProblem::element).toList());
        assertTrue(refused.problems().stream().allMatch(each -> each.file().equals("house.job")));
        assertTrue(refused.problems().stream()
                .noneMatch(each -> each.wrong().isBlank() || each.wrong().contains("issue.")));
        InputException unpriced = assertThrows(
                InputException.class, () -> IssueGate.check(Path.of("house.job"), survey, prices, quote("0")));
        assertFalse(
                unpriced.problems().stream().anyMatch(each -> each.wrong()
                        .equals(refused.problems().get(2).wrong())),
                "nothing offered is not the same as nothing priced");
    }

    @Test
    void theWindowHasASentenceForEach() {
        assertEquals(
                List.of("noCustomer", "noAddress", "noPrices", "demonstrationPrices", "nothingPriced", "nothingPriced"),
                Arrays.stream(Refusal.values()).map(Refusal::key).toList());
    }
}
