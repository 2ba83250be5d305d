// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Grid;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;

/**
 * Where the readings of one calculator stand, and what it takes from others there.
 *
 * <p>Equal where all numbers are equal to the last bit.
 */
public final class ReadingPositions {
    private final double[] positions;
    private final Grid grid;
    private final double[][] consumed;
    private final List<List<String>> missing;
    private final int hash;

    /**
     * The positions of one calculator's readings.
     *
     * @param positions of the readings that it reads
     * @param grid the conditions
     * @param shared what those before it provide
     * @param consumes what it takes of that
     */
    public ReadingPositions(double[] positions, Grid grid, SharedQuantities shared, List<SharedQuantity> consumes) {
        this.positions = positions;
        this.grid = grid;
        this.consumed = consumes.stream()
                .map(key -> shared.has(key) ? shared.get(key) : new double[0])
                .toArray(double[][]::new);
        this.missing = consumes.stream().map(shared::missing).toList();
        this.hash = 31 * Arrays.hashCode(positions) + Arrays.deepHashCode(consumed);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ReadingPositions that
                && hash == that.hash
                && Arrays.equals(positions, that.positions)
                && Arrays.deepEquals(consumed, that.consumed)
                && missing.equals(that.missing)
                && grid.same(that.grid);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
