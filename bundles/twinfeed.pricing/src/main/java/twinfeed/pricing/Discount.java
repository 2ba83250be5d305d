// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A reduction of every option, before tax.
 *
 * @param amount amount without tax, or null for a share
 * @param share share of the sum without tax, or null for an amount
 * @param reason what a customer reads
 */
public record Discount(@Nullable Money amount, @Nullable BigDecimal share, String reason) {
    /** @throws IllegalArgumentException unless just one of amount and share is given, and it is not negative */
    public Discount {
        boolean one = (amount == null) != (share == null);
        if (!one || (amount != null && amount.isNegative())) {
            throw new IllegalArgumentException("a discount is either an amount or a share, 0 or more");
        }
        if (share != null && (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0)) {
            throw new IllegalArgumentException("a discount of " + share + " is not between 0 and 1");
        }
    }

    /** A fixed amount without tax. */
    public static Discount of(Money amount, String reason) {
        return new Discount(amount, null, reason);
    }

    /** A share of the sum without tax, 0 to 1. */
    public static Discount ofShare(BigDecimal share, String reason) {
        return new Discount(null, share, reason);
    }
}
