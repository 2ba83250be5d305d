// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A resistance by length, ohm/m. */
public final class ResistanceGradient extends QuantityOfKind<ResistanceGradient> {

    ResistanceGradient(Reading reading) {
        super(reading, ResistanceGradient::new);
    }

    /**
     * Reads a text such as {@code 1.83 mohm/m}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static ResistanceGradient valueOf(String text) {
        return new ResistanceGradient(ReadingParser.parse(Kind.GRADIENT_RESISTANCE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static ResistanceGradient ofSi(double si) {
        return new ResistanceGradient(Reading.ofSi(Kind.GRADIENT_RESISTANCE, si));
    }
}
