// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.Optional;
import twinfeed.units.Quantity;

/**
 * From where to where a value can lie.
 *
 * @param least lower end, SI or a count; minus infinity for none
 * @param open whether the lower end itself is outside
 * @param most upper end, which is inside; infinity for none
 * @param words the range in words of the trade's units
 */
record Range(double least, boolean open, double most, String words) {

    boolean contains(double value) {
        return (open ? value > least : value >= least) && value <= most;
    }

    /** The number that a value is compared by; empty for what is no number. */
    static Optional<Double> number(Object value) {
        if (value instanceof Quantity quantity) {
            return Optional.of(quantity.si());
        }
        return value instanceof Number number ? Optional.of(number.doubleValue()) : Optional.empty();
    }
}
