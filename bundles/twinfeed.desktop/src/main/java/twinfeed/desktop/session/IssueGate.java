// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;

/** What a quote must have before it may go to a customer under a number that cannot be taken back. */
public final class IssueGate {
    /** Why a quote is not issued. */
    public enum Refusal {
        /** Nobody is named to whom it is addressed. */
        NO_CUSTOMER("noCustomer"),
        /** Neither the customer nor the site has an address. */
        NO_ADDRESS("noAddress"),
        /** No price book is in force for this job. */
        NO_PRICES("noPrices"),
        /** The prices are invented, and the customer is not. */
        DEMONSTRATION_PRICES("demonstrationPrices"),
        /** No option has a price. */
        NOTHING_PRICED("nothingPriced");

        private final String key;

        Refusal(String key) {
            this.key = key;
        }

        /** End of the key of the sentence that says it. */
        public String key() {
            return key;
        }
    }

    private IssueGate() {}

    /**
     * Everything that keeps a quote from being issued, in the order in which it is put right; empty if nothing does.
     *
     * @param survey what was surveyed
     * @param prices the price book in force for that survey; null without one
     * @param quote the draft; null if nothing could be priced
     */
    public static List<Refusal> refusals(Survey survey, Desk.@Nullable Prices prices, @Nullable Quote quote) {
        List<Refusal> refusals = new ArrayList<>();
        Customer customer = survey.getCustomer();
        Site site = survey.getSite();
        if (customer == null || blank(customer.getName())) {
            refusals.add(Refusal.NO_CUSTOMER);
        }
        if ((customer == null || blank(customer.getAddress())) && (site == null || blank(site.getAddress()))) {
            refusals.add(Refusal.NO_ADDRESS);
        }
        if (prices == null) {
            refusals.add(Refusal.NO_PRICES);
        } else if (Demonstration.prices(prices.book()) && !Demonstration.survey(survey)) {
            refusals.add(Refusal.DEMONSTRATION_PRICES);
        }
        if (prices != null && !priced(quote)) {
            refusals.add(Refusal.NOTHING_PRICED);
        }
        return List.copyOf(refusals);
    }

    private static boolean priced(@Nullable Quote quote) {
        return quote != null
                && quote.getOptions().stream()
                        .anyMatch(option ->
                                option.getTotal() != null && option.getTotal().compareTo(BigDecimal.ZERO) > 0);
    }

    private static boolean blank(@Nullable String text) {
        return text == null || text.isBlank();
    }
}
