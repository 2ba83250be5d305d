// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A ratio of two like quantities, 1; the only kind that may be written without a unit. */
public final class Ratio extends QuantityOfKind<Ratio> {

    Ratio(Reading reading) {
        super(reading, Ratio::new);
    }

    /**
     * Reads a text such as {@code 0.8}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Ratio valueOf(String text) {
        return new Ratio(ReadingParser.parse(Kind.RATIO, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Ratio ofSi(double si) {
        return new Ratio(Reading.ofSi(Kind.RATIO, si));
    }
}
