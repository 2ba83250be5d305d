// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.pressure.survey.PipeTables;
import twinfeed.model.survey.PipeMaterial;

/** Bores of nominal sizes: copper in mm by EN 1057, copper in inches by BS 659, which names it by its bore (from memory). */
class NominalSizeTest {
    @ParameterizedTest
    @CsvSource({"15 mm, 13.6", "15mm, 13.6", "' 22  mm ', 20.2", "1/2 in, 12.7", "3/4in, 19.05"})
    void itsUnitMayStandWithOrWithoutASpace(String size, double boreMm) {
        assertEquals(boreMm * 1e-3, PipeTables.boreM(PipeMaterial.COPPER, size).orElseThrow(), 1e-12);
    }

    @Test
    void aSizeThatIsNotMadeHasNoBore() {
        assertTrue(PipeTables.boreM(PipeMaterial.COPPER, "17 mm").isEmpty());
    }
}
