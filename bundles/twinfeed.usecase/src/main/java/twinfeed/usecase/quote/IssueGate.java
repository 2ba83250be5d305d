// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.refusal.Refusals;

/** What a quote must have before it may go to a customer under a number that cannot be taken back. */
public final class IssueGate {
    /** Why a quote is not issued. */
    public enum Refusal {
        /** Nobody is named to whom it is addressed. */
        NO_CUSTOMER("noCustomer", "survey.customer.name"),
        /** Neither the customer nor the site has an address. */
        NO_ADDRESS("noAddress", "survey.customer.address"),
        /** No price book is in force for this job. */
        NO_PRICES("noPrices", ""),
        /** The prices are invented, and the customer is not. */
        DEMONSTRATION_PRICES("demonstrationPrices", ""),
        /** No heater is offered. */
        NOTHING_OFFERED("nothingPriced", "") {
            @Override
            String problem() {
                return "nothingOffered";
            }
        },
        /** No option has a price. */
        NOTHING_PRICED("nothingPriced", "");

        private final String key;
        private final String element;

        Refusal(String key, String element) {
            this.key = key;
            this.element = element;
        }

        /** End of the key of the messages that the command line prints. */
        String problem() {
            return key;
        }

        /** End of the key of the sentence that the window says. */
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
    public static List<Refusal> refusals(Survey survey, @Nullable PriceBook prices, @Nullable Quote quote) {
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
        } else if (Demonstration.prices(prices) && !Demonstration.survey(survey)) {
            refusals.add(Refusal.DEMONSTRATION_PRICES);
        }
        if (prices != null && quote != null && quote.getOptions().isEmpty()) {
            refusals.add(Refusal.NOTHING_OFFERED);
        } else if (prices != null && !priced(quote)) {
            refusals.add(Refusal.NOTHING_PRICED);
        }
        return List.copyOf(refusals);
    }

    /**
     * Refuses a quote that must not be issued.
     *
     * @param job the job's file
     * @param survey what was surveyed
     * @param prices the price book
     * @param draft the quote
     * @throws InputException if anything keeps it from being issued; all of it is in its message
     */
    public static void check(Path job, Survey survey, PriceBook prices, Quote draft) {
        List<InputProblem> problems = refusals(survey, prices, draft).stream()
                .map(each -> Refusals.of(job, each.element, "", "issue." + each.problem(), Demonstration.SIGN))
                .toList();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
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
