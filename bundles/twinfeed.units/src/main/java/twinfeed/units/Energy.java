// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** An energy, J. */
public final class Energy extends QuantityOfKind<Energy> {

    Energy(Reading reading) {
        super(reading, Energy::new);
    }

    /**
     * Reads a text such as {@code 2.4 kWh}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Energy valueOf(String text) {
        return new Energy(ReadingParser.parse(Kind.ENERGY, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Energy ofSi(double si) {
        return new Energy(Reading.ofSi(Kind.ENERGY, si));
    }
}
