// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/** What of a quote is only an estimate, because readings are missing: nobody can accept that. */
public final class Estimates {
    private Estimates() {}

    /** Whether it is not yet known that the option suits. One that is known not to suit, priced because it was asked for, is no estimate. */
    public static boolean estimate(QuoteOption option) {
        return switch (option.getVerdict()) {
            case CANNOT_TELL, NOT_CHECKED, NOT_AS_IT_IS -> true;
            case SUITS, SUITS_WITH_WORK, DOES_NOT_SUIT -> false;
        };
    }

    /** Whether it has options, and each of them is an estimate. */
    public static boolean estimate(Quote quote) {
        return !quote.getOptions().isEmpty() && quote.getOptions().stream().allMatch(Estimates::estimate);
    }
}
