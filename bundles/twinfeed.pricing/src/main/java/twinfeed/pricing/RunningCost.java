// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import twinfeed.model.quote.QuoteOption;

/** What an option costs over the years: its price and the electricity of a shower a day. */
final class RunningCost {
    /** Years over which options are compared; common practice for the life of a shower. */
    static final int YEARS = 10;

    private static final int DAYS_A_YEAR = 365;

    private RunningCost() {}

    /** Whether the price of electricity is known for each of them, so that they can be compared over the years. */
    static boolean known(List<QuoteOption> options) {
        return options.stream().allMatch(option -> option.getShowerCost() != null);
    }

    /** The cheapest first: over the years if the electricity of all is known, otherwise by what is to be paid. */
    static Comparator<QuoteOption> order(List<QuoteOption> options) {
        return Comparator.comparing(known(options) ? RunningCost::of : QuoteOption::getTotal);
    }

    /** Price and electricity over the years, in whole units of the currency: it is no exact figure. */
    static BigDecimal of(QuoteOption option) {
        BigDecimal showers = BigDecimal.valueOf((long) YEARS * DAYS_A_YEAR);
        return option.getTotal().add(option.getShowerCost().multiply(showers)).setScale(0, RoundingMode.HALF_UP);
    }
}
