// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A voltage drop by current and length, V/(A m). */
public final class VoltageGradient extends QuantityOfKind<VoltageGradient> {

    VoltageGradient(Reading reading) {
        super(reading, VoltageGradient::new);
    }

    /**
     * Reads a text such as {@code 4.4 mV/A/m}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static VoltageGradient valueOf(String text) {
        return new VoltageGradient(ReadingParser.parse(Kind.GRADIENT_VOLTAGE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static VoltageGradient ofSi(double si) {
        return new VoltageGradient(Reading.ofSi(Kind.GRADIENT_VOLTAGE, si));
    }
}
