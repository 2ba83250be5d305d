// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;
import twinfeed.units.Amount;

/**
 * A rating as it stands in a working.
 *
 * @param symbol its symbol
 * @param meaning what it is
 * @param value how much, with the unit in which it stands there
 * @param origin where it was read, see {@link Step#origin()}
 */
public record Rating(String symbol, String meaning, Amount value, String origin) {
    /** Adds the limit that this rating and another one set: the smaller of the two, or this one alone where there is no other. */
    public Working.Builder addLimit(Working.Builder working, @Nullable Rating other) {
        if (other == null) {
            return working.input(LimitType.SYMBOL, meaning, value, "", origin);
        }
        return other.add(add(working))
                .step(
                        LimitType.SYMBOL,
                        "smallerRating",
                        "min(" + symbol + ", " + other.symbol + ")",
                        value.unit().symbol(),
                        "");
    }

    private Working.Builder add(Working.Builder working) {
        return working.input(symbol, meaning, value, "", origin);
    }
}
