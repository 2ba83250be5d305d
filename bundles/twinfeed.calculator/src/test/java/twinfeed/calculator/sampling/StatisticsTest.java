// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantiles between neighbouring values, as the seventh of the nine definitions of Hyndman and Fan (1996) has them. */
class StatisticsTest {
    @Test
    void quantilesOfElevenValuesByHand() {
        double[] values = {10, 0, 9, 1, 8, 2, 7, 3, 6, 4, 5};
        double[] before = values.clone();
        assertEquals(0, Statistics.quantile(values, 0));
        assertEquals(0.5, Statistics.quantile(values, 0.05), 1e-12, "half way from the least to the next");
        assertEquals(2.5, Statistics.quantile(values, 0.25), 1e-12);
        assertEquals(10, Statistics.quantile(values, 1));
        assertEquals(9.5, Statistics.upperQuantile(values, 0.05), 1e-12);
        assertEquals(10, Statistics.upperQuantile(values, 0));
        assertArrayEquals(before, values, "the values stay as they were");
    }

    @Test
    void equalValuesAndOneAlone() {
        assertEquals(3, Statistics.quantile(new double[] {3, 3, 3, 3}, 0.05));
        assertEquals(7, Statistics.quantile(new double[] {7}, 0.05));
        assertEquals(7, Statistics.upperQuantile(new double[] {7}, 0.05));
    }

    /** Few are picked out, many are sorted; both have to give what sorting gives. */
    @ParameterizedTest
    @ValueSource(ints = {2, 20, 512, 1999, 2001, 5000})
    void asByHandFromSortedValues(int count) {
        double[] values = new Random(count).doubles(count, -3, 5).toArray();
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double place = 0.05 * (count - 1);
        int below = (int) Math.floor(place);
        double rest = place - below;
        int above = Math.min(below + 1, count - 1);
        assertEquals(sorted[below] * (1 - rest) + sorted[above] * rest, Statistics.quantile(values, 0.05), 1e-12);
        assertEquals(
                sorted[count - 1 - below] * (1 - rest) + sorted[count - 1 - above] * rest,
                Statistics.upperQuantile(values, 0.05),
                1e-12);
    }

    /** By hand: deviations -1, 0, 1 and -1, 1, 0 have products that sum to 1, and squares that sum to 2 each: (1 / 2)² = 0.25. */
    @Test
    void correlationsOfThreeValuesByHand() {
        double[] x = {1, 2, 3};
        assertEquals(1, Statistics.correlationSquared(x, new double[] {2, 4, 6}), 1e-12);
        assertEquals(1, Statistics.correlationSquared(x, new double[] {6, 4, 2}), 1e-12);
        assertEquals(0.25, Statistics.correlationSquared(x, new double[] {1, 3, 2}), 1e-12);
        assertEquals(0.25, Statistics.correlationSquared(new double[] {1, 2, 3, 99}, new double[] {1, 3, 2}), 1e-12);
        assertEquals(0, Statistics.correlationSquared(new double[] {4, 4, 4}, x));
        assertEquals(0, Statistics.correlationSquared(x, new double[] {4, 4, 4}));
    }
}
