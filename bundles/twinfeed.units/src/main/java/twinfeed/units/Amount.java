// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A value in SI with the unit in which texts print it: what calculators give as an argument of a message. As a number it is its value in that
 * unit, since the message names the unit behind the placeholder.
 */
public final class Amount extends Number {
    private static final long serialVersionUID = 1L;

    private final double si;
    private final DisplayUnit unit;

    Amount(double si, DisplayUnit unit) {
        this.si = si;
        this.unit = unit;
    }

    /** The value in SI. */
    public double si() {
        return si;
    }

    /** The unit in which it is printed. */
    public DisplayUnit unit() {
        return unit;
    }

    @Override
    public double doubleValue() {
        return unit.fromSi(si);
    }

    @Override
    public float floatValue() {
        return (float) doubleValue();
    }

    @Override
    public long longValue() {
        return (long) doubleValue();
    }

    @Override
    public int intValue() {
        return (int) doubleValue();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amount amount && Double.compare(si, amount.si) == 0 && unit.equals(amount.unit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(si, unit);
    }

    /** The bare number in its unit. */
    @Override
    public String toString() {
        return String.valueOf(doubleValue());
    }
}
