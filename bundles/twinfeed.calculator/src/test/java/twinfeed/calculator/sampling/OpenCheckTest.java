// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The chance of a check from what its response predicts of 1000 draws, evenly from -1 to 1, and from the truth of some. */
class OpenCheckTest {
    private static final int DRAWS = 1000;
    private static final double[] PREDICTED = IntStream.range(0, DRAWS)
            .mapToDouble(i -> (i * 377 % DRAWS + 0.5) / 500 - 1)
            .toArray();
    private static final Response REGULAR =
            Response.of(MadeUpTrials.ofSum("0.3 ohm", 10)).get(0);

    private static Trial truth(double margin) {
        return new Trial(new boolean[] {margin >= 0}, new double[] {margin});
    }

    private static OpenCheck check(boolean deciding, DoubleUnaryOperator truth) {
        Trial[] compared = IntStream.range(0, 16)
                .mapToObj(draw -> truth(truth.applyAsDouble(PREDICTED[draw])))
                .toArray(Trial[]::new);
        return new OpenCheck(0, deciding, REGULAR, PREDICTED, compared);
    }

    private static int ask(OpenCheck check, DoubleUnaryOperator truth, double deviation) {
        int asked = 0;
        for (; check.deviation() > deviation; asked++) {
            int draw = check.next();
            check.learn(draw, truth(truth.applyAsDouble(PREDICTED[draw])));
        }
        return asked;
    }

    @Test
    void aResponseThatIsRightLeavesNothingOpen() {
        OpenCheck check = check(true, predicted -> predicted);
        assertEquals(0.5, check.chance());
        assertEquals(0, check.deviation());
        assertTrue(check.doubtful(4));
        assertFalse(check(false, predicted -> predicted).doubtful(4), "advice is never in the way");
    }

    /** Off by 0.1 everywhere: the 200 draws within twice that are open, 400 pass for sure; in truth 550 pass. */
    @Test
    void drawsTwiceAsNearAsTheResponseErrsAreJudged() {
        DoubleUnaryOperator truth = predicted -> predicted + 0.1;
        OpenCheck check = check(true, truth);
        assertEquals(0.2, check.deviation(), 1e-9);
        assertEquals(0.5, check.chance(), 1e-9);
        int asked = ask(check, truth, 0.005);
        assertEquals(0.55, check.chance(), 0.01);
        assertTrue(asked < 40, "asked: " + asked);
    }

    /** A truth farther off than all before opens more draws; those judged so far still count. */
    @Test
    void aSurpriseOpensMoreDraws() {
        DoubleUnaryOperator truth = predicted -> predicted + 0.1;
        OpenCheck check = check(true, truth);
        check.learn(700, truth(PREDICTED[700] + 0.11));
        assertEquals(0.2, check.deviation(), 1e-9, "a tenth more is no surprise");
        check.learn(701, truth(PREDICTED[701] + 0.3));
        assertEquals(0.6, check.deviation(), 1e-9);
        assertEquals(0.5, check.chance(), 1e-9);
        ask(check, truth, 0.005);
        assertEquals(0.55, check.chance(), 0.015);
    }

    @Test
    void withoutAMarginTheDrawsAreCountedInTheirOrder() {
        OpenCheck check = check(true, predicted -> predicted + 0.1);
        check.learn(0, new Trial(new boolean[] {true}, new double[] {Double.NaN}));
        assertEquals(1, check.next(), "the first is known");
        // Now as many pass as say so, whatever their margin.
        int asked = 1;
        for (; check.deviation() > 0.01; asked++) {
            assertEquals(asked, check.next());
            check.learn(asked, new Trial(new boolean[] {PREDICTED[asked] > -0.5}, new double[] {PREDICTED[asked]}));
        }
        assertEquals(0.75, check.chance(), 0.03);
    }

    @Test
    void aTruthWithoutAMarginAmongTheFirstLeavesNoDrawSure() {
        Trial[] compared = {truth(PREDICTED[0]), new Trial(new boolean[] {false}, new double[] {Double.NaN})};
        OpenCheck check = new OpenCheck(0, true, REGULAR, PREDICTED, compared);
        assertEquals(1, check.deviation());
        assertEquals(0.5, check.chance(), 1e-9);
        assertFalse(check.doubtful(1));
    }

    @Test
    void theCheckThatIsKnownLeastComesNext() {
        OpenCheck known = check(true, predicted -> predicted);
        OpenCheck near = check(true, predicted -> predicted + 0.01);
        OpenCheck far = check(true, predicted -> predicted + 0.1);
        assertSame(far, OpenCheck.leastKnown(List.of(known, near, far), 0.005));
        assertSame(far, OpenCheck.leastKnown(List.of(far, near, known), 0.005));
        assertSame(near, OpenCheck.leastKnown(List.of(known, near), 0.005));
        assertNull(OpenCheck.leastKnown(List.of(known), 0.005));
        assertNull(OpenCheck.leastKnown(List.of(known, near), 0.5));
    }

    /** Of margins from -0.5 to 1.5 three in four pass; from -0.04 to 1.96 98 in a hundred do, and the other way round 2. */
    @Test
    void aCheckIsDoubtfulFromFiveToNinetyFiveInAHundred() {
        assertEquals(0.75, shifted(0.5).chance(), 1e-9);
        assertTrue(shifted(0.5).doubtful(4));
        assertEquals(0.98, shifted(0.96).chance(), 1e-9);
        assertFalse(shifted(0.96).doubtful(0));
        assertEquals(0.02, shifted(-0.96).chance(), 1e-9);
        assertFalse(shifted(-0.96).doubtful(0));
        assertTrue(shifted(-0.86).doubtful(0));
    }

