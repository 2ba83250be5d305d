// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.joda.money.BigMoney;
import org.jspecify.annotations.Nullable;

/**
 * An item of a price book with its rules worked out.
 *
 * @param code code
 * @param description what a customer reads
 * @param unit unit of sale
 * @param price selling price of one without tax; null if it is labour alone or on enquiry
 * @param cost cost of one; null if it is not known
 * @param taxClass tax class
 * @param minutes labour of one in minutes; 0 if there is none
 * @param wholeLength length sold at a time; null if it is sold by the measure
 * @param waste share added for waste; 0 or more
 * @param leadDays days until it is there; 0 if it is in stock
 * @param date date of the price
 */
record PricedItem(
        String code,
        String description,
        String unit,
        @Nullable BigMoney price,
        @Nullable BigMoney cost,
        TaxClass taxClass,
        BigDecimal minutes,
        @Nullable BigDecimal wholeLength,
        BigDecimal waste,
        int leadDays,
        LocalDate date) {
    /** Decimals of a quantity with waste. */
    private static final int QUANTITY_SCALE = 2;

    /** Whether its price can only be had on enquiry. */
    boolean onEnquiry() {
        return price == null && minutes.signum() == 0;
    }

    /** Whether a job needs it once, however many remedies ask for it. */
    boolean oncePerJob() {
        return unit.equals("visit");
    }

    /** What has to be bought for a quantity that is built in: waste added, and up to whole lengths. Never less. */
    BigDecimal bought(BigDecimal builtIn) {
        BigDecimal withWaste = builtIn.multiply(BigDecimal.ONE.add(waste));
        if (wholeLength == null) {
            boolean exact = waste.signum() == 0;
            return Shares.plain(exact ? builtIn : withWaste.setScale(QUANTITY_SCALE, RoundingMode.CEILING));
        }
        return Shares.plain(
                withWaste.divide(wholeLength, 0, RoundingMode.CEILING).multiply(wholeLength));
    }
}
