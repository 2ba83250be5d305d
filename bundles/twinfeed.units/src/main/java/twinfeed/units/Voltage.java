// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A voltage, V. */
public final class Voltage extends QuantityOfKind<Voltage> {

    Voltage(Reading reading) {
        super(reading, Voltage::new);
    }

    /**
     * Reads a text such as {@code 238 V ± 1 %}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Voltage valueOf(String text) {
        return new Voltage(ReadingParser.parse(Kind.VOLTAGE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Voltage ofSi(double si) {
        return new Voltage(Reading.ofSi(Kind.VOLTAGE, si));
    }
}
