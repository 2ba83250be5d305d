// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How many of the draws near a limit pass, from the truth of some: against counting all of them. */
class OpenDrawsTest {
    private static final int DRAWS = 2000;

    /** Margins between -1 and 1, in an order that has nothing to do with them. */
    private static final double[] PREDICTED = IntStream.range(0, DRAWS)
            .mapToDouble(i -> (i * 0.618_034 % 1) * 2 - 1)
            .toArray();

    private int asked;

    private static DrawsNearLimit all() {
        return new DrawsNearLimit(IntStream.range(0, DRAWS).toArray(), PREDICTED, Map.of());
    }

    /** Asks until the number is known to a standard deviation of so many. */
    private void ask(OpenDraws draws, DoubleUnaryOperator truth, double deviation) {
        for (asked = 0; draws.deviation() > deviation; asked++) {
            int draw = draws.next();
            double margin = truth.applyAsDouble(PREDICTED[draw]);
            draws.learn(draw, margin, margin >= 0);
        }
    }

    private static long passing(DoubleUnaryOperator truth) {
        return IntStream.range(0, DRAWS)
                .filter(draw -> truth.applyAsDouble(PREDICTED[draw]) >= 0)
                .count();
    }

    @Test
    void aResponseThatIsOffByTheSameEverywhereTakesFewTruths() {
        DoubleUnaryOperator truth = predicted -> predicted + 0.3;
        DrawsNearLimit draws = all();
        ask(draws, truth, 10);
        assertEquals(passing(truth), draws.passes(), 20);
        assertTrue(asked <= 16, "asked: " + asked);
    }

    @Test
    void aResponseThatIsOffOnlyOnOneSideOfTheLimitIsSeenThrough() {
        DoubleUnaryOperator truth = predicted -> Math.min(predicted + 0.4, 0.3 - predicted);
        DrawsNearLimit draws = all();
        ask(draws, truth, 10);
        assertEquals(passing(truth), draws.passes(), 30);
        assertTrue(asked <= 120, "asked: " + asked);
    }

    /** As where a device disconnects in time by its residual current, whatever the loop is. */
    @Test
    void aMarginThatStaysWhereItIsPassesThroughoutWhateverTheResponseSays() {
        DrawsNearLimit draws = all();
        ask(draws, predicted -> 0.05, 10);
        assertEquals(DRAWS, draws.passes(), 20);
        assertTrue(asked <= 100, "asked: " + asked);
    }

    @Test
    void aMarginThatTurnsRoundIsSeenThrough() {
        DoubleUnaryOperator truth = predicted -> 0.5 - Math.abs(predicted - 0.2);
        DrawsNearLimit draws = all();
        ask(draws, truth, 10);
        assertEquals(passing(truth), draws.passes(), 40);
    }

    /** Whether such a draw passes is chance, by a third of the reach of the margins. */
    @Test
    void aResponseWithoutOrderIsCountedWithinItsDeviation() {
        DoubleUnaryOperator truth = predicted -> predicted + Math.sin(predicted * 7919) / 3;
        DrawsNearLimit draws = all();
        ask(draws, truth, 15);
        assertEquals(passing(truth), draws.passes(), 45);
        assertTrue(asked < DRAWS / 4, "asked: " + asked);
    }

    @Test
    void allTruthsLeaveNoDoubtAndNoneIsAskedTwice() {
        DoubleUnaryOperator truth = predicted -> predicted + Math.sin(predicted * 7919) / 3;
        DrawsNearLimit draws = all();
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < DRAWS; i++) {
            int draw = draws.next();
            assertTrue(seen.add(draw), "asked again: " + draw);
            double margin = truth.applyAsDouble(PREDICTED[draw]);
            draws.learn(draw, margin, margin >= 0);
        }
        assertEquals(passing(truth), draws.passes());
        assertEquals(0, draws.deviation());
    }

    @Test
    void threeDrawsAreKnownWhenThreeAreJudged() {
        DrawsNearLimit draws = new DrawsNearLimit(new int[] {4, 7, 9}, PREDICTED, Map.of());
        assertEquals(3, draws.deviation());
        draws.learn(4, 1, true);
        draws.learn(7, -1, false);
        draws.learn(9, 1, true);
        assertEquals(2, draws.passes());
        assertEquals(0, draws.deviation());
    }

    @Test
    void aTruthThatWasNotAskedForCountsAndThatOfAnotherDrawDoesNot() {
        DrawsNearLimit draws = new DrawsNearLimit(new int[] {4, 7}, PREDICTED, Map.of());
        draws.learn(5, 1, true);
        draws.learn(4, 1, true);
        assertEquals(7, draws.next());
        draws.learn(7, 1, true);
        assertEquals(2, draws.passes());
    }

    @Test
    void drawsWithoutAMarginAreCountedInTheirOrder() {
        CountedDraws draws = new CountedDraws(PREDICTED);
        DoubleUnaryOperator truth = predicted -> predicted + 0.5;
        assertEquals(DRAWS, draws.deviation());
        ask(draws, truth, 20);
        assertEquals(passing(truth), draws.passes(), 60);
        assertTrue(asked < DRAWS, "asked: " + asked);
        int next = draws.next();
        draws.learn(next + 1, Double.NaN, true);
        assertEquals(next, draws.next());
    }

    /**
     * Three of four are said to pass, one exactly at its limit. Of those asked one was said wrongly, then one each way, so that what is said is of less
     * use than what passes.
     */
    @Test
    void fourDrawsAreCountedByHand() {
        CountedDraws draws = new CountedDraws(new double[] {1, -1, 2, 0});
        assertEquals(3, draws.passes());
        assertEquals(4, draws.deviation());
        draws.learn(0, Double.NaN, false);
        assertEquals(0, draws.passes(), "none passes of one");
        assertEquals(4 * Math.sqrt(1 / 3.0 * 0.75), draws.deviation(), 1e-12);
        draws.learn(1, Double.NaN, true);
        assertEquals(2, draws.passes(), "one of two");
        assertEquals(4 * Math.sqrt(2 / 4.0 / 2 * 0.5), draws.deviation(), 1e-12);
        draws.learn(2, Double.NaN, true);
        draws.learn(3, Double.NaN, true);
        assertEquals(3, draws.passes());
        assertEquals(0, draws.deviation());
    }

    /** All four are said to pass, each just so. Of three asked one does: what is said was wrong twice, so that one in three is taken for what passes. */
    @Test
    void aDrawThatIsSaidToLieAtItsLimitIsSaidToPass() {
        CountedDraws draws = new CountedDraws(new double[4]);
        assertEquals(4, draws.passes());
        draws.learn(0, Double.NaN, true);
        draws.learn(1, Double.NaN, false);
        draws.learn(2, Double.NaN, false);
        assertEquals(4 / 3.0, draws.passes(), 1e-12);
    }
}
