// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A mass flow, kg/s. */
public final class MassFlow extends QuantityOfKind<MassFlow> {

    MassFlow(Reading reading) {
        super(reading, MassFlow::new);
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
}
