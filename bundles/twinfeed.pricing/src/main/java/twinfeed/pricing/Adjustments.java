// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** Lines that follow from other lines: contingency and discount, one for each tax class that they touch. */
final class Adjustments {
    private final PriceList prices;

    Adjustments(PriceList prices) {
        this.prices = prices;
    }

    /** A share of work and labour for doubt. */
    List<PricedLine> contingency(List<PricedLine> lines, BigDecimal share) {
        List<PricedLine> doubtful = lines.stream()
                .filter(line -> line.section().doubtful() && line.kind() != PricedLine.Kind.MINIMUM)
                .toList();
        return byClass(doubtful).entrySet().stream()
                .filter(entry -> entry.getValue().isPositive() && share.signum() > 0)
                .map(entry -> new PricedLine(
                        PricedLine.Kind.CONTINGENCY,
                        Section.CONTINGENCY,
                        "contingency",
                        null,
                        share,
                        entry.getValue().toBigMoney(),
                        Rounding.share(entry.getValue(), share),
                        null,
                        entry.getKey(),
                        null))
                .toList();
    }

    /**
     * A discount, divided over the tax classes in proportion to their sums without a lost penny.
     *
     * @throws QuoteException if it is larger than the sum or in another currency
     */
    List<PricedLine> discount(List<PricedLine> lines, Discount discount) {
        Map<TaxClass, Money> sums = byClass(lines);
        Money net = Money.zero(prices.currency()).plus(sums.values());
        Money reduction = reduction(discount, net);
        if (reduction.isGreaterThan(net)) {
            throw new QuoteException("discountTooLarge", reduction, net);
        }
        if (reduction.isZero()) {
            return List.of();
        }
        List<TaxClass> classes = List.copyOf(sums.keySet());
        List<Money> parts = Allocation.divide(
                reduction, sums.values().stream().map(Money::getAmount).toList());
        return java.util.stream.IntStream.range(0, parts.size())
                .filter(i -> !parts.get(i).isZero())
                .mapToObj(i -> discountLine(classes.get(i), parts.get(i).negated()))
                .toList();
    }

    private Money reduction(Discount discount, Money net) {
        Money amount = discount.amount();
        if (amount == null) {
            BigDecimal share = discount.share() == null ? BigDecimal.ZERO : discount.share();
            return Rounding.share(net, share);
        }
        if (!amount.getCurrencyUnit().equals(prices.currency())) {
            throw new QuoteException("discountCurrency", amount.getCurrencyUnit(), prices.currency());
        }
        return amount;
    }

    private PricedLine discountLine(TaxClass taxClass, Money part) {
        return new PricedLine(
                PricedLine.Kind.DISCOUNT,
                Section.DISCOUNT,
                "discount",
                null,
                BigDecimal.ONE,
                part.toBigMoney(),
                part,
                Money.zero(prices.currency()),
                taxClass,
                null);
    }

    private static Map<TaxClass, Money> byClass(List<PricedLine> lines) {
        Map<TaxClass, Money> sums = new EnumMap<>(TaxClass.class);
        lines.forEach(line -> sums.merge(line.taxClass(), line.net(), Money::plus));
        return sums;
    }
}
