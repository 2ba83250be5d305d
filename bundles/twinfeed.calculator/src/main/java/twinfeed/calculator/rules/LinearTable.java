// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Values with straight lines between them. Right for the ambient factor, which is a concave function of temperature: the chord
 * lies below it, on the safe side.
 */
public final class LinearTable {
    private final NavigableMap<Double, Double> values = new TreeMap<>();

    static LinearTable of(Table table, String argument, String value) {
        LinearTable result = new LinearTable();
        table.typed().forEach(row -> result.values.put(row.number(argument), row.positive(value)));
        return result;
    }

    private LinearTable() {}

    /** The value at an argument; the first one below the first argument; empty above the last. */
    public OptionalDouble at(double argument) {
        Map.Entry<Double, Double> below = values.floorEntry(argument);
        Map.Entry<Double, Double> above = values.ceilingEntry(argument);
        if (above == null) {
            return OptionalDouble.empty();
        }
        if (below == null || below.getKey().equals(above.getKey())) {
            return OptionalDouble.of(above.getValue());
        }
        double share = (argument - below.getKey()) / (above.getKey() - below.getKey());
        return OptionalDouble.of(below.getValue() + share * (above.getValue() - below.getValue()));
    }
}
