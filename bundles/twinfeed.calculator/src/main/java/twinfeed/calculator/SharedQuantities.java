// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What calculators hand to one another about one candidate. */
public final class SharedQuantities {
    private final Grid grid;
    private final Map<SharedQuantity, double[]> values = new LinkedHashMap<>();
    private final Map<SharedQuantity, List<String>> lacking = new LinkedHashMap<>();

    /** An empty exchange over a grid. */
    public SharedQuantities(Grid grid) {
        this.grid = grid;
    }

    /**
     * Gives a quantity.
     *
     * @throws IllegalArgumentException if the number of values does not fit the grid or one is not finite
     */
    public void give(SharedQuantity key, double... given) {
        if (given.length != key.size(grid)) {
            throw new IllegalArgumentException(
                    key.name() + " has " + given.length + " values instead of " + key.size(grid));
        }
        for (double value : given) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(key.name() + " is not finite");
            }
        }
        values.put(key, given.clone());
    }

    /** Says that a quantity cannot be given because readings are missing. */
    public void lack(SharedQuantity key, List<String> missing) {
        List<String> all = new ArrayList<>(lacking(key));
        missing.stream().filter(path -> !all.contains(path)).forEach(all::add);
        lacking.put(key, all);
    }

    /** Whether the quantity was given. */
    public boolean has(SharedQuantity key) {
        return values.containsKey(key);
    }

    /** The readings that its giver lacked; empty if nobody gives it. */
    public List<String> lacking(SharedQuantity key) {
        return lacking.getOrDefault(key, List.of());
    }

    /**
     * The values of a quantity; a copy.
     *
     * @throws IllegalStateException if nobody gave it; ask {@link #has} first
     */
    public double[] take(SharedQuantity key) {
        double[] given = values.get(key);
        if (given == null) {
            throw new IllegalStateException("nobody gave " + key.name());
        }
        return given.clone();
    }
}
