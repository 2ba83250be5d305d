// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The stirred can against a step-by-step heat balance, and that hotter is never called cooler. */
class CutOutExposureTest {
    private static final double FLOW = 2.0 / 60_000;

    private static CutOutExposure of(double unprotectedC) {
        return new CutOutExposure(40, unprotectedC, 55, FLOW, 5);
    }

    /** Euler steps of dT/dt = (T_end - T) / tau, with the heat on until 5 s after 55 degC was passed. */
    @Test
    void reachesWhatAHeatBalanceGives() {
        double tau = 0.3e-3 / FLOW;
        double temperature = 40;
        double passed = Double.NaN;
        double step = 1e-4;
        double time = 0;
        while (Double.isNaN(passed) || time < passed + 5) {
            temperature += (81 - temperature) / tau * step;
            time += step;
            if (Double.isNaN(passed) && temperature >= 55) {
                passed = time;
            }
        }
        CutOutExposure exposure = of(81);
        assertEquals(temperature, exposure.reachedC(), 0.01);
        assertEquals(time, exposure.untilOffS(), 0.01);
        assertTrue(exposure.reachedC() > 65 && exposure.reachedC() < 67);
    }

    @Test
    void doesNotActBelowItsTemperature() {
        assertFalse(of(54).acts());
        assertEquals(54, of(54).reachedC());
        assertFalse(of(55).acts());
        assertEquals(55, of(55).reachedC());
        assertEquals(Double.POSITIVE_INFINITY, of(55).untilOffS());
    }

    @Test
    void hotterWaterIsNeverCalledCooler() {
        double last = 0;
        for (double unprotected = 50; unprotected < 100; unprotected += 0.25) {
            double reached = of(unprotected).reachedC();
            assertTrue(reached >= last, () -> "at " + reached);
            assertTrue(reached <= unprotected);
            last = reached;
        }
    }
}
