// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * Where tax is rounded. Always half up (a half away from zero), to the currency's smallest unit, as the function ROUND of a
 * spreadsheet does: policies that it cannot express are not offered.
 */
public enum Rounding {
    /** Tax of each line, rounded; the tax of the quote is the sum of the lines' taxes. */
    LINE("line"),
    /** Tax of the sum of all lines of one class and rate, rounded once; lines carry no tax. */
    TOTAL_BY_RATE("total-by-rate");

    private final String key;

    Rounding(String key) {
        this.key = key;
    }

    /** Its key in price books and quotes. */
    public String key() {
        return key;
    }

    /** The policy of a key. */
    public static Optional<Rounding> of(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }

    /** All keys in order. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Rounding::key).toList();
    }

    /** An exact amount, rounded half up to the currency's smallest unit. */
    public static Money halfUp(BigMoney exact) {
        return exact.toMoney(RoundingMode.HALF_UP);
    }

    /** Price times quantity, rounded half up. */
    public static Money times(BigMoney price, BigDecimal quantity) {
        return halfUp(price.multipliedBy(quantity));
    }

    /** A share of an amount, rounded half up. */
    public static Money share(Money amount, BigDecimal share) {
        return times(amount.toBigMoney(), share);
    }
}
