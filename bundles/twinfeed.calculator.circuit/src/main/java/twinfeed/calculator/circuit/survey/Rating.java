// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Step;
import twinfeed.calculator.Working;

/**
 * A rating as it stands in a working.
 *
 * @param symbol its symbol
 * @param meaning what it is
 * @param value how much, in the unit
 * @param unit unit of the value
 * @param origin where it was read, see {@link Step#origin()}
 */
public record Rating(String symbol, String meaning, double value, String unit, String origin) {
    /** Adds the limit that this rating and another one set: the smaller of the two, or this one alone where there is no other. */
    public Working.Builder addLimit(Working.Builder working, @Nullable Rating other) {
        if (other == null) {
            return working.input(LimitType.SYMBOL, meaning, value, unit, "", origin);
        }
        return other.add(add(working))
                .step(LimitType.SYMBOL, "smallerRating", "min(" + symbol + ", " + other.symbol + ")", unit, "");
    }

    private Working.Builder add(Working.Builder working) {
        return working.input(symbol, meaning, value, unit, "", origin);
    }
}
