// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Readings against values from outside the program; each file names its source. */
class PublishedFactorsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "published-factors.csv", useHeadersInDisplayName = true)
    void agreesWithTheGuide(Kind kind, String text, double si, double relTol) {
        assertEquals(si, Quantities.parse(kind, text).si(), Math.abs(si) * relTol);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "fixed-points.csv", useHeadersInDisplayName = true)
    void temperatureScalesMeetAtTheirFixedPoints(String text, double celsius) {
        assertEquals(celsius, Temperature.valueOf(text).si());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "metric-readings.csv", useHeadersInDisplayName = true)
    void metricReadingIsTheNearestDouble(Kind kind, String text, double si) {
        assertEquals(si, Quantities.parse(kind, text).si());
    }
}
