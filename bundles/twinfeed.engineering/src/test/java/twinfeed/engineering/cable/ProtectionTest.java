// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

/** Further outside values are in electrical.csv. */
class ProtectionTest {
    /** BS 7671:2018 Table 41.3 (read; 45 A is not in the table and follows from the formula). */
    @ParameterizedTest
    @CsvSource({"5, 32, 1.37", "5, 40, 1.09", "5, 45, 0.97", "5, 50, 0.87", "10, 32, 0.68", "10, 40, 0.55"})
    void largestLoopImpedanceIsThatOfTheTable(double multiple, double ratingA, double expectedOhm) {
        assertEquals(expectedOhm, Protection.maxLoopImpedanceOhm(multiple, ratingA, 230, 0.95), 0.006);
    }

    @Test
    void loopIsTheSumOfItsParts() {
        double warm = Protection.r1r2Ohm(20, 6.44e-3, Protection.WARM_FACTOR);
        assertEquals(20 * 6.44e-3 * 1.2, warm, 1e-15);
        assertEquals(0.35 + warm, Protection.loopImpedanceOhm(0.35, warm), 1e-15);
    }

    /** B40, class 3, 6 kA: 54,000 A2s gives 2.02 mm2 (from memory). */
    @Test
    void letThroughGivesTheArea() {
        assertEquals(2.02, Protection.areaForLetThroughMm2(54_000, 115), 0.005);
        assertEquals(Solution.none(FailureReason.LET_THROUGH_NEEDED), Protection.adiabaticAreaMm2(900, 0.0999, 115));
    }

    /** 0.1 s would falsely fail 2.5 mm2 below about 0.25 ohm. */
    @Test
    void aTenthOfASecondOversizes() {
        double area = Protection.adiabaticAreaMm2(Protection.faultCurrentA(230, 0.253), 0.1, 115)
                .value();
        assertEquals(2.5, area, 0.01);
    }

    @Test
    void withstandAndTimeBelongTogether() {
        double timeS = Protection.adiabaticTimeS(2.5, 657, 115);
        assertEquals(Protection.withstandA2s(2.5, 115), 657 * 657 * timeS, 1e-6);
        assertEquals(2.5, Protection.adiabaticAreaMm2(657, timeS, 115).value(), 1e-12);
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThrows(DomainException.class, () -> Protection.maxLoopImpedanceOhm(5, 0, 230, 0.95));
        assertThrows(DomainException.class, () -> Protection.maxLoopImpedanceOhm(5, 40, 230, 1.1));
        assertThrows(DomainException.class, () -> Protection.faultCurrentA(230, 0));
        assertThrows(DomainException.class, () -> Protection.adiabaticAreaMm2(100, 0, 115));
        assertThrows(DomainException.class, () -> Protection.electrodeLimitOhm(50, 0));
        assertThrows(DomainException.class, () -> Protection.loopImpedanceOhm(-0.1, 0));
    }
}
