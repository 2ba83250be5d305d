// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;

/** A volume flow, m3/s. */
public final class Flow extends QuantityOfKind<Flow> {

    Flow(Reading reading) {
        super(reading, Flow::new);
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
}
