// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import twinfeed.units.text.NumberText;

/** Values that each hold up to a bound: what lies between two bounds has the value of the upper one. */
public final class StepTable {
    private static final NumberText PLAIN = new NumberText(Locale.ROOT);

    private final NavigableMap<Double, Double> values;

    StepTable(Map<Double, Double> values) {
        this.values = new TreeMap<>(values);
    }

    static StepTable of(Table table, String bound, String value) {
        Map<Double, Double> values = new TreeMap<>();
        table.typed().forEach(row -> values.put(row.positive(bound), row.positive(value)));
        return new StepTable(values);
    }

    /** The value at an argument; empty beyond the last bound. */
    public OptionalDouble at(double argument) {
        Map.Entry<Double, Double> found = values.ceilingEntry(argument - 1e-9);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found.getValue());
    }

    /** The expression of a working that gives the value at a symbol, the last one beyond the last bound. */
    public String expression(String symbol) {
        StringBuilder text = new StringBuilder();
        int open = 0;
        for (Map.Entry<Double, Double> step : values.headMap(values.lastKey()).entrySet()) {
            text.append("if(")
                    .append(symbol)
                    .append(" <= ")
                    .append(number(step.getKey()))
                    .append(", ");
            text.append(number(step.getValue())).append(", ");
            open++;
        }
        return text.append(number(values.lastEntry().getValue()))
                .append(")".repeat(open))
                .toString();
    }

    /** A number as a person writes it: 16, not 16.0. */
    static String number(double value) {
        return PLAIN.exact(BigDecimal.valueOf(value));
    }

    /** The value at an argument, the last one beyond the last bound; empty only for an empty table. */
    public OptionalDouble atOrLast(double argument) {
        OptionalDouble found = at(argument);
        return found.isPresent() || values.isEmpty()
                ? found
                : OptionalDouble.of(values.lastEntry().getValue());
    }
}
