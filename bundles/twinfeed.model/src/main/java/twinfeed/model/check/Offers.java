// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/** What follows from verdicts for what is offered: what suits, what can be recommended, and what is only an estimate, which nobody can accept. */
public final class Offers {
    private Offers() {}

    /** Whether it is known to suit, as the house is or with work. */
    public static boolean suits(Verdict verdict) {
        return verdict == Verdict.SUITS || verdict == Verdict.SUITS_WITH_WORK;
    }

    /** Whether it is not yet known that it suits, because readings are missing. What is known not to suit is not open. */
    public static boolean open(Verdict verdict) {
        return switch (verdict) {
            case CANNOT_TELL, NOT_CHECKED, NOT_AS_IT_IS -> true;
            case SUITS, SUITS_WITH_WORK, DOES_NOT_SUIT -> false;
        };
    }

    /** Whether an option is known to suit, and at what price. */
    public static boolean recommendable(QuoteOption option) {
        return option.getEnquiries().isEmpty() && suits(option.getVerdict());
    }

    /** Whether an option is only an estimate. One that is known not to suit, priced because it was asked for, is none. */
    public static boolean estimate(QuoteOption option) {
        return open(option.getVerdict());
    }

    /** Whether a quote has options, and each of them is an estimate. */
    public static boolean estimate(Quote quote) {
        return !quote.getOptions().isEmpty() && quote.getOptions().stream().allMatch(Offers::estimate);
    }
}
