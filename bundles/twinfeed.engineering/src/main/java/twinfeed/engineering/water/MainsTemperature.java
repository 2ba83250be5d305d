// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import java.time.Month;
import java.util.stream.IntStream;
import twinfeed.engineering.numeric.Require;

/**
 * A model of the temperature of mains water through the year, for climates without a published table.
 *
 * <p>T = (Ta + 6) + r (dT/2) sin(0.986 (day - 15 - lag) - 90 deg), r = 0.4 + 0.01 (Ta - 44), lag = 35 - (Ta - 44), all in
 * degF; in the south the sine is turned by 180 deg. The ratio r is kept at zero or above, and the water within 0..100
 * degC. In a mild maritime winter it is about 3 K too warm: where a table is published, use the table.
 *
 * <p>Source: Hendron et al. 2004 after Christensen and Burch, as given in a public building-simulation engineering
 * reference (read).
 *
 * @param annualMeanAirC Ta, annual mean outdoor air temperature, -60..60 degC
 * @param monthlyRangeK dT, warmest less coldest monthly mean of outdoor air, K, 0..100
 * @param southern whether the place is south of the equator
 */
public record MainsTemperature(double annualMeanAirC, double monthlyRangeK, boolean southern) {
    private static final double OFFSET_F = 6;
    private static final double DEGREES_PER_DAY = 0.986;

    /** Checks the ranges. */
    public MainsTemperature {
        Require.within(annualMeanAirC, -60, 60, "annualMeanAirC");
        Require.within(monthlyRangeK, 0, 100, "monthlyRangeK");
    }

    /**
     * Returns the temperature of mains water, degC, 0..100, on a day of the year.
     *
     * @param day 1 (1 January) .. 365
     */
    public double onDay(int day) {
        Require.within(day, 1, 365, "day");
        double above44F = annualMeanAirC * 1.8 + 32 - 44;
        double ratio = Math.max(0, 0.4 + 0.01 * above44F);
        double lagDays = 35 - above44F;
        double angle = DEGREES_PER_DAY * (day - 15 - lagDays) - 90 + (southern ? 180 : 0);
        double swingK = ratio * monthlyRangeK / 2 * Math.sin(Math.toRadians(angle));
        double temperatureC = annualMeanAirC + OFFSET_F / 1.8 + swingK;
        return Math.min(Math.max(temperatureC, Water.LOWEST_C), Water.HIGHEST_C);
    }

    /** Returns the mean of a month's days, degC, 0..100, in a year of 365 days. */
    public double inMonth(Month month) {
        int first = month.firstDayOfYear(false);
        return IntStream.range(first, first + month.length(false))
                .mapToDouble(this::onDay)
                .average()
                .orElseThrow();
    }
}
