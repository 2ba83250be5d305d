// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A power, W. */
public final class Power extends Quantity {

    Power(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 8.5 kW}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Power valueOf(String text) {
        return new Power(ReadingParser.parse(Kind.POWER, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Power ofSi(double si) {
        return new Power(Reading.ofSi(Kind.POWER, si));
    }

    @Override
    public Power withSi(double si) {
        return new Power(reading().withSi(si));
    }

    @Override
    public Power withHalfWidthSi(double halfWidthSi) {
        return new Power(rectangular(halfWidthSi));
    }

    @Override
    public Power withStandardUncertaintySi(double uncertaintySi) {
        return new Power(normal(uncertaintySi));
    }
}
