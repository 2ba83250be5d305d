// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Working;

/** The quantities that calculators provide to one another about one candidate. */
public final class SharedQuantities {
    private final Grid grid;
    private final @Nullable Set<SharedQuantity> consumed;
    private final Map<SharedQuantity, double[]> values = new LinkedHashMap<>();
    private final Map<SharedQuantity, IntFunction<Working>> workings = new HashMap<>();
    private final Map<SharedQuantity, List<String>> lacking = new LinkedHashMap<>();

    /** Shared quantities over a grid, none provided yet. */
    public SharedQuantities(Grid grid) {
        this(grid, null);
    }

    private SharedQuantities(Grid grid, @Nullable Set<SharedQuantity> consumed) {
        this.grid = grid;
        this.consumed = consumed;
    }

    /**
     * Shared quantities over a grid where it is known which of them any calculator consumes.
     *
     * @param consumed those; the others may be put all the same
     */
    public static SharedQuantities consumedOnly(Grid grid, Set<SharedQuantity> consumed) {
        return new SharedQuantities(grid, Set.copyOf(consumed));
    }

    /** Whether any calculator consumes one of these quantities; the others may be left out. */
    public boolean asks(List<SharedQuantity> keys) {
        Set<SharedQuantity> known = consumed;
        if (known == null) {
            return true;
        }
        for (SharedQuantity key : keys) {
            if (known.contains(key)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Provides the values of a quantity, in its SI unit.
     *
     * @throws IllegalArgumentException if the number of values does not fit the grid or one is not finite
     */
    public void put(SharedQuantity key, double... given) {
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

    /**
     * Says how the values of a quantity were found, for workings that go on from there.
     *
     * @param working the working of the value at a position; its last line is the value in the quantity's SI unit
     */
    public void explain(SharedQuantity key, IntFunction<Working> working) {
        workings.put(key, working);
    }

    /** How the value at a position was found; empty where its provider does not say. */
    public Working working(SharedQuantity key, int position) {
        IntFunction<Working> known = workings.get(key);
        return known == null ? Working.none() : known.apply(position);
    }

    /** Provides what was provided before, on the same grid, without computing it anew. */
    public void putAgain(SharedQuantities before, List<SharedQuantity> keys) {
        for (SharedQuantity key : keys) {
            copy(key, before.values, values);
            copy(key, before.workings, workings);
            copy(key, before.lacking, lacking);
        }
    }

    /** What is provided of some quantities, without how it was found, which keeps hold of the house. */
    public SharedQuantities valuesOnly(List<SharedQuantity> keys) {
        SharedQuantities plain = new SharedQuantities(grid, consumed);
        for (SharedQuantity key : keys) {
            copy(key, values, plain.values);
            copy(key, lacking, plain.lacking);
        }
        return plain;
    }

    private static <T> void copy(SharedQuantity key, Map<SharedQuantity, T> from, Map<SharedQuantity, T> to) {
        T known = from.get(key);
        if (known != null) {
            to.put(key, known);
        }
    }

    /** Whether some quantities are what they were before, to the last bit, on the same grid. */
    public boolean same(SharedQuantities before, List<SharedQuantity> keys) {
        return keys.stream()
                .allMatch(key -> Arrays.equals(values.get(key), before.values.get(key))
                        && missing(key).equals(before.missing(key)));
    }

    /** Records that a quantity cannot be provided because readings are missing. */
    public void markMissing(SharedQuantity key, List<String> missing) {
        List<String> all = new ArrayList<>(missing(key));
        missing.stream().filter(path -> !all.contains(path)).forEach(all::add);
        lacking.put(key, all);
    }

    /** Whether the quantity was provided. */
    public boolean has(SharedQuantity key) {
        return values.containsKey(key);
    }

    /** The readings that its provider lacked; empty if no calculator provides it. */
    public List<String> missing(SharedQuantity key) {
        return lacking.getOrDefault(key, List.of());
    }

    /**
     * The values of a quantity, in its SI unit; a copy.
     *
     * @throws IllegalStateException if no calculator provided it; ask {@link #has} first
     */
    public double[] get(SharedQuantity key) {
        double[] given = values.get(key);
        if (given == null) {
            throw new IllegalStateException("no calculator provided " + key.name());
        }
        return given.clone();
    }
}
