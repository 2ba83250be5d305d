// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/** Divides an amount without losing or making a penny. */
public final class Allocation {
    private Allocation() {}

    /**
     * Divides an amount in proportion to weights by largest remainders: each part is its exact share rounded towards zero, and
     * the pennies left go one each to the parts that lost most, of equal ones to the first. No part is off its exact share by a
     * penny or more, and the parts add up to the amount.
     *
     * @param amount amount, of any sign
     * @param weights weights, 0 or more, not all of them 0; a weight of 0 gets nothing
     * @throws IllegalArgumentException if the weights are none
     */
    public static List<Money> divide(Money amount, List<BigDecimal> weights) {
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.signum() <= 0 || weights.stream().anyMatch(weight -> weight.signum() < 0)) {
            throw new IllegalArgumentException("weights " + weights + " are not 0 or more with a sum above 0");
        }
        BigDecimal pennies = amount.getAmountMinor();
        List<BigDecimal[]> shares = new ArrayList<>();
        BigDecimal given = BigDecimal.ZERO;
        for (BigDecimal weight : weights) {
            // Share times the sum of the weights stays exact: no division, so that ties are ties.
            BigDecimal[] wholeAndLost = pennies.abs().multiply(weight).divideAndRemainder(sum);
            shares.add(wholeAndLost);
            given = given.add(wholeAndLost[0]);
        }
        int left = pennies.abs()
                .subtract(given)
                .setScale(0, RoundingMode.UNNECESSARY)
                .intValueExact();
        List<Integer> order = IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> shares.get(i)[1]).reversed())
                .toList();
        order.subList(0, left).forEach(i -> shares.get(i)[0] = shares.get(i)[0].add(BigDecimal.ONE));
        return shares.stream()
                .map(share -> share[0].multiply(BigDecimal.valueOf(pennies.signum())))
                .map(part -> part.movePointLeft(amount.getScale()))
                .map(part -> Money.of(amount.getCurrencyUnit(), part, RoundingMode.UNNECESSARY))
                .toList();
    }
}
