// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import org.junit.jupiter.api.Test;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.water.Heat;

class ThrottleTest {
    private static final double BEFORE =
            Heat.volumeFlowAtInlet(Heat.massFlowForOutlet(9500, 5, 40).value(), 5);

    @Test
    void aHeldThrottleIsAnOutletThroughItsPoint() {
        Outlet held = Throttle.held(4 * L_PER_MIN, 1.2 * BAR, 0.1 * BAR);
        assertEquals(1.2 * BAR, held.pressureAt(4 * L_PER_MIN), 1e-6);
        assertEquals(4 * L_PER_MIN, held.flowAt(1.2 * BAR), 1e-15);
        assertEquals(2 * L_PER_MIN, held.flowAt(0.1 * BAR + 1.1 * BAR / 4), 1e-15);
        assertEquals(0, held.flowAt(0.05 * BAR));
    }

    /** Down to 60 / 40 % of the pressure across it: 50 / 60 degC (closed form). */
    @Test
    void theHottestMomentIsWithTheTapFullyOpen() {
        double after = Throttle.flowAtRatio(BEFORE, 0.6);
        TapOpening opening = Throttle.whileTapOpens(9500, 5, BEFORE, after, Solution.of(BEFORE * 0.5));
        assertFalse(opening.switchOpens());
        assertEquals(after, opening.hottestFlowM3PerS());
        assertEquals(50, opening.hottestOutlet().value(), 1);
    }

    @Test
    void atTheVeryFlowOfItsBreakTheSwitchStaysMade() {
        double after = BEFORE * 0.5;
        assertFalse(Throttle.whileTapOpens(9500, 5, BEFORE, after, Solution.of(after))
                .switchOpens());
    }

    @Test
    void theHottestMomentIsJustBeforeTheSwitchOpens() {
        double after = Throttle.flowAtRatio(BEFORE, 0.2);
        double atBreak = Throttle.flowAtRatio(BEFORE, 0.4);
        TapOpening opening = Throttle.whileTapOpens(9500, 5, BEFORE, after, Solution.of(atBreak));
        assertTrue(opening.switchOpens());
        assertEquals(atBreak, opening.hottestFlowM3PerS());
        assertEquals(60, opening.hottestOutlet().value(), 1);
    }

    @Test
    void aSwitchThatHeightHoldsLetsItGetTooHot() {
        TapOpening opening =
                Throttle.whileTapOpens(9500, 5, BEFORE, BEFORE * 0.3, Solution.none(FailureReason.HELD_BY_HEIGHT));
        assertFalse(opening.switchOpens());
        assertEquals(Solution.none(FailureReason.ABOVE_100_DEGC), opening.hottestOutlet());
        TapOpening dry = Throttle.whileTapOpens(9500, 5, BEFORE, 0, Solution.none(FailureReason.HELD_BY_HEIGHT));
        assertEquals(Solution.none(FailureReason.FLOW_NOT_POSITIVE), dry.hottestOutlet());
    }

    @Test
    void aSwitchThatNeverMadeLeavesTheFlowBefore() {
        TapOpening opening = Throttle.whileTapOpens(9500, 5, BEFORE, BEFORE * 0.8, Solution.of(BEFORE * 2));
        assertTrue(opening.switchOpens());
        assertEquals(BEFORE, opening.hottestFlowM3PerS());
    }

    @Test
    void needIsWhatFollowsPlusItsOwn() {
        Outlet downstream = Outlet.ofPoint(8 * L_PER_MIN, 0.5 * BAR, 0.1 * BAR);
        assertEquals(0.2 * BAR + 0.3 * BAR, Throttle.neededInletPressurePa(downstream, 0.3 * BAR, 4 * L_PER_MIN), 1e-6);
        assertThrows(DomainException.class, () -> Throttle.neededInletPressurePa(downstream, -1, 1e-4));
        assertThrows(DomainException.class, () -> Throttle.flowAtRatio(1e-4, -0.1));
        assertThrows(DomainException.class, () -> Throttle.held(1e-4, 1e4, 1e4));
    }
}
