// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.expression.Expression;

/**
 * One line of a working.
 *
 * @param symbol letters, digits and underscores, begins with a letter; unique in its working
 * @param meaning key of its meaning in the calculator's messages, {@code meaning.KEY}
 * @param value its value in the unit below; finite
 * @param unit its unit as printed, empty for a pure number
 * @param expression how it follows from the symbols above, in the grammar of {@link Expression}; absent for an input
 * @param source where the value or the formula comes from; empty where it is the survey or plain arithmetic
 * @param origin of an input: the path of the reading or of the heater's datum that it is, for example
 *     {@code survey.electricity.supplyVoltage} or {@code heater[h85].power}, or a name under which the same figure is known in all
 *     workings. Of a line of a round of a search: {@link Origin#ROUND} and the number of the round, which also ends its symbol. Of a line that
 *     was taken over from a part that several workings share: {@link Origin#SHARED}. Otherwise empty
 */
public record Step(
        String symbol,
        String meaning,
        double value,
        String unit,
        @Nullable String expression,
        String source,
        String origin) {
    /** A line of its own working, without an origin. */
    public Step(String symbol, String meaning, double value, String unit, @Nullable String expression, String source) {
        this(symbol, meaning, value, unit, expression, source, "");
    }

    public Step {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(symbol + " is not finite");
        }
    }
}
