// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<String> NAMES =
            List.of("runningPressure", "staticPressure", "flow", "TN-S", "TN-C-S", "TT");

    @ParameterizedTest
    @CsvSource({
        "runingPressure, runningPressure",
        "RunningPresure, runningPressure",
        "running pressure, runningPressure",
        "static_pressure, staticPressure",
        "flwo, flow",
        "TNCS, TN-C-S",
        "tns, TN-S",
        "colour, ''",
        "pressure, ''"
    })
    void nearest(String unknown, String expected) {
        assertEquals(expected, NearestName.of(unknown, NAMES));
    }

    @Test
    void firstOfEquallyNearOnes() {
        assertEquals("ab", NearestName.of("ac", List.of("ab", "ad")));
    }

    /** The textbook pair of edit distance, kitten and sitting, is three changes apart: too far for six letters, near for nine. */
    @Test
    void threeChanges() {
        assertEquals("", NearestName.of("kitten", List.of("sitting")));
        assertEquals("sittinglog", NearestName.of("kittenlog", List.of("sittinglog")));
    }

    /** One letter more, and a third of the letters more, may still be taken out. */
    @Test
    void longerAndShorterWords() {
        assertEquals("flow", NearestName.of("floww", NAMES));
        assertEquals("flow", NearestName.of("lo", NAMES));
        assertEquals("pressure", NearestName.of("pressuretest", List.of("pressure")));
        assertEquals("", NearestName.of("pressuretests", List.of("pressure")));
        assertEquals("", NearestName.of("flow".repeat(20_000), NAMES));
    }

    @Test
    void nothingKnown() {
        assertEquals("", NearestName.of("flow", List.of()));
    }
}
