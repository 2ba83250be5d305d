// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.util.HashSet;
import java.util.Set;
import twinfeed.calculator.formula.Working;
import twinfeed.units.Amount;

/** The lines of a working under way. What stands there already is not written twice, so that its parts can share lines. */
public final class WorkingLines {
    private final Working.Builder builder = Working.start();
    private final Set<String> known = new HashSet<>();

    /** A value put in. */
    public WorkingLines input(String symbol, String meaning, double value, String unit, String source) {
        if (known.add(symbol)) {
            builder.input(symbol, meaning, value, unit, source);
        }
        return this;
    }

    /** A value put in whose origin is known. */
    public WorkingLines input(String symbol, String meaning, double value, String unit, String source, String origin) {
        if (known.add(symbol)) {
            builder.input(symbol, meaning, value, unit, source, origin);
        }
        return this;
    }

    /** A quantity put in, in the unit of the amount. */
    public WorkingLines input(String symbol, String meaning, Amount value, String source) {
        return input(symbol, meaning, value, source, "");
    }

    /** The same where its origin is known. */
    public WorkingLines input(String symbol, String meaning, Amount value, String source, String origin) {
        return input(symbol, meaning, value.doubleValue(), value.unit().symbol(), source, origin);
    }

    /** Takes over the lines of a part, with an ending, see {@link Working.Builder#include}. */
    public WorkingLines include(Working part, String ending) {
        builder.include(part, ending);
        part.steps().forEach(step -> known.add(step.symbol() + ending));
        return this;
    }

    /** A value that follows from the symbols above. */
    public WorkingLines step(String symbol, String meaning, String expression, String unit, String source) {
        if (known.add(symbol)) {
            builder.step(symbol, meaning, expression, unit, source);
        }
        return this;
    }

    /** The steps that follow belong to a round of a search, see {@link Working.Builder#round}. */
    WorkingLines round(int number) {
        builder.round(number);
        return this;
    }

    double value(String symbol) {
        return builder.value(symbol);
    }

    public Working build() {
        return builder.build();
    }
}
