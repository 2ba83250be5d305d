// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.office;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * How an office's quotes are answered. A quote that was superseded counts by its next revision, and one that is open counts not yet.
 *
 * @param answered how many were accepted, declined or have lapsed
 * @param accepted how many of these were accepted
 * @param medianDays days from the date of the quote to the customer's answer, the median of those accepted or declined; empty without any
 */
public record OfficeRates(int answered, int accepted, OptionalDouble medianDays) {
    /**
     * Counts.
     *
     * @param today the day on which quotes hold or have lapsed
     */
    public static OfficeRates of(OfficeFolder office, LocalDate today) {
        int answered = 0;
        int accepted = 0;
        List<Long> days = new ArrayList<>();
        for (IssuedQuote each : office.quotes()) {
            QuoteState state = each.stateOn(today);
            boolean lapsed = state == QuoteState.LAPSED && !office.revised(each);
            boolean declined = state == QuoteState.DECLINED && !office.revised(each);
            if (state == QuoteState.ACCEPTED || declined || lapsed) {
                answered++;
            }
            if (state == QuoteState.ACCEPTED) {
                accepted++;
            }
            Quote quote = each.quote();
            if ((state == QuoteState.ACCEPTED || declined) && quote.getDecidedOn() != null) {
                days.add(ChronoUnit.DAYS.between(quote.getDate(), quote.getDecidedOn()));
            }
        }
        return new OfficeRates(answered, accepted, median(days));
    }

    private static OptionalDouble median(List<Long> days) {
        if (days.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<Long> sorted = days.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return OptionalDouble.of(
                sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2.0);
    }
}
