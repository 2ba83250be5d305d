// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A volume flow, m3/s. */
public final class Flow extends Quantity {

    Flow(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 8.5 L/min}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Flow valueOf(String text) {
        return new Flow(ReadingParser.parse(Kind.FLOW, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Flow ofSi(double si) {
        return new Flow(Reading.ofSi(Kind.FLOW, si));
    }

    @Override
    public Flow withSi(double si) {
        return new Flow(reading().withSi(si));
    }

    @Override
    public Flow withHalfWidthSi(double halfWidthSi) {
        return new Flow(rectangular(halfWidthSi));
    }

    @Override
    public Flow withStandardUncertaintySi(double uncertaintySi) {
        return new Flow(normal(uncertaintySi));
    }
}
