// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

/**
 * How long water of a temperature may run over adult skin before it burns deeply: 20 min at 48 degC, 4.2 min at 51, 30 s at 55 and 5 s at
 * 60 (table after Moritz and Henriques 1947, read second hand), on straight lines of the logarithm between these and beyond. Children's
 * and old people's skin burns sooner.
 */
final class ScaldTime {
    private static final double[] CELSIUS = {48, 51, 55, 60};
    private static final double[] SECONDS = {1200, 252, 30, 5};

    private ScaldTime() {}

    /** The time, s. */
    static double of(double temperatureC) {
        int i = 0;
        while (i < CELSIUS.length - 2 && temperatureC > CELSIUS[i + 1]) {
            i++;
        }
        double share = (temperatureC - CELSIUS[i]) / (CELSIUS[i + 1] - CELSIUS[i]);
        return SECONDS[i] * Math.pow(SECONDS[i + 1] / SECONDS[i], share);
    }
}
