// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.FaultPart;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.FaultReport;
import twinfeed.pricing.RemedyPrice;
import twinfeed.pricing.RemedyPrices;

/** What visits cost by a price book, without tax: travel and isolation are part of the item of the visit. */
public final class VisitPrices {
    private static final int MINUTES_PER_HOUR = 60;

    private final PriceBook book;
    private final RemedyPrices prices;
    private final Set<String> missing = new LinkedHashSet<>();

    /**
     * By a price book as it is on a day.
     *
     * @throws twinfeed.pricing.QuoteException if the book has no labour rate
     */
    public VisitPrices(PriceBook book, LocalDate date) {
        this.book = book;
        this.prices = RemedyPrices.withoutReplacement(book, date);
    }

    /** Price-book codes of the visit and of every part that may have to be renewed. */
    public static List<String> codes() {
        return Stream.concat(
                        Stream.of(FaultReport.Repair.VISIT),
                        FaultData.current().parts().values().stream().flatMap(part -> part.codes().stream()))
                .distinct()
                .toList();
    }

    CurrencyUnit currency() {
        return prices.currency();
    }

    Money none() {
        return Money.zero(currency());
    }

    /** A visit that renews a part. */
    Money renewal(FaultPart part) {
        RemedyPrice price = prices.repair(part.codes());
        missing.addAll(price.missing());
        return price.net();
    }

    /** Whether the book has all that a visit needs that renews a part. */
    boolean known(FaultPart part) {
        return prices.repair(part.codes()).missing().isEmpty();
    }

    /** A visit that renews some part, by how often each fails. */
    Money meanRenewal(FaultData data) {
        Money sum = none();
        double all = 0;
        for (FaultPart part : data.parts().values()) {
            if (!part.codes().isEmpty()) {
                all += part.weight();
            }
        }
        for (FaultPart part : data.parts().values()) {
            if (!part.codes().isEmpty()) {
                sum = sum.plus(times(renewal(part), part.weight() / all));
            }
        }
        return sum;
    }

    /** Labour of some minutes on a visit that is paid for already. */
    Money labour(double minutes) {
        return Money.of(
                currency(),
                book.getLabourRate()
                        .multiply(BigDecimal.valueOf(minutes))
                        .divide(
                                BigDecimal.valueOf(MINUTES_PER_HOUR),
                                currency().getDecimalPlaces(),
                                RoundingMode.HALF_UP));
    }

    /** An expected value, rounded to the currency's places. */
    static Money times(Money amount, double factor) {
        return amount.multipliedBy(BigDecimal.valueOf(factor), RoundingMode.HALF_UP);
    }

    /** Codes that the book lacks, of all that was asked so far. */
    List<String> missing() {
        return List.copyOf(missing);
    }
}
