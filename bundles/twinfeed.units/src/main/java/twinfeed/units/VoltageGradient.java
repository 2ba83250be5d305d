// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A voltage drop by current and length, V/(A m). */
public final class VoltageGradient extends Quantity {

    VoltageGradient(Reading reading) {
        super(reading);
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

    @Override
    public VoltageGradient withSi(double si) {
        return new VoltageGradient(reading().withSi(si));
    }

    @Override
    public VoltageGradient withHalfWidthSi(double halfWidthSi) {
        return new VoltageGradient(rectangular(halfWidthSi));
    }

    @Override
    public VoltageGradient withStandardUncertaintySi(double uncertaintySi) {
        return new VoltageGradient(normal(uncertaintySi));
    }
}
