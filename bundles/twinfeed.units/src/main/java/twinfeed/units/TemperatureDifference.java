// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A difference of two temperatures, K. */
public final class TemperatureDifference extends QuantityOfKind<TemperatureDifference> {

    TemperatureDifference(Reading reading) {
        super(reading, TemperatureDifference::new);
    }

    /**
     * Reads a text such as {@code 30 K}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static TemperatureDifference valueOf(String text) {
        return new TemperatureDifference(ReadingParser.parse(Kind.TEMPERATURE_DIFFERENCE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static TemperatureDifference ofSi(double si) {
        return new TemperatureDifference(Reading.ofSi(Kind.TEMPERATURE_DIFFERENCE, si));
    }
}
