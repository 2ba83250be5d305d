// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A line that the estimator adds.
 *
 * @param heater the option that it is added to, by its heater's id; empty for every option
 * @param code code of an item of the price book; empty for a line in words of one's own
 * @param quantity how much; more than 0
 * @param description what the customer reads; empty for an item of the book
 * @param unit of the quantity; empty for an item of the book
 * @param price price of one unit without tax, 0 or more; null for an item of the book
 * @param taxClass tax class of the price book's rates; empty for an item of the book
 */
public record OwnLine(
        String heater,
        String code,
        BigDecimal quantity,
        String description,
        String unit,
        @Nullable BigDecimal price,
        String taxClass) {
    /** An item of the price book. */
    public static OwnLine ofBook(String heater, String code, BigDecimal quantity) {
        return new OwnLine(heater, code, quantity, "", "", null, "");
    }

    /** @throws IllegalArgumentException if the quantity is none, a price is negative, or neither code nor description is given */
    public OwnLine {
        boolean negative = price != null && price.signum() < 0;
        if (quantity.signum() <= 0 || negative || (code.isEmpty() && (description.isBlank() || price == null))) {
            throw new IllegalArgumentException(
                    "a line is an item of the book, or words with a price, and more than none of it");
        }
    }

    /** Whether it counts for an option. */
    public boolean counts(String option) {
        return heater.isEmpty() || heater.equals(option);
    }
}
