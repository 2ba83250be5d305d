// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Values that each hold up to a bound: what lies between two bounds has the value of the upper one. */
public final class StepTable {
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

    /** The value at an argument, the last one beyond the last bound; empty only for an empty table. */
    public OptionalDouble atOrLast(double argument) {
        OptionalDouble found = at(argument);
        return found.isPresent() || values.isEmpty()
                ? found
                : OptionalDouble.of(values.lastEntry().getValue());
    }
}
