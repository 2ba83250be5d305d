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

/** What calculators hand to one another about one candidate. */
public final class SharedQuantities {
    private final Grid grid;
    private final @Nullable Set<SharedQuantity> taken;
    private final Map<SharedQuantity, double[]> values = new LinkedHashMap<>();
    private final Map<SharedQuantity, IntFunction<Working>> workings = new HashMap<>();
    private final Map<SharedQuantity, List<String>> lacking = new LinkedHashMap<>();

    /** Shared quantities over a grid, none given yet. */
    public SharedQuantities(Grid grid) {
        this(grid, null);
    }

    private SharedQuantities(Grid grid, @Nullable Set<SharedQuantity> taken) {
        this.grid = grid;
        this.taken = taken;
    }

    /**
     * Shared quantities over a grid where it is known which of them anybody takes.
     *
     * @param taken those; the others may be given all the same
     */
    public static SharedQuantities takenOnly(Grid grid, Set<SharedQuantity> taken) {
        return new SharedQuantities(grid, Set.copyOf(taken));
    }

    /** Whether anybody takes one of these quantities; a calculator may leave out the others. */
    public boolean asks(List<SharedQuantity> keys) {
        Set<SharedQuantity> known = taken;
        return known == null || keys.stream().anyMatch(known::contains);
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

    /**
     * Says how the values of a quantity were found, for workings that go on from there.
     *
     * @param working the working of the value at a position; its last line is the value in the quantity's SI unit
     */
    public void explain(SharedQuantity key, IntFunction<Working> working) {
        workings.put(key, working);
    }

    /** How the value at a position was found; empty where its giver does not say. */
    public Working working(SharedQuantity key, int position) {
        IntFunction<Working> known = workings.get(key);
        return known == null ? Working.none() : known.apply(position);
    }

    /** Gives what somebody gave before, on the same grid, without finding it anew. */
    public void giveAgain(SharedQuantities before, List<SharedQuantity> keys) {
        for (SharedQuantity key : keys) {
            copy(key, before.values, values);
            copy(key, before.workings, workings);
            copy(key, before.lacking, lacking);
        }
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
                        && lacking(key).equals(before.lacking(key)));
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
