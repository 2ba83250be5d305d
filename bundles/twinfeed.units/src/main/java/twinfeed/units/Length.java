// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A length, m. */
public final class Length extends QuantityOfKind<Length> {

    Length(Reading reading) {
        super(reading, Length::new);
    }

    /**
     * Reads a text such as {@code 12.5 m}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Length valueOf(String text) {
        return new Length(ReadingParser.parse(Kind.LENGTH, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Length ofSi(double si) {
        return new Length(Reading.ofSi(Kind.LENGTH, si));
    }
}
