// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** Turns what a job needs into lines: material, labour, and the least labour of a visit. */
final class Pricer {
    /** Hours are printed to 4 decimals, a third of a second: quantity times price then gives the line to the penny. */
    private static final int HOUR_SCALE = 4;

    private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

    private final PriceList prices;

    Pricer(PriceList prices) {
        this.prices = prices;
    }

    /** The lines; items on enquiry have none. */
    List<PricedLine> lines(BillOfQuantities asks) {
        List<PricedLine> lines = new ArrayList<>();
        for (BillItem ask : asks.all()) {
            PricedItem item = ask.item();
            BigMoney price = item.price();
            if (ask.quantity().signum() == 0) {
                continue;
            }
            if (price != null) {
                lines.add(material(ask, price));
            }
            if (item.minutes().signum() > 0) {
                lines.add(labour(ask, item));
            }
        }
        addMinimum(lines);
        return lines;
    }

    private static PricedLine material(BillItem ask, BigMoney price) {
        PricedItem item = ask.item();
        BigDecimal bought = item.bought(ask.quantity());
        BigMoney cost = item.cost();
        return new PricedLine(
                PricedLine.Kind.ITEM,
                ask.section(),
                item.code(),
                item,
                bought,
                price,
                Rounding.times(price, bought),
                cost == null ? null : Rounding.times(cost, bought),
                item.taxClass(),
                ask);
    }

    private PricedLine labour(BillItem ask, PricedItem item) {
        BigDecimal hours = hours(item.minutes().multiply(ask.quantity()));
        BigMoney cost = prices.labourCost();
        return new PricedLine(
                PricedLine.Kind.LABOUR,
                ask.section().ofLabour(),
                item.code(),
                item,
                hours,
                prices.labourRate(),
                Rounding.times(prices.labourRate(), hours),
                cost == null ? null : Rounding.times(cost, hours),
                prices.labourTax(),
                ask);
    }

    private static BigDecimal hours(BigDecimal minutes) {
        return Shares.plain(minutes.divide(MINUTES_PER_HOUR, HOUR_SCALE, RoundingMode.HALF_UP));
    }

    /** What the least labour of a visit lacks; the firm has no cost of it, for nobody works it. */
    private void addMinimum(List<PricedLine> lines) {
        Money labour = total(lines.stream()
                .filter(line -> line.kind() == PricedLine.Kind.LABOUR)
                .toList());
        // Reckoned in money and not in minutes: rounded hours of several lines may miss the minimum by a penny.
        Money rest = Rounding.times(prices.labourRate(), hours(prices.minimumMinutes()))
                .minus(labour);
        if (rest.isPositive()) {
            lines.add(new PricedLine(
                    PricedLine.Kind.MINIMUM,
                    Section.LABOUR,
                    "minimum-visit",
                    null,
                    BigDecimal.ONE,
                    rest.toBigMoney(),
                    rest,
                    Money.zero(prices.currency()),
                    prices.labourTax(),
                    null));
        }
    }

    Money total(List<PricedLine> lines) {
        Money sum = Money.zero(prices.currency());
        for (PricedLine line : lines) {
            sum = sum.plus(line.net());
        }
        return sum;
    }
}
