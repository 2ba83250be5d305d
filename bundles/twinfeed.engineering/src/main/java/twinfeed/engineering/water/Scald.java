// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

/**
 * From when on water can scald, and how fast.
 *
 * <p>The two temperatures are the only ones of their kind in the program; rule sets may set others for a check.
 */
public final class Scald {
    /**
     * Temperature from which on water can scald, degC. Judgement, from memory: adult skin bears 44 degC for some hours (Moritz and
     * Henriques 1947), and health-care guidance fills no bath hotter.
     */
    public static final double FROM_C = 44;

    /** Temperature above which most people find a shower too hot, degC: the health-care maximum at a shower (read second hand). */
    public static final double UNCOMFORTABLE_C = 41;

    private static final double[] CELSIUS = {48, 51, 55, 60};
    private static final double[] SECONDS = {1200, 252, 30, 5};

    private Scald() {}

    /**
     * How long water of a temperature may run over adult skin before it burns deeply: 20 min at 48 degC, 4.2 min at 51, 30 s at 55 and 5 s
     * at 60 (table after Moritz and Henriques 1947, read second hand), on straight lines of the logarithm between these and beyond.
     * Children's and old people's skin burns sooner.
     *
     * @param temperatureC temperature of the water, degC
     * @return the time, s
     */
    public static double secondsToBurn(double temperatureC) {
        int i = 0;
        while (i < CELSIUS.length - 2 && temperatureC > CELSIUS[i + 1]) {
            i++;
        }
        double share = (temperatureC - CELSIUS[i]) / (CELSIUS[i + 1] - CELSIUS[i]);
        return SECONDS[i] * Math.pow(SECONDS[i + 1] / SECONDS[i], share);
    }
}
