// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A difference of two temperatures, K. */
public final class TemperatureDifference extends Quantity {

    TemperatureDifference(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 30 K}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static TemperatureDifference valueOf(String text) {
        return new TemperatureDifference(ReadingParser.parse(Kind.TEMPERATURE_DIFFERENCE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static TemperatureDifference ofSi(double si) {
        return new TemperatureDifference(Reading.ofSi(Kind.TEMPERATURE_DIFFERENCE, si));
    }

    @Override
    public TemperatureDifference withSi(double si) {
        return new TemperatureDifference(reading().withSi(si));
    }

    @Override
    public TemperatureDifference withHalfWidthSi(double halfWidthSi) {
        return new TemperatureDifference(rectangular(halfWidthSi));
    }

    @Override
    public TemperatureDifference withStandardUncertaintySi(double uncertaintySi) {
        return new TemperatureDifference(normal(uncertaintySi));
    }
}
