// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A current, A. */
public final class Current extends QuantityOfKind<Current> {

    Current(Reading reading) {
        super(reading, Current::new);
    }

    /**
     * Reads a text such as {@code 37.9 A}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Current valueOf(String text) {
        return new Current(ReadingParser.parse(Kind.CURRENT, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Current ofSi(double si) {
        return new Current(Reading.ofSi(Kind.CURRENT, si));
    }
}
