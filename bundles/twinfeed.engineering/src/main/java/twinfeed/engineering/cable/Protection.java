// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * Loop impedance, fault current and the thermal strength of protective conductors.
 *
 * <p>Formulas of BS 7671 (regulations 411.4, 411.5.3 and 543.1.3; from memory except where noted); limits are parameters.
 * A calculated loop impedance (warm conductors) is compared with the whole limit, a measured one (cold) with
 * the share of it that the rule set names; never both. Measurements by a competent person govern.
 */
public final class Protection {
    /** R1 + R2 at 70 degC over that at 20 degC (guide to the wiring rules, read). */
    public static final double WARM_FACTOR = 1.20;

    /** Below this time, s, current and time no longer give the energy: the device's let-through does. */
    public static final double SHORTEST_ADIABATIC_S = 0.1;

    private Protection() {}

    /**
     * Returns the largest loop impedance, ohm, for a device that trips at once: Cmin U0 / (m In).
     *
     * @param multiple m, current that trips at once over the rating (5 for type B, 10 for type C), positive
     * @param deviceA In, A, positive
     * @param nominalV U0, V, positive
     * @param cMin least voltage over nominal, above 0, at most 1
     */
    public static double maxLoopImpedanceOhm(double multiple, double deviceA, double nominalV, double cMin) {
        Require.within(Require.positive(cMin, "cMin"), 0, 1, "cMin");
        double tripA = Require.positive(multiple, "multiple") * Require.positive(deviceA, "deviceA");
        return Require.result(cMin * Require.positive(nominalV, "nominalV") / tripA);
    }

    /**
     * Returns R1 + R2, ohm, of a length of cable.
     *
     * @param lengthM length, m, zero or more
     * @param ohmPerMAt20C R1 + R2 at 20 degC, ohm/m, positive
     * @param temperatureFactor 1 for cold, {@link #WARM_FACTOR} for 70 degC, positive
     */
    public static double r1r2Ohm(double lengthM, double ohmPerMAt20C, double temperatureFactor) {
        return Require.result(Require.notNegative(lengthM, "lengthM")
                * Require.positive(ohmPerMAt20C, "ohmPerMAt20C")
                * Require.positive(temperatureFactor, "temperatureFactor"));
    }

    /** Returns the loop impedance, ohm: Ze + (R1 + R2), added as numbers, which is on the safe side. */
    public static double loopImpedanceOhm(double externalOhm, double r1r2Ohm) {
        return Require.result(
                Require.notNegative(externalOhm, "externalOhm") + Require.notNegative(r1r2Ohm, "r1r2Ohm"));
    }

    /**
     * Returns the largest resistance, ohm, of electrode and protective conductors in a TT system: U / IdN (regulation
     * 411.5.3, read).
     *
     * @param touchLimitV highest touch voltage, V, positive: 50 in the rules
     * @param residualA IdN, rated residual current, A, positive
     */
    public static double electrodeLimitOhm(double touchLimitV, double residualA) {
        return Require.result(Require.positive(touchLimitV, "touchLimitV") / Require.positive(residualA, "residualA"));
    }

    /** Returns the current, A, that a voltage, V (zero or more), drives through a loop, ohm (positive). */
    public static double faultCurrentA(double voltageV, double loopOhm) {
        return Require.result(Require.notNegative(voltageV, "voltageV") / Require.positive(loopOhm, "loopOhm"));
    }

    /**
     * Returns the smallest cross-section, mm2, of a protective conductor: sqrt(I^2 t)/k (regulation 543.1.3).
     *
     * @param currentA fault current, A, zero or more
     * @param timeS disconnection time, s, positive
     * @param k factor of conductor and insulation, A s^0.5/mm2, positive (115 for a conductor in the cable)
     * @return the area, or {@link FailureReason#LET_THROUGH_NEEDED} below 0.1 s
     */
    public static Solution adiabaticAreaMm2(double currentA, double timeS, double k) {
        Require.notNegative(currentA, "currentA");
        Require.positive(timeS, "timeS");
        Require.positive(k, "k");
        return timeS < SHORTEST_ADIABATIC_S
                ? Solution.none(FailureReason.LET_THROUGH_NEEDED)
                : Solution.of(currentA * Math.sqrt(timeS) / k);
    }

    /** Returns the smallest cross-section, mm2, for a let-through energy I^2 t, A2s (zero or more), and a factor k. */
    public static double areaForLetThroughMm2(double letThroughA2s, double k) {
        return Require.result(
                Math.sqrt(Require.notNegative(letThroughA2s, "letThroughA2s")) / Require.positive(k, "k"));
    }

    /** Returns the energy I^2 t, A2s, that a conductor of an area, mm2 (positive), withstands: k^2 S^2. */
    public static double withstandA2s(double areaMm2, double k) {
        double product = Require.positive(areaMm2, "areaMm2") * Require.positive(k, "k");
        return Require.result(product * product);
    }

    /** Returns the time, s, for which a conductor of an area, mm2, withstands a current, A; all positive: k^2 S^2/I^2. */
    public static double adiabaticTimeS(double areaMm2, double currentA, double k) {
        return Require.result(withstandA2s(areaMm2, k) / (Require.positive(currentA, "currentA") * currentA));
    }
}
