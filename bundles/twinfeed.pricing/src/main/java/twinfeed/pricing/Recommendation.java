// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.units.Power;

/**
 * Which option is recommended, and why. Only one that is known to suit, and at what price, can be.
 *
 * @param option the option
 * @param reason why
 * @param over whether it is recommended, for its cost over the years, over a repair that costs less today and gives what was asked for as well
 */
record Recommendation(QuoteOption option, Reason reason, boolean over) {
    /** A difference of power that nobody asks about, W. */
    private static final double NO_POWER_W = 1;

    /** Why. */
    enum Reason {
        /** The estimator named it first. */
        CHOSEN,
        /** It is nearest to the power asked for. */
        REQUEST,
        /** It is nearest to the power asked for of those whose whole price is known; one that is nearer waits for a price. */
        REQUEST_OF_KNOWN,
        /** It gives at least the power asked for, and costs less than the one nearest to it. */
        MORE_FOR_LESS,
        /** It costs least over the years, electricity included. */
        YEARS,
        /** It costs least to buy. */
        CHEAPEST,
        /** With what may fail later the unit that stays costs least. */
        REPAIR
    }

    /** Of a quote whose options stand in the order of these assessments. */
    static Optional<Recommendation> of(QuoteRequest request, Quote quote, List<OptionAssessment> assessed) {
        if (!request.chosen().isEmpty()) {
            return quote.getOptions().stream()
                    .findFirst()
                    .filter(Offers::recommendable)
                    .map(first -> new Recommendation(first, Reason.CHOSEN, false));
        }
        List<QuoteOption> known =
                quote.getOptions().stream().filter(Offers::recommendable).toList();
        List<QuoteOption> fresh =
                known.stream().filter(option -> !Offers.stays(option)).toList();
        ToDoubleFunction<QuoteOption> distanceFromRequest = option ->
                OptionChoice.distanceFromRequest(assessed.get(quote.getOptions().indexOf(option)), request.survey());
        List<QuoteOption> waiting = quote.getOptions().stream()
                .filter(option -> Offers.suits(option.getVerdict()) && !Offers.recommendable(option))
                .toList();
        Power asked = request.survey().getRequestedPower();
        Optional<Recommendation> nearest =
                asked == null ? cheapest(fresh) : nearest(fresh, waiting, distanceFromRequest);
        double askedW = asked == null ? 0 : asked.si();
        Predicate<QuoteOption> enough = option -> {
            Double kilowatts = assessed.get(quote.getOptions().indexOf(option)).getPowerKw();
            return kilowatts != null && kilowatts * 1000 >= askedW - NO_POWER_W;
        };
        Optional<Recommendation> replacement = nearest.map(best -> moreForLess(best, fresh, enough));
        Optional<QuoteOption> kept = known.stream().filter(Offers::stays).findFirst();
        FaultReport.@Nullable Repair repair = request.faults().repair();
        if (kept.isEmpty() || repair == null) {
            return replacement;
        }
        boolean asNear = nearest.map(best -> distanceFromRequest.applyAsDouble(kept.get())
                        <= distanceFromRequest.applyAsDouble(best.option()) + NO_POWER_W)
                .orElse(true);
        boolean better = replacement.isEmpty() || (asNear && cheaper(kept.get(), fresh, repair));
        return better
                ? Optional.of(new Recommendation(kept.get(), Reason.REPAIR, false))
                : replacement.map(best -> new Recommendation(
                        best.option(),
                        best.reason(),
                        asNear && kept.get().getNet().compareTo(best.option().getNet()) < 0));
    }

    /** The nearest to the power asked for; of several the one that needs least. */
    private static Optional<Recommendation> nearest(
            List<QuoteOption> fresh, List<QuoteOption> waiting, ToDoubleFunction<QuoteOption> distanceFromRequest) {
        return fresh.stream()
                .min(Comparator.comparingDouble(distanceFromRequest))
                .map(best -> {
                    double distance = distanceFromRequest.applyAsDouble(best);
                    boolean nearerOneWaits = waiting.stream()
                            .anyMatch(option -> distanceFromRequest.applyAsDouble(option) < distance - NO_POWER_W);
                    return new Recommendation(best, nearerOneWaits ? Reason.REQUEST_OF_KNOWN : Reason.REQUEST, false);
                });
    }

    /** Work that the nearest one needs can make it dearer than one that gives more: nobody pays more for less. */
    private static Recommendation moreForLess(
            Recommendation nearest, List<QuoteOption> fresh, Predicate<QuoteOption> enough) {
        if (nearest.reason() != Reason.REQUEST) {
            return nearest;
        }
        return fresh.stream()
                .filter(enough)
                .filter(option -> option.getNet().compareTo(nearest.option().getNet()) < 0)
                .min(Comparator.comparing(QuoteOption::getNet))
                .map(option -> new Recommendation(option, Reason.MORE_FOR_LESS, false))
                .orElse(nearest);
    }

    private static Optional<Recommendation> cheapest(List<QuoteOption> fresh) {
        Reason reason = RunningCost.known(fresh) ? Reason.YEARS : Reason.CHEAPEST;
        return fresh.stream().min(RunningCost.order(fresh)).map(best -> new Recommendation(best, reason, false));
    }

    /** Whether the unit that stays costs less than every new one, what may fail later counted on both sides. */
    private static boolean cheaper(QuoteOption kept, List<QuoteOption> fresh, FaultReport.Repair repair) {
        BigDecimal cost = kept.getNet().add(repair.laterKept());
        return fresh.stream().allMatch(option -> cost.compareTo(option.getNet().add(repair.laterNew())) < 0);
    }
}
