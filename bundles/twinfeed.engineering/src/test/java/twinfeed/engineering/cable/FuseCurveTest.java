// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

/** Energies and times are handworked from the points; a power of 10 between two points makes the steps round numbers. */
class FuseCurveTest {
    /** A semi-enclosed 30 A fuse, BS 7671:2018 Appendix 3 (from memory): 450 A within 0.1 s, 210 A within 0.4 s, 87 A within 5 s. */
    private static final FuseCurve FUSE = new FuseCurve(Map.of(0.1, 450.0, 0.4, 210.0, 5.0, 87.0));

    /** Current falls by ten where time grows by a hundred: I is 10 / sqrt(t), and I2t is 100 everywhere. */
    private static final FuseCurve SQUARE = new FuseCurve(Map.of(0.01, 100.0, 1.0, 10.0));

    /** Current falls by ten where time grows by a thousand: I is 10 / cbrt(t), and I2t grows with time. */
    private static final FuseCurve FLAT = new FuseCurve(Map.of(0.001, 100.0, 1.0, 10.0));

    @Test
    void keepsItsEnds() {
        assertEquals(0.1, FUSE.shortestS());
        assertEquals(5, FUSE.longestS());
    }

    @ParameterizedTest
    @CsvSource({"0.1, 450", "0.4, 210", "5, 87"})
    void goesThroughItsPoints(double timeS, double currentA) {
        assertEquals(currentA, FUSE.currentA(timeS));
        assertEquals(timeS, FUSE.timeS(currentA).value(), timeS * 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.01, 100", "0.04, 50", "0.25, 20", "1, 10"})
    void isAStraightLineOnDoubleLogarithmicPaper(double timeS, double currentA) {
        assertEquals(currentA, SQUARE.currentA(timeS), 1e-9);
        assertEquals(timeS, SQUARE.timeS(currentA).value(), 1e-9);
    }

    @Test
    void aLargerCurrentTakesTheShortestTimeAndASmallerOneDoesNotBlowIt() {
        assertEquals(Solution.of(0.1), FUSE.timeS(451));
        assertEquals(Solution.of(0.1), FUSE.timeS(450));
        assertEquals(5, FUSE.timeS(87).value(), 1e-9);
        assertEquals(Solution.none(FailureReason.FUSE_TOO_SLOW), FUSE.timeS(86.99));
        assertEquals(Solution.none(FailureReason.FUSE_TOO_SLOW), FUSE.energyA2s(86.99, 0.01));
    }

    @Test
    void withinTheCurveTheEnergyIsCurrentSquaredTimesTime() {
        assertEquals(210 * 210 * 0.4, FUSE.energyA2s(210, 0.01).value(), 1e-4);
        assertEquals(450 * 450 * 0.1, FUSE.energyA2s(450, 0).value(), 1e-9);
    }

    @Test
    void beyondTheCurveItMeltsWithTheEnergyOfItsShortestPointAndThenArcs() {
        // 450^2 x 0.1 = 20 250 A2s to melt, and 2000^2 x 0.01 = 40 000 A2s of arc.
        assertEquals(60_250, FUSE.energyA2s(2000, 0.01).value(), 1e-6);
        // An arc of half a second would be more than the whole current for the whole shortest time: 2000^2 x 0.1.
        assertEquals(400_000, FUSE.energyA2s(2000, 0.5).value(), 1e-6);
    }

    @Test
    void aConductorStandsItForTheTimeAtWhichTheEnergiesMeet() {
        // I2t of the flat curve is 100 cbrt(t): 50 A2s at 0.125 s.
        assertEquals(0.125, FLAT.longestWithstoodS(50).value(), 1e-9);
        assertEquals(Solution.of(1), FLAT.longestWithstoodS(100));
        assertEquals(Solution.of(1), FLAT.longestWithstoodS(1000));
        assertEquals(0.001, FLAT.longestWithstoodS(10 * (1 + 1e-12)).value(), 1e-9);
        assertEquals(Solution.none(FailureReason.CONDUCTOR_TOO_THIN), FLAT.longestWithstoodS(9.999));
    }

    @Test
    void refusesWhatIsNoCurve() {
        assertRefused("currentsByTime", () -> new FuseCurve(Map.of(1.0, 10.0)));
        assertRefused("currentsByTime", () -> new FuseCurve(Map.of()));
        assertRefused("currentA", () -> new FuseCurve(Map.of(1.0, 10.0, 2.0, 10.0)));
        assertRefused("currentA", () -> new FuseCurve(Map.of(1.0, 10.0, 2.0, 11.0)));
        assertRefused("timeS", () -> new FuseCurve(Map.of(0.0, 10.0, 2.0, 9.0)));
        assertRefused("currentA", () -> new FuseCurve(Map.of(1.0, 10.0, 2.0, 0.0)));
        assertRefused("timeS", () -> FUSE.currentA(0.09));
        assertRefused("timeS", () -> FUSE.currentA(5.01));
        assertRefused("currentA", () -> FUSE.timeS(0));
        assertRefused("arcingS", () -> FUSE.energyA2s(500, -0.01));
        assertRefused("withstandA2s", () -> FUSE.longestWithstoodS(0));
    }

    private static void assertRefused(String argument, Runnable call) {
        assertEquals(argument, assertThrows(DomainException.class, call::run).argument());
    }
}
