// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

/**
 * The readings of a two-point test from which a supply curve was made, for its workings.
 *
 * @param staticPa static pressure as read, Pa
 * @param runningPa running pressure as read, Pa
 * @param heightM height of the gauge over the pipe, m; 0 where nobody says
 * @param temperatureC temperature of the water at the test, degC
 * @param temperatureOrigin origin of that temperature
 */
public record TestOrigin(
        double staticPa, double runningPa, double heightM, double temperatureC, String temperatureOrigin) {}
