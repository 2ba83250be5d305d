// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A current, A. */
public final class Current extends Quantity {

    Current(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 37.9 A}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Current valueOf(String text) {
        return new Current(ReadingParser.parse(Kind.CURRENT, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Current ofSi(double si) {
        return new Current(Reading.ofSi(Kind.CURRENT, si));
    }

    @Override
    public Current withSi(double si) {
        return new Current(reading().withSi(si));
    }

    @Override
    public Current withHalfWidthSi(double halfWidthSi) {
        return new Current(rectangular(halfWidthSi));
    }

    @Override
    public Current withStandardUncertaintySi(double uncertaintySi) {
        return new Current(normal(uncertaintySi));
    }
}
