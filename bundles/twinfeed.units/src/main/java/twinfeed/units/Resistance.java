// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A resistance or the magnitude of an impedance, ohm. */
public final class Resistance extends QuantityOfKind<Resistance> {

    Resistance(Reading reading) {
        super(reading, Resistance::new);
    }

    /**
     * Reads a text such as {@code 0.35 ohm}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Resistance valueOf(String text) {
        return new Resistance(ReadingParser.parse(Kind.RESISTANCE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Resistance ofSi(double si) {
        return new Resistance(Reading.ofSi(Kind.RESISTANCE, si));
    }
}
