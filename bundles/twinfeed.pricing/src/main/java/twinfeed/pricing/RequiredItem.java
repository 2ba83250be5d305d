// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import twinfeed.model.assessment.Remedy;

/**
 * Something that work needs.
 *
 * @param code price-book code
 * @param quantity how much, in the item's unit; 0 or more, without waste
 */
public record RequiredItem(String code, BigDecimal quantity) {
    /** @throws IllegalArgumentException if the quantity is negative */
    public RequiredItem {
        if (quantity.signum() < 0) {
            throw new IllegalArgumentException(code + ": the quantity " + quantity + " is negative");
        }
    }

    /** A whole number of them. */
    public static RequiredItem of(String code, long quantity) {
        return new RequiredItem(code, BigDecimal.valueOf(quantity));
    }

    /** What a remedy needs; an item without a quantity is needed once. */
    public static List<RequiredItem> of(Remedy remedy) {
        return remedy.getItems().stream()
                .map(item -> new RequiredItem(
                        item.getCode(), Objects.requireNonNullElse(item.getQuantity(), BigDecimal.ONE)))
                .toList();
    }
}
