// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/**
 * What an option earns. For the firm's own eyes: no output for a customer shows it.
 *
 * @param net selling price without tax of the lines whose cost is known, discounts included
 * @param cost their cost
 * @param unknown codes of lines whose cost is not known, in order; they are in neither sum
 */
public record OptionMargin(Money net, Money cost, List<String> unknown) {
    private static final int SHARE_SCALE = 4;

    public OptionMargin {
        unknown = List.copyOf(unknown);
    }

    /** The margin of an option of a quote in this currency. */
    public static OptionMargin of(QuoteOption option, CurrencyUnit currency) {
        Money net = Money.zero(currency);
        Money cost = Money.zero(currency);
        List<String> unknown = new ArrayList<>();
        for (QuoteSection section : option.getSections()) {
            for (QuoteLine line : section.getLines()) {
                if (line.getCost() == null) {
                    unknown.add(line.getCode());
                } else {
                    net = net.plus(line.getNet());
                    cost = cost.plus(line.getCost());
                }
            }
        }
        return new OptionMargin(net, cost, unknown);
    }

    /** What is left over the cost; negative for a loss. */
    public Money amount() {
        return net.minus(cost);
    }

    /** The margin as a share of the selling price, to 4 decimals; none if nothing is sold. */
    public Optional<BigDecimal> share() {
        return net.isZero()
                ? Optional.empty()
                : Optional.of(amount().getAmount().divide(net.getAmount(), SHARE_SCALE, RoundingMode.HALF_UP));
    }
}
