// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Ratio;

class PowerToleranceTest {
    private final Heater heater = CatalogueFactory.eINSTANCE.createHeater();

    /** EN 60335-1, 10.1, heating appliances over 200 W (from memory): 5 % above the rating and 10 % below it. */
    @Test
    void theStandardHoldsWhereTheInstructionsAreSilent() {
        PowerTolerance tolerance = PowerTolerance.of(heater);
        assertEquals(1.05, tolerance.share(1), 1e-12);
        assertEquals(0.90, tolerance.share(-1), 1e-12);
        assertEquals(1, tolerance.share(0));
        assertEquals(1.025, tolerance.share(0.5), 1e-12);
        assertEquals(0.95, tolerance.share(-0.5), 1e-12);
    }

    @Test
    void theInstructionsComeFirst() {
        heater.setPowerToleranceUp(Ratio.valueOf("3 %"));
        heater.setPowerToleranceDown(Ratio.valueOf("0 %"));
        assertEquals(1.03, PowerTolerance.of(heater).share(1), 1e-12);
        assertEquals(1, PowerTolerance.of(heater).share(-1));
    }

    /** A tolerance of 500 % is a slip of the pen; half the rating is the most that is believed. */
    @Test
    void whatNoHeaterHasIsNotBelieved() {
        heater.setPowerToleranceUp(Ratio.valueOf("51 %"));
        heater.setPowerToleranceDown(Ratio.valueOf("50 %"));
        assertEquals(1.05, PowerTolerance.of(heater).share(1), 1e-12);
        assertEquals(0.5, PowerTolerance.of(heater).share(-1), 1e-12);
    }
}
