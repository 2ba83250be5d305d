// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.TaxRate;

/** The tax rates of a price book on one day. */
final class TaxTable {
    /**
     * A rate.
     *
     * @param taxClass its class
     * @param rate the rate as a fraction, also where the customer accounts for it
     * @param label what a customer reads; blank if the book has none
     */
    record Rate(TaxClass taxClass, BigDecimal rate, String label) {
        /** The rate that is charged. */
        BigDecimal charged() {
            return taxClass == TaxClass.CUSTOMER_ACCOUNTS ? BigDecimal.ZERO : rate;
        }
    }

    private final Map<TaxClass, Rate> rates = new EnumMap<>(TaxClass.class);
    private final LocalDate date;

    TaxTable(PriceBook book, LocalDate date) {
        this.date = date;
        for (TaxRate rate : book.getTaxRates()) {
            boolean begun = rate.getFrom() == null || !date.isBefore(rate.getFrom());
            boolean ended = rate.getUntil() != null && date.isAfter(rate.getUntil());
            TaxClass taxClass = TaxClass.of(rate.getTaxClass())
                    .orElseThrow(() -> new QuoteException("taxClass", rate.getTaxClass(), TaxClass.keys()));
            if (begun && !ended && rates.put(taxClass, of(taxClass, rate)) != null) {
                throw new QuoteException("twoRates", taxClass.key(), date);
            }
        }
        rates.putIfAbsent(TaxClass.ZERO, new Rate(TaxClass.ZERO, BigDecimal.ZERO, ""));
        rates.putIfAbsent(TaxClass.OUTSIDE, new Rate(TaxClass.OUTSIDE, BigDecimal.ZERO, ""));
    }

    private static Rate of(TaxClass taxClass, TaxRate rate) {
        return new Rate(taxClass, Shares.orZero(rate.getRate()), Objects.requireNonNullElse(rate.getLabel(), ""));
    }

    /**
     * The rate of a class.
     *
     * @throws QuoteException if the book has none for that day
     */
    Rate rate(TaxClass taxClass) {
        Rate rate = rates.get(taxClass);
        if (rate == null) {
            throw new QuoteException("noRate", taxClass.key(), date);
        }
        return rate;
    }
}
