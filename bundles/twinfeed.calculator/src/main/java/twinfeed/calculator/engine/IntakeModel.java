// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

/**
 * Intake temperature from air temperatures, for climates without a published table. The use cases supply the engineering
 * bundle's function, so that this bundle needs no physics of its own.
 */
@FunctionalInterface
public interface IntakeModel {
    /**
     * Intake temperature of one month, degC.
     *
     * @param annualMeanAirC mean air temperature of the year, degC
     * @param monthlySpreadK warmest less coldest month's mean air temperature, K
     * @param month 1 to 12
     * @param southern whether the place lies in the southern hemisphere
     */
    double temperatureC(double annualMeanAirC, double monthlySpreadK, int month, boolean southern);
}
