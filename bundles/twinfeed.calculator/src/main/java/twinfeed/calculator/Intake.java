// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * An intake temperature of the grid of conditions.
 *
 * @param month 1 to 12, or 0 for the winter design temperature
 * @param temperatureC intake temperature, degC, 0 to 40
 */
public record Intake(int month, double temperatureC) {
    /** Whether this is the winter design temperature rather than a month's mean. */
    public boolean design() {
        return month == 0;
    }

    /** Its origin in lines of workings: the reading of the winter, or a month's figure of the climate. */
    public String origin() {
        return design() ? "survey.winterIntake" : "climate.month." + month;
    }
}
