// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A power, W. */
public final class Power extends QuantityOfKind<Power> {

    Power(Reading reading) {
        super(reading, Power::new);
    }

    /**
     * Reads a text such as {@code 8.5 kW}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Power valueOf(String text) {
        return new Power(ReadingParser.parse(Kind.POWER, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Power ofSi(double si) {
        return new Power(Reading.ofSi(Kind.POWER, si));
    }
}
