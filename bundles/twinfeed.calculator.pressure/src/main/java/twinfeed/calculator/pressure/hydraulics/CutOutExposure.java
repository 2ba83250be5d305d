// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

/**
 * How hot the water gets that reaches a person before a thermal cut-out acts. The heating can is taken as stirred: its outlet goes
 * from one temperature towards another with the time in which its water is changed; the cut-out opens when the outlet passes its
 * temperature, and acts a delay later.
 *
 * @param beforeC outlet temperature before, degC
 * @param unprotectedC outlet temperature that would be reached without a cut-out, degC
 * @param cutOutC temperature at which the cut-out opens, degC; unlimited where there is none
 * @param flowM3PerS flow through the unit, m3/s, positive
 * @param delayS time from there until it acts and the heat is out of the elements, s
 */
public record CutOutExposure(double beforeC, double unprotectedC, double cutOutC, double flowM3PerS, double delayS) {
    /** Water in the heating can, m3. Judgement: cans of such heaters hold a quarter to half a litre. */
    public static final double CAN_M3 = 0.3e-3;

    /** Whether the cut-out acts at all. */
    public boolean acts() {
        return unprotectedC > cutOutC;
    }

    /** Time in which the can's water is changed, s. */
    public double changeS() {
        return CAN_M3 / flowM3PerS;
    }

    /** Time from the opened tap until the heat is off, s; unlimited where the cut-out does not act. */
    public double untilOffS() {
        if (!acts()) {
            return Double.POSITIVE_INFINITY;
        }
        double passes =
                cutOutC > beforeC ? changeS() * Math.log((unprotectedC - beforeC) / (unprotectedC - cutOutC)) : 0;
        return passes + delayS;
    }

    /** Hottest water that reaches a person, degC. */
    public double reachedC() {
        return acts() ? unprotectedC - (unprotectedC - beforeC) * Math.exp(-untilOffS() / changeS()) : unprotectedC;
    }
}