    /** 1 in 20 fails where it becomes too close; a chance of 2 in 100 lies 3 in 100 off that, on either side alike. */
    @Test
    void onWhichSideOfTheDoubtACheckLiesIsCertainWhenItIsFarEnoughOff() {
        assertTrue(shifted(0.96).isCertain(4), "every draw is known");
        assertTrue(shifted(-0.96).isCertain(4));
        assertTrue(shifted(0.5).isCertain(4), "it is too close for certain");
        OpenCheck counted = check(true, predicted -> predicted);
        int asked = 0;
        do {
            // It has no margin, and it passes always.
            counted.learn(asked++, new Trial(new boolean[] {true}, new double[] {Double.NaN}));
        } while (!counted.isCertain(4));
        assertTrue(asked > 60 && asked < 120, "asked: " + asked);
        assertTrue(counted.deviation() > 0.005, "that needs less than the chance itself: " + counted.deviation());
        assertEquals(1, counted.chance(), 1e-9);
    }

    /** A response that is right in half of the draws tells nothing: that 29 of 30 draws pass tells more. */
    @Test
    void whereTheResponseIsOfNoUseTheDrawsThatPassAreCounted() {
        OpenCheck check = check(true, predicted -> predicted);
        int asked = 0;
        do {
            check.learn(asked, new Trial(new boolean[] {asked % 30 != 7}, new double[] {Double.NaN}));
            asked++;
        } while (check.deviation() > 0.01);
        assertEquals(29 / 30.0, check.chance(), 0.01);
        assertTrue(asked < 300, "asked: " + asked);
    }

    /** The response is right, but where it says exactly the limit nothing is sure. */
    @Test
    void aDrawExactlyAtTheLimitIsJudged() {
        double[] predicted = {1, 0, -1, 1};
        OpenCheck check = new OpenCheck(0, true, REGULAR, predicted, new Trial[] {truth(1)});
        assertEquals(1, check.next());
        assertEquals(0.25, check.deviation(), 1e-9);
        check.learn(1, truth(0));
        assertEquals(0.75, check.chance(), 1e-9);
        assertEquals(0, check.deviation());
    }

    /** Half a unit off: draws within 1 are open; a truth that is a fifth farther off is no surprise yet, one beyond that is. */
    @Test
    void aTruthExactlyAFifthFartherOffIsNoSurprise() {
        double[] predicted = {1.125, 0, 0, -3, 3, 1.5};
        Trial[] compared = {truth(1.125 + 0.5)};
        OpenCheck check = new OpenCheck(0, true, REGULAR, predicted, compared);
        assertEquals(2 / 6.0, check.deviation(), 1e-9);
        check.learn(1, truth(0.6));
        assertEquals(2 / 6.0, check.deviation(), 1e-9);
        check.learn(2, truth(0.75));
        assertEquals(4 / 6.0, check.deviation(), 1e-9, "within 1.5, the truths of two of which are known");
    }

    /** 50 of 1000 draws pass, and all is known: at 5 in a hundred a check is no longer too close, and one more would make it so. */
    @Test
    void fiveInAHundredExactlyIsNotTooClose() {
        double[] predicted = IntStream.range(0, DRAWS)
                .mapToDouble(draw -> draw < 50 ? 1 : -1)
                .toArray();
        OpenCheck check = new OpenCheck(0, true, REGULAR, predicted, new Trial[] {truth(1)});
        assertEquals(0.05, check.chance());
        assertFalse(check.doubtful(0));
        assertFalse(check.isCertain(0), "nor is it on either side of it");
    }

    /** Without margins 4 of 80 draws passed, 5 in a hundred: neither side of the limit is certain, whatever the distance from 0. */
    @Test
    void aCheckAtTheLimitOfTheDoubtIsNotCertainYet() {
        double[] predicted = new double[DRAWS];
        java.util.Arrays.fill(predicted, -1);
        OpenCheck check = new OpenCheck(
                0, true, REGULAR, predicted, new Trial[] {new Trial(new boolean[] {false}, new double[] {Double.NaN})});
        for (int draw = 0; draw < 80; draw++) {
            check.learn(draw, new Trial(new boolean[] {draw % 20 == 7}, new double[] {Double.NaN}));
        }
        assertEquals(0.05, check.chance(), 1e-9);
        assertTrue(4 * check.deviation() > 0.09, "deviation: " + check.deviation());
        assertFalse(check.isCertain(4));
        assertFalse(check.isCertain(1));
    }

    @Test
    void ofTwoChecksThatAreKnownAlikeTheFirstComesNext() {
        OpenCheck one = check(true, predicted -> predicted + 0.1);
        OpenCheck other = check(true, predicted -> predicted + 0.1);
        assertSame(one, OpenCheck.leastKnown(List.of(one, other), 0.005));
        assertSame(other, OpenCheck.leastKnown(List.of(other, one), 0.005));
        assertNull(OpenCheck.leastKnown(List.of(one), one.deviation()), "what is known well enough is not asked");
    }

    /** A check whose response is right, and says so much more. */
    private static OpenCheck shifted(double by) {
        double[] predicted = IntStream.range(0, DRAWS)
                .mapToDouble(draw -> PREDICTED[draw] + by)
                .toArray();
        return new OpenCheck(0, true, REGULAR, predicted, new Trial[] {truth(predicted[0])});
    }
}
