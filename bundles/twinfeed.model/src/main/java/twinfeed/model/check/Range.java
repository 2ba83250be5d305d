// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.Optional;
import org.eclipse.emf.ecore.EDataType;
import twinfeed.units.Quantity;

/**
 * From where to where a value can lie.
 *
 * @param least lower end, SI or a count; minus infinity for none
 * @param open whether the lower end itself is outside
 * @param most upper end, which is inside; infinity for none
 * @param from lower end as the table has it; empty for none
 * @param to upper end as the table has it; empty for none
 */
record Range(double least, boolean open, double most, String from, String to) {

    /** Reads two cells of the table: {@code 0 m} or {@code >0 mm}, and {@code 10 m}; either may be empty. */
    static Range of(EDataType type, String least, String most) {
        boolean open = least.startsWith(">");
        String from = open ? least.substring(1).strip() : least;
        double low = from.isEmpty() ? Double.NEGATIVE_INFINITY : number(type, from);
        double high = most.isEmpty() ? Double.POSITIVE_INFINITY : number(type, most);
        return new Range(low, open, high, from, most);
    }

    private static double number(EDataType type, String text) {
        Object value = type.getEPackage().getEFactoryInstance().createFromString(type, text);
        return number(value).orElseThrow();
    }

    /** The number that a value is compared by; empty for what is no number. */
    static Optional<Double> number(Object value) {
        if (value instanceof Quantity quantity) {
            return Optional.of(quantity.si());
        }
        return value instanceof Number number ? Optional.of(number.doubleValue()) : Optional.empty();
    }

    boolean contains(double value) {
        return (open ? value > least : value >= least) && value <= most;
    }

    /** The range in words, in the units of the table. */
    String words() {
        if (from.isEmpty()) {
            return Problems.text("span.most", to);
        }
        if (to.isEmpty()) {
            return Problems.text(open ? "span.above" : "span.least", from);
        }
        return Problems.text(open ? "span.open" : "span.closed", from, to);
    }
}
