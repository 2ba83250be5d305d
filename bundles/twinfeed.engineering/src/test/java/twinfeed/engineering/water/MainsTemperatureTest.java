// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.engineering.CaseFile;
import twinfeed.engineering.numeric.DomainException;

class MainsTemperatureTest {
    static Stream<CaseFile.Case> cases() {
        return CaseFile.read("mains-temperature.csv").cases().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithOutsideValues(CaseFile.Case row) {
        MainsTemperature mains = new MainsTemperature(
                row.number("mean_degC"),
                row.number("range_K"),
                row.text("southern").equals("yes"));
        int day = (int) row.number("day");
        assertEquals(row.number("expected"), mains.onDay(day), row.number("tolerance"), row::toString);
    }

    @Test
    void yearlyMeanIsSixFahrenheitAboveTheAir() {
        MainsTemperature mains = new MainsTemperature(12, 16, false);
        double mean = IntStream.rangeClosed(1, 365)
                .mapToDouble(mains::onDay)
                .average()
                .orElseThrow();
        assertEquals(12 + 6 / 1.8, mean, 0.01);
    }

    /**
     * The source lags the water behind the coldest day of the air, 15 January, by 35 days where the yearly mean is 44 degF, and by a day less
     * for each degree Fahrenheit above it.
     */
    @ParameterizedTest
    @CsvSource({"44, 50", "54, 40", "34, 60"})
    void theColdestDayComesEarlierInAWarmerPlace(double meanF, int coldestDay) {
        MainsTemperature mains = new MainsTemperature((meanF - 32) / 1.8, 16, false);
        int found = IntStream.rangeClosed(1, 365)
                .boxed()
                .min(Comparator.comparingDouble(mains::onDay))
                .orElseThrow();
        assertEquals(coldestDay, found, 1);
    }

    private static List<Double> months(MainsTemperature year) {
        return Stream.of(Month.values()).map(year::inMonth).toList();
    }

    @Test
    void coldestMonthIsTurnedRoundInTheSouth() {
        List<Double> north = months(new MainsTemperature(12, 16, false));
        List<Double> south = months(new MainsTemperature(12, 16, true));
        assertEquals(12, north.size());
        assertTrue(north.get(1) < north.get(7));
        assertTrue(south.get(1) > south.get(7));
        assertEquals(north.get(1), south.get(7), 0.1);
    }

    @Test
    void staysWaterInAVeryColdPlace() {
        MainsTemperature mains = new MainsTemperature(-20, 60, false);
        assertEquals(0, mains.onDay(20));
        assertEquals(0, mains.inMonth(Month.FEBRUARY));
    }

    @Test
    void aRatioBelowZeroCountsAsNone() {
        // 0.4 + 0.01 (Ta - 44 degF) is below zero from -15.6 degC down; a year without swing is -60 + 3.3 there, so 0.
        MainsTemperature mains = new MainsTemperature(-16, 100, false);
        IntStream.rangeClosed(1, 365).forEach(day -> assertEquals(0, mains.onDay(day)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 366, -1})
    void refusesADayOutsideTheYear(int day) {
        MainsTemperature mains = new MainsTemperature(10, 14, false);
        DomainException refused = assertThrows(DomainException.class, () -> mains.onDay(day));
        assertEquals("day", refused.argument());
    }
}
