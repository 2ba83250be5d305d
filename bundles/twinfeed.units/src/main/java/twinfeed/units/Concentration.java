// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** The mass of a solute by volume of water, kg/m3. */
public final class Concentration extends QuantityOfKind<Concentration> {

    Concentration(Reading reading) {
        super(reading, Concentration::new);
    }

    /**
     * Reads a text such as {@code 250 mg/L}, in the forms of {@link Quantity}.
     *
     * @throws UnitException if it is none
     */
    public static Concentration valueOf(String text) {
        return new Concentration(ReadingParser.parse(Kind.CONCENTRATION, text, Locale.ROOT));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Concentration ofSi(double si) {
        return new Concentration(Reading.ofSi(Kind.CONCENTRATION, si));
    }
}
