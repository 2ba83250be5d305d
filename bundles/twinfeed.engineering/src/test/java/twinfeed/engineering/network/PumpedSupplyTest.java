// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;

/** Handworked: the parabola of a centrifugal pump is common practice. */
class PumpedSupplyTest {
    /** 1.5 bar with everything shut, nothing at 20 L/min, on a tank of 0.3 bar. */
    private static final PumpedSupply PUMPED =
            new PumpedSupply(new FixedPressure(0.3 * BAR), 1.5 * BAR, 20 * L_PER_MIN);

    /** 1.5 (1 - (Q / 20)^2): three quarters at half the flow. */
    @ParameterizedTest
    @CsvSource({"0, 1.5", "10, 1.125", "16, 0.54", "20, 0", "25, 0"})
    void thePumpAddsLessTheMoreFlows(double litresPerMin, double boostBar) {
        double flow = litresPerMin * L_PER_MIN;
        assertEquals(boostBar * BAR, PUMPED.boostAt(flow), 1e-6);
        assertEquals((0.3 + boostBar) * BAR, PUMPED.pressureAt(flow), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"1", "10", "19", "25"})
    void slopeIsThatOfThePressure(double litresPerMin) {
        PumpedSupply onMains =
                new PumpedSupply(new SupplyCurve(3 * BAR, 1.6 * BAR, 15 * L_PER_MIN), 1.5 * BAR, 20 * L_PER_MIN);
        double flow = litresPerMin * L_PER_MIN;
        double step = flow * 1e-6;
        for (PumpedSupply supply : new PumpedSupply[] {PUMPED, onMains}) {
            double expected = (supply.pressureAt(flow + step) - supply.pressureAt(flow - step)) / (2 * step);
            assertEquals(expected, supply.slopeAt(flow), Math.abs(expected) * 1e-6 + 1e-3);
        }
    }

    @Test
    void whereThePumpEndsItsSlopeEndsToo() {
        assertEquals(0, PUMPED.slopeAt(20 * L_PER_MIN));
    }

    @Test
    void refusesAPumpThatIsNone() {
        FixedPressure tank = new FixedPressure(0.3 * BAR);
        assertThrows(DomainException.class, () -> new PumpedSupply(tank, 0, 1e-4));
        assertThrows(DomainException.class, () -> new PumpedSupply(tank, 1e5, 0));
        assertThrows(DomainException.class, () -> PUMPED.boostAt(-1));
        assertThrows(DomainException.class, () -> PUMPED.slopeAt(-1));
    }
}
