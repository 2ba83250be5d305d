// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A pressure, Pa; gauge pressure unless its use says otherwise. */
public final class Pressure extends QuantityOfKind<Pressure> {

    Pressure(Reading reading) {
        super(reading, Pressure::new);
    }

    /**
     * Reads a text such as {@code 3.0 bar}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Pressure valueOf(String text) {
        return new Pressure(ReadingParser.parse(Kind.PRESSURE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Pressure ofSi(double si) {
        return new Pressure(Reading.ofSi(Kind.PRESSURE, si));
    }
}
