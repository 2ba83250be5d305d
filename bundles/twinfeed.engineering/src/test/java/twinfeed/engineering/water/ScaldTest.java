// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
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

    /** English health-care guidance on safe water (HTM 04-01, read second hand): a bath no hotter than 44 degC, a shower no hotter than 41. */
    @Test
    void theLimitsAreThoseOfHealthCare() {
        assertEquals(44, Scald.FROM_C);
        assertEquals(41, Scald.UNCOMFORTABLE_C);
    }

    /** Half way between two rows the time is their geometric mean; outside the table the nearest line goes on. */
    @ParameterizedTest
    @CsvSource({"49.5, 1200, 252", "53, 252, 30", "57.5, 30, 5"})
    void betweenTheRowsItsLogarithmIsAStraightLine(double celsius, double before, double after) {
        assertEquals(Math.sqrt(before * after), Scald.secondsToBurn(celsius), 1e-9 * before);
    }

    @Test
    void beyondTheTableTheNearestLineGoesOn() {
        assertEquals(5.0 * 5 / 30, Scald.secondsToBurn(65), 1e-9);
        assertEquals(1200 * 1200 / 252.0, Scald.secondsToBurn(45), 1e-6);
    }
}
