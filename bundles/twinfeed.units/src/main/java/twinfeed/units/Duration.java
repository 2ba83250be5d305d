// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A length of time, s. */
public final class Duration extends QuantityOfKind<Duration> {

    Duration(Reading reading) {
        super(reading, Duration::new);
    }

    /**
     * Reads a text such as {@code 6 min}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Duration valueOf(String text) {
        return new Duration(ReadingParser.parse(Kind.DURATION, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Duration ofSi(double si) {
        return new Duration(Reading.ofSi(Kind.DURATION, si));
    }
}
