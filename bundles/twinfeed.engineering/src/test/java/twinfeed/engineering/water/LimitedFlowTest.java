// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import org.junit.jupiter.api.Test;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

class LimitedFlowTest {
    @Test
    void enoughFlowGivesTheTargetTemperature() {
        LimitedFlow winter = LimitedFlow.of(9500, 5, 40, 10 * L_PER_MIN);
        assertFalse(winter.limited());
        // 3.891 kg/min by IAPWS-IF97 enthalpies
        assertEquals(3.891, winter.flowM3PerS() / L_PER_MIN, 0.004);
        assertEquals(40, winter.outlet().value(), 1e-9);
    }

    @Test
    void justEnoughFlowIsNoLimit() {
        double target =
                LimitedFlow.of(9500, 5, 40, 10 * L_PER_MIN).targetM3PerS().value();
        assertFalse(LimitedFlow.of(9500, 5, 40, target).limited());
        assertTrue(LimitedFlow.of(9500, 5, 40, target * (1 - 1e-9)).limited());
    }

    @Test
    void tooLittleFlowInSummerRunsHot() {
        // 9.5 kW from 20 to 38 degC wants 7.575 kg/min (IAPWS-IF97); half of that heats by twice as much
        LimitedFlow summer = LimitedFlow.of(9500, 20, 38, 7.575 / 2 / 0.99825 * L_PER_MIN);
        assertTrue(summer.limited());
        assertEquals(56, summer.outlet().value(), 0.1);
        assertEquals(7.588, summer.targetM3PerS().value() / L_PER_MIN, 0.008);
    }

    @Test
    void nothingToHeatStillSaysWhatRuns() {
        LimitedFlow hotIntake = LimitedFlow.of(9500, 40, 38, 8 * L_PER_MIN);
        assertEquals(Solution.none(FailureReason.NO_HEATING_NEEDED), hotIntake.targetM3PerS());
        assertFalse(hotIntake.limited());
        assertEquals(8 * L_PER_MIN, hotIntake.flowM3PerS());
        assertTrue(hotIntake.outlet().value() > 40);
        assertEquals(
                Solution.none(FailureReason.FLOW_NOT_POSITIVE),
                LimitedFlow.of(9500, 5, 40, 0).outlet());
        assertThrows(DomainException.class, () -> LimitedFlow.of(9500, 5, 40, -1));
    }
}
