// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.time.Month;
import twinfeed.calculator.formula.Working;

/** Writes down the temperature of mains water in the middle of a month from the air temperatures of a climate. */
final class MainsWorking {
    private static final String MODEL = "Hendron et al. 2004 after Christensen and Burch";
    private static final double DEGREES_PER_DAY = 0.986;

    private MainsWorking() {}

    /** The day of the year in the middle of a month. */
    static int middleDay(Month month) {
        return month.firstDayOfYear(false) + month.length(false) / 2;
    }

    /**
     * The lines. The sine is put in from a table, because the grammar of workings has none.
     *
     * @param meanC annual mean air temperature, degC
     * @param spreadK warmest less coldest monthly mean, K
     */
    static Working of(double meanC, double spreadK, boolean southern, Month month) {
        Working.Builder lines = Working.start()
                .input("T_a", "meanAir", meanC, "°C", "")
                .input("dT", "airSpread", spreadK, "K", "")
                .input("day", "dayOfYear", middleDay(month), "", "")
                .input("turn", "hemisphereTurn", southern ? 180 : 0, "°", "")
                .step("x", "above44", "T_a * 1.8 + 32 - 44", "°F", MODEL)
                .step("r", "swingRatio", "max(0, 0.4 + 0.01 * x)", "", MODEL)
                .step("lag", "lagDays", "35 - x", "d", MODEL)
                .step("angle", "seasonAngle", DEGREES_PER_DAY + " * (day - 15 - lag) - 90 + turn", "°", MODEL);
        double sine = Math.sin(Math.toRadians(lines.value("angle")));
        return lines.input("sine", "seasonSine", sine, "", "sine of the angle")
                .step("T", "mainsTemperature", "min(100, max(0, T_a + 6 / 1.8 + r * dT / 2 * sine))", "°C", MODEL)
                .build();
    }
}
