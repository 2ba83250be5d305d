// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where draws put their inputs. Quantiles of the normal distribution are from its table: 0.8413 at 1, 0.9750 at 1.9600. */
class DrawsTest {
    private static final DrawnInputs TWO_READINGS_AND_A_METHOD =
            new DrawnInputs(List.of(Spread.RECTANGULAR, Spread.NORMAL, Spread.among(3)), List.of(-1, -1, -1), 0);

    private static List<double[]> draws(DrawnInputs inputs, long seed, int first, int count) {
        List<double[]> all = new ArrayList<>();
        new Draws(inputs, seed).from(first, count, (draw, positions) -> {
            assertEquals(first + all.size(), draw);
            all.add(positions);
        });
        return all;
    }

    @Test
    void aCoordinateBecomesAPositionByTheSpread() {
        assertEquals(-1, Spread.RECTANGULAR.position(0));
        assertEquals(0.5, Spread.RECTANGULAR.position(0.75));
        assertEquals(0, Spread.NORMAL.position(0.5), 1e-12);
        assertEquals(1, Spread.NORMAL.position(0.841345), 1e-5);
        assertEquals(-1.959964, Spread.NORMAL.position(0.025), 1e-6);
        assertEquals(-NormalQuantile.of(1), NormalQuantile.of(0), 1e-6);
        assertEquals(5.9978, NormalQuantile.of(1), 1e-3, "the quantile of a thousand millionth less than 1");
        Spread three = Spread.among(3);
        assertArrayEquals(new double[] {0, 0, 1, 2, 2}, new double[] {
            three.position(0), three.position(0.33), three.position(0.34), three.position(0.67), three.position(1)
        });
        assertEquals(2, three.reach());
    }

    /** Of an instrument's half-width 0.7 is common to its readings and 0.3 is each one's own. */
    @Test
    void readingsOfOneInstrumentShareItsBias() {
        assertEquals(1, Spread.RECTANGULAR.position(1, 1), 1e-12);
        assertEquals(0.7, Spread.RECTANGULAR.position(0.5, 1), 1e-12);
        assertEquals(-0.3, Spread.RECTANGULAR.position(0, 0.5), 1e-12);
        assertEquals(0, Spread.NORMAL.position(0.5, 0.9), 1e-12, "a stated uncertainty is the reading's own");
        DrawnInputs gauge = new DrawnInputs(
                List.of(Spread.RECTANGULAR, Spread.RECTANGULAR, Spread.among(2), Spread.RECTANGULAR),
                List.of(0, 0, -1, 1),
                2);
        assertEquals(6, gauge.dimensions());
        assertArrayEquals(
                new double[] {0.85, 0.7, 1, -0.7}, gauge.positions(new double[] {0.75, 0.5, 0.6, 0.5, 1, 0}), 1e-12);
    }

    @Test
    void drawsGoOnWhereTheyStopped() {
        List<double[]> eight = draws(TWO_READINGS_AND_A_METHOD, 7, 0, 8);
        List<double[]> last = draws(TWO_READINGS_AND_A_METHOD, 7, 5, 3);
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(eight.get(5 + i), last.get(i));
        }
        assertNotEquals(
                eight.get(0)[0], draws(TWO_READINGS_AND_A_METHOD, 8, 0, 1).get(0)[0]);
    }

    /** Of 256 draws 64 lie in each quarter: a sequence of low discrepancy, moved as a whole, leaves no gap. */
    @Test
    void drawsAreSpreadEvenly() {
        int[] quarters = new int[4];
        int[] methods = new int[3];
        for (double[] positions : draws(TWO_READINGS_AND_A_METHOD, 20_260_101, 0, 256)) {
            quarters[(int) ((positions[0] + 1) * 2)]++;
            methods[(int) positions[2]]++;
        }
        for (int quarter : quarters) {
            assertEquals(64, quarter, 1);
        }
        for (int method : methods) {
            assertEquals(256 / 3.0, method, 2);
        }
    }

    @Test
    void theFirstDrawsAreMadeOnceAndTheSetsUsedLastAreKept() {
        FirstDraws draws = FirstDraws.of(TWO_READINGS_AND_A_METHOD, 7);
        double[][] four = draws.first(4);
        assertSame(four, draws.first(3));
        double[][] eight = draws.first(8);
        assertSame(four[3], eight[3]);
        assertArrayEquals(draws(TWO_READINGS_AND_A_METHOD, 7, 7, 1).get(0), eight[7]);
        double[][] columns = draws.columns(8);
        assertEquals(3, columns.length);
        assertSame(columns, draws.columns(5));
        for (int draw = 0; draw < 8; draw++) {
            for (int input = 0; input < 3; input++) {
                assertEquals(eight[draw][input], columns[input][draw]);
            }
        }
        assertEquals(10, draws.columns(10)[0].length);
        for (int seed = 100; seed < 107; seed++) {
            FirstDraws.of(TWO_READINGS_AND_A_METHOD, seed);
        }
        assertSame(draws, FirstDraws.of(TWO_READINGS_AND_A_METHOD, 7), "the eighth");
        for (int seed = 100; seed < 108; seed++) {
            FirstDraws.of(TWO_READINGS_AND_A_METHOD, seed);
        }
        assertNotSame(draws, FirstDraws.of(TWO_READINGS_AND_A_METHOD, 7), "eight others since");
    }

    /** The sequence begins with its first point: the first eight of its points are eighths, and moved as a whole they stay whole eighths apart. */
    @Test
    void theFirstEightDrawsStandEighthsApart() {
        List<double[]> eight = draws(TWO_READINGS_AND_A_METHOD, 7, 0, 8);
        for (double[] draw : eight) {
            double eighths = (draw[0] - eight.get(0)[0]) / 2 * 8;
            assertEquals(Math.rint(eighths), eighths, 1e-9);
        }
        assertEquals(
                8,
                eight.stream()
                        .map(draw -> Math.rint((draw[0] - eight.get(0)[0]) * 4))
                        .distinct()
                        .count());
    }

    @Test
    void moreDrawsFollowThoseThatAreThere() {
        FirstDraws draws = FirstDraws.of(TWO_READINGS_AND_A_METHOD, 4711);
        assertEquals(3, draws.first(3).length);
        assertEquals(5, draws.first(5).length);
        for (int draw = 0; draw < 5; draw++) {
            assertArrayEquals(draws(TWO_READINGS_AND_A_METHOD, 4711, draw, 1).get(0), draws.first(5)[draw]);
        }
    }
}
