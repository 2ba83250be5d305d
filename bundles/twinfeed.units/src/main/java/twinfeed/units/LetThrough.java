// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** The let-through energy of a protective device, A2s. */
public final class LetThrough extends QuantityOfKind<LetThrough> {

    LetThrough(Reading reading) {
        super(reading, LetThrough::new);
    }

    /**
     * Reads a text such as {@code 16000 A²s}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static LetThrough valueOf(String text) {
        return new LetThrough(ReadingParser.parse(Kind.LET_THROUGH, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static LetThrough ofSi(double si) {
        return new LetThrough(Reading.ofSi(Kind.LET_THROUGH, si));
    }
}
