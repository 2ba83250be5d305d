// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** An area, m2. */
public final class Area extends QuantityOfKind<Area> {

    Area(Reading reading) {
        super(reading, Area::new);
    }

    /**
     * Reads a text such as {@code 10 mm²}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Area valueOf(String text) {
        return new Area(ReadingParser.parse(Kind.AREA, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Area ofSi(double si) {
        return new Area(Reading.ofSi(Kind.AREA, si));
    }
}
