// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A pressure, Pa; gauge pressure unless its use says otherwise. */
public final class Pressure extends Quantity {

    Pressure(Reading reading) {
        super(reading);
    }

    /**
     * Reads a text such as {@code 3.0 bar}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Pressure valueOf(String text) {
        return new Pressure(ReadingParser.parse(Kind.PRESSURE, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Pressure ofSi(double si) {
        return new Pressure(Reading.ofSi(Kind.PRESSURE, si));
    }

    @Override
    public Pressure withSi(double si) {
        return new Pressure(reading().withSi(si));
    }

    @Override
    public Pressure withHalfWidthSi(double halfWidthSi) {
        return new Pressure(rectangular(halfWidthSi));
    }

    @Override
    public Pressure withStandardUncertaintySi(double uncertaintySi) {
        return new Pressure(normal(uncertaintySi));
    }
}
