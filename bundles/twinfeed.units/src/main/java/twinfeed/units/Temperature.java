// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A temperature, degree Celsius; its tolerance is in K. */
public final class Temperature extends QuantityOfKind<Temperature> {

    Temperature(Reading reading) {
        super(reading, Temperature::new);
    }

    /**
     * Reads a text such as {@code 5 °C ± 0.5 K}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Temperature valueOf(String text) {
        return new Temperature(ReadingParser.parse(Kind.TEMPERATURE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite, or lies below absolute zero
     */
    public static Temperature ofSi(double si) {
        return new Temperature(Reading.ofSi(Kind.TEMPERATURE, si));
    }
}
