// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Adult, full thickness: table after Moritz and Henriques 1947, read second hand. */
class ScaldTest {
    @ParameterizedTest
    @CsvSource({"48, 1200", "51, 252", "55, 30", "60, 5"})
    void agreesWithTheTable(double celsius, double seconds) {
        assertEquals(seconds, Scald.secondsToBurn(celsius), 1e-9 * seconds);
        assertTrue(Scald.secondsToBurn(celsius + 1) < seconds);
    }
}
