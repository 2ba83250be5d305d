// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A mass flow, kg/s. */
public final class MassFlow extends Quantity {

    MassFlow(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 8.5 kg/min}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static MassFlow valueOf(String text) {
        return new MassFlow(ReadingParser.parse(Kind.MASS_FLOW, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static MassFlow ofSi(double si) {
        return new MassFlow(Reading.ofSi(Kind.MASS_FLOW, si));
    }

    @Override
    public MassFlow withSi(double si) {
        return new MassFlow(reading().withSi(si));
    }

    @Override
    public MassFlow withHalfWidthSi(double halfWidthSi) {
        return new MassFlow(rectangular(halfWidthSi));
    }

    @Override
    public MassFlow withStandardUncertaintySi(double uncertaintySi) {
        return new MassFlow(normal(uncertaintySi));
    }
}
