// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A speed of flow, m/s. */
public final class Velocity extends QuantityOfKind<Velocity> {

    Velocity(Reading reading) {
        super(reading, Velocity::new);
    }

    /**
     * Reads a text such as {@code 1.5 m/s}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Velocity valueOf(String text) {
        return new Velocity(ReadingParser.parse(Kind.VELOCITY, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Velocity ofSi(double si) {
        return new Velocity(Reading.ofSi(Kind.VELOCITY, si));
    }
}
