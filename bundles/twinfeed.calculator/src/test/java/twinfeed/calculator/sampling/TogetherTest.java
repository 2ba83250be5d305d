// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.CalculatorDescriptor;

/** In how many ways pieces of cable can have been laid together. */
class TogetherTest {
    private record Input(Spread spread) implements SampledInput {
        @Override
        public String path() {
            return "";
        }

        @Override
        public int gauge() {
            return -1;
        }

        @Override
        public void place(double position) {}

        @Override
        public boolean isReadBy(CalculatorDescriptor calculator) {
            return false;
        }
    }

    private static final SampledInput READING = new Input(Spread.RECTANGULAR);
    private static final SampledInput TWO = new Input(Spread.among(2));
    private static final SampledInput THREE = new Input(Spread.among(3));

    /** Two and three methods stand together in six ways; in two of them neither piece is as stated: 1 + 2 * 1 and 1 + 2 * 2. */
    @Test
    void waysInWhichBothPiecesAreOtherThanStatedAreTried() {
        Together ways = Together.of(List.of(READING, TWO, READING, THREE));
        assertEquals(6, ways.count());
        assertTrue(ways.whole());
        assertEquals(List.of(3L, 5L), ways.tried());
        double[] positions = new double[4];
        ways.place(5, positions);
        assertArrayEquals(new double[] {0, 1, 0, 2}, positions);
        ways.place(2, positions);
        assertArrayEquals(new double[] {0, 0, 0, 1}, positions);
        double[][] columns = {{0.3, 0.1}, {1, 0}, {0, 0}, {2, 1}};
        assertEquals(5, ways.way(columns, 0));
        assertEquals(2, ways.way(columns, 1));
    }

    @Test
    void readingsAloneHaveNoWaysToStandTogether() {
        assertEquals(List.of(), Together.of(List.of(READING, READING)).tried());
        assertEquals(List.of(), Together.of(List.of(THREE)).tried());
    }

    /** Six pieces of two methods: 64 ways, of which one is as stated and six move one piece. */
    @Test
    void upToSixtyFourWaysAreAllTriedAndOfMoreAsMany() {
        Together six = Together.of(Collections.nCopies(6, TWO));
        assertTrue(six.whole());
        assertEquals(64, six.count());
        assertEquals(64 - 7, six.tried().size());
        Together ten = Together.of(Collections.nCopies(10, TWO));
        assertFalse(ten.whole());
        List<Long> tried = ten.tried();
        assertTrue(tried.size() > 55 && tried.size() <= 64, "tried: " + tried.size());
        int[] moved = new int[10];
        for (long way : tried) {
            assertTrue(way < 1024 && Long.bitCount(way) > 1, "way " + way);
            for (int piece = 0; piece < 10; piece++) {
                moved[piece] += (int) (way >> piece & 1);
            }
        }
        for (int times : moved) {
            assertTrue(times > 15, "each piece takes its turns: " + times);
        }
        assertFalse(Together.of(Collections.nCopies(90, TWO)).whole(), "more ways than a number holds");
    }
}
