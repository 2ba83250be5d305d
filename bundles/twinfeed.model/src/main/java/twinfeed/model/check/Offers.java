// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import java.util.Optional;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/**
 * What follows from verdicts for what is offered: what suits, what can be recommended, what is only an estimate, which nobody can accept, and
 * what is like the unit that is there.
 */
public final class Offers {
    /** Ratings are told apart by tenths of a kilowatt; half of one, so that rounding decides nothing. */
    private static final double SAME_KW = 0.05;

    private Offers() {}

    /** Name of the option in which the unit that is there stays, repaired or with work on its supplies. */
    public static final String STAYS = "present";

    /** Whether the unit that is there stays in this option. */
    public static boolean stays(QuoteOption option) {
        return STAYS.equals(option.getName());
    }

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

    /** Those among the options that are not known to suit, or are known not to: such a quote is issued for a typed reason only. */
    public static List<QuoteOption> unproven(Quote quote) {
        return quote.getOptions().stream()
                .filter(option -> !suits(option.getVerdict()))
                .toList();
    }

    /** Whether a heater has the rating of the unit that is there; false if either rating is not known. */
    public static boolean sameRating(OptionAssessment present, OptionAssessment heater) {
        return present.getPowerKw() != null
                && heater.getPowerKw() != null
                && Math.abs(present.getPowerKw() - heater.getPowerKw()) < SAME_KW;
    }

    /** The one among these heaters that is most like the unit that is there: the same heater before others of its rating. */
    public static Optional<OptionAssessment> likeForLike(OptionAssessment present, List<OptionAssessment> heaters) {
        List<OptionAssessment> like =
                heaters.stream().filter(heater -> sameRating(present, heater)).toList();
        return like.stream()
                .filter(heater ->
                        heater.getHeaterId() != null && heater.getHeaterId().equals(present.getHeaterId()))
                .findFirst()
                .or(() -> like.stream().findFirst());
    }
}
