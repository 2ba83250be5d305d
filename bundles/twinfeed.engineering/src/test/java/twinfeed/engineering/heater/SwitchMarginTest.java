// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.KPA;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import org.junit.jupiter.api.Test;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.water.Fluid;

/** Handworked in the comments; no published value of a switch was found. */
class SwitchMarginTest {
    private static final Fluid COLD = Fluid.waterAt(10);
    private static final PressureSwitch SWITCH = new PressureSwitch(25 * KPA, 15 * KPA);
    /** 40 kPa at 8 L/min after the chamber. */
    private static final double DOWN = 40 * KPA / Math.pow(8 * L_PER_MIN, 2);
    /** 5 kPa at 12 L/min in strainer and solenoid valve. */
    private static final double STRAINER = 5 * KPA / Math.pow(12 * L_PER_MIN, 2);

    @Test
    void inletChamberFeelsTheInletLessTheStrainer() {
        SwitchMargin margin = SwitchMargin.inInletChamber(SWITCH, 50 * KPA, STRAINER, 6 * L_PER_MIN);
        // 50 - 5 (6/12)^2 = 48.75
        assertEquals(48.75 - 25, margin.toMakePa() / KPA, 1e-9);
        assertEquals(48.75 - 15, margin.toBreakPa() / KPA, 1e-9);
        assertEquals(23.75, margin.smallestPa() / KPA, 1e-9);
    }

    @Test
    void heatingChamberMakesWithAnEmptyHoseAndBreaksWithAHangingOne() {
        SwitchMargin margin = SwitchMargin.inHeatingChamber(SWITCH, DOWN, 6 * L_PER_MIN, -1, COLD);
        // 40 (6/8)^2 = 22.5; a metre of water is 9.804 kPa
        assertEquals(22.5 - 25, margin.toMakePa() / KPA, 1e-9);
        assertEquals(22.5 - 9.804 - 15, margin.toBreakPa() / KPA, 1e-3);
        assertEquals(-2.5, margin.smallestPa() / KPA, 1e-9);
    }

    @Test
    void lessFlowMeansLessInTheHeatingChamberAndMoreInTheInletChamber() {
        double small = SwitchMargin.heatingChamberPa(DOWN, 3 * L_PER_MIN, 0.5, COLD);
        double large = SwitchMargin.heatingChamberPa(DOWN, 6 * L_PER_MIN, 0.5, COLD);
        assertTrue(small < large);
        assertTrue(SwitchMargin.inletChamberPa(50 * KPA, STRAINER, 3 * L_PER_MIN)
                > SwitchMargin.inletChamberPa(50 * KPA, STRAINER, 6 * L_PER_MIN));
    }

    @Test
    void theWorseOfTwoPlacesGoverns() {
        SwitchMargin first = new SwitchMargin(5, 10);
        SwitchMargin second = new SwitchMargin(20, 4);
        assertSame(second, SwitchMargin.worse(first, second));
        assertSame(second, SwitchMargin.worse(second, first));
        SwitchMargin equal = new SwitchMargin(10, 5);
        assertSame(first, SwitchMargin.worse(first, equal));
    }

    @Test
    void breakFlowsAreWhereTheMarginIsNone() {
        double heating = SwitchMargin.breakFlowInHeatingChamber(15 * KPA, DOWN, 0.5, COLD)
                .value();
        assertEquals(15 * KPA, SwitchMargin.heatingChamberPa(DOWN, heating, 0.5, COLD), 1e-6);
        Outlet unit = Throttle.held(4 * L_PER_MIN, 60 * KPA, 5 * KPA);
        double inlet =
                SwitchMargin.breakFlowInInletChamber(15 * KPA, unit, STRAINER).value();
        assertEquals(15 * KPA, SwitchMargin.inletChamberPa(unit.pressureAt(inlet), STRAINER, inlet), 1e-6);
    }

    @Test
    void breakFlowWithoutANumberIsNamed() {
        assertEquals(
                Solution.none(FailureReason.HELD_BY_HEIGHT),
                SwitchMargin.breakFlowInHeatingChamber(15 * KPA, DOWN, 2, COLD));
        assertEquals(
                Solution.none(FailureReason.HELD_BY_HEIGHT),
                SwitchMargin.breakFlowInHeatingChamber(COLD.pressureOfHead(2), DOWN, 2, COLD));
        Outlet high = Throttle.held(4 * L_PER_MIN, 60 * KPA, 15 * KPA);
        assertEquals(
                Solution.none(FailureReason.HELD_BY_HEIGHT), SwitchMargin.breakFlowInInletChamber(15 * KPA, high, 0));
        Outlet open = new Outlet(STRAINER, 0);
        assertEquals(
                Solution.none(FailureReason.ALL_PRESSURE_LOST),
                SwitchMargin.breakFlowInInletChamber(15 * KPA, open, STRAINER));
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThrows(DomainException.class, () -> new PressureSwitch(10, 20));
        assertThrows(DomainException.class, () -> new PressureSwitch(10, -1));
        assertThrows(DomainException.class, () -> new SwitchMargin(Double.NaN, 0));
        assertThrows(DomainException.class, () -> SwitchMargin.inletChamberPa(1, -1, 1));
        assertThrows(DomainException.class, () -> SwitchMargin.breakFlowInHeatingChamber(1, 0, 0, COLD));
    }
}
