// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one input adds to a margin: a parabola through its probes and 0, worked out by hand. */
class EffectTest {
    /**
     * Through -1, 0 and 3 goes 2 p + p², which turns at the end; through 3, 0 and 1 goes -p + 2 p², which turns at 0.25 with -0.125; through
     * -3, 0 and 5 goes 4 p + p², which would turn out of reach.
     */
    @ParameterizedTest
    @CsvSource({
        "-1, 3, 1.25, -1, 3",
        "3, 1, 0, -0.125, 3",
        "-3, -1, 0, -3, 0.125",
        "-3, 5, 2.25, -3, 5",
        "3, -5, -2.25, -5, 3",
        "2, 2, 0.5, 0, 2",
        "-2, 2, 1, -2, 2"
    })
    void aRectangularReadingReachesToItsProbes(double below, double above, double half, double least, double largest) {
        Effect effect = Effect.ofReading(Spread.RECTANGULAR, below, above);
        assertEquals(below, effect.at(-1), 1e-12);
        assertEquals(above, effect.at(1), 1e-12);
        assertEquals(0, effect.at(0), 1e-12);
        assertEquals(half, effect.at(0.5), 1e-12);
        assertEquals(least, effect.least(), 1e-12);
        assertEquals(largest, effect.largest(), 1e-12);
    }

    /** Through 0 at -2 and 8 at 2 goes 2 p + p²: -1 where it turns at -1, 19.25 at 3.5. */
    @Test
    void aNormalReadingReachesBeyondItsProbes() {
        Effect effect = Effect.ofReading(Spread.NORMAL, 0, 8);
        assertEquals(5.25, effect.at(-3.5), 1e-12);
        assertEquals(-1, effect.least(), 1e-12);
        assertEquals(19.25, effect.largest(), 1e-12);
        Effect straight = Effect.ofReading(Spread.NORMAL, -4, 4);
        assertEquals(-7, straight.least(), 1e-12);
        assertEquals(7, straight.largest(), 1e-12);
    }

    @Test
    void eachPossibilityHasItsOwnAddition() {
        Effect effect = Effect.ofPossibilities(new double[] {0, -2, 5});
        assertEquals(-2, effect.at(1));
        assertEquals(-2, effect.least());
        assertEquals(5, effect.largest());
        double[] sums = {10, 20};
        effect.addTo(sums, new double[] {2, 1, 0});
        assertArrayEquals(new double[] {15, 18}, sums);
        double[] more = {10, 20};
        Effect.ofReading(Spread.RECTANGULAR, -1, 3).addTo(more, new double[] {0.5, -1});
        assertArrayEquals(new double[] {11.25, 19}, more, 1e-12);
    }
}
