// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A pressure drop by length, Pa/m. */
public final class PressureGradient extends QuantityOfKind<PressureGradient> {

    PressureGradient(Reading reading) {
        super(reading, PressureGradient::new);
    }

    /**
     * Reads a text such as {@code 1.2 kPa/m}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static PressureGradient valueOf(String text) {
        return new PressureGradient(ReadingParser.parse(Kind.GRADIENT_PRESSURE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static PressureGradient ofSi(double si) {
        return new PressureGradient(Reading.ofSi(Kind.GRADIENT_PRESSURE, si));
    }
}
