// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * The heater as a resistance and as a heater of water.
 *
 * <p>Electrical relations are Ohm's law for a resistance that does not change with temperature. Heat is the difference
 * of enthalpies of {@link Water}, not a constant specific heat; losses of the casing are left out (a fraction of a per
 * cent of an instantaneous heater's power, and on the safe side for scald).
 */
public final class Heat {
    private Heat() {}

    /**
     * Returns the mass flow, kg/s, that a power heats from the intake to the outlet temperature: P / (h(out) - h(in)).
     *
     * @param powerW power into the water, W, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param outletC target outlet temperature, 0..100 degC
     * @return the flow; {@link FailureReason#NO_HEATING_NEEDED} when the outlet is at or below the intake,
     *     {@link FailureReason#NO_POWER} without power
     * @throws DomainException outside the ranges
     */
    public static Solution massFlowForOutlet(double powerW, double intakeC, double outletC) {
        Require.notNegative(powerW, "powerW");
        double riseJPerKg = enthalpyRise(intakeC, outletC);
        if (riseJPerKg <= 0) {
            return Solution.none(FailureReason.NO_HEATING_NEEDED);
        }
        return powerW == 0 ? Solution.none(FailureReason.NO_POWER) : Solution.of(powerW / riseJPerKg);
    }

    /**
     * Returns the outlet temperature, degC, of a mass flow that takes up a power.
     *
     * @param powerW power into the water, W, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param massFlowKgPerS mass flow, kg/s, finite
     * @return the temperature; {@link FailureReason#FLOW_NOT_POSITIVE} without flow, {@link FailureReason#ABOVE_100_DEGC} where the
     *     water would pass 100 degC
     * @throws DomainException outside the ranges
     */
    public static Solution outletTemperature(double powerW, double intakeC, double massFlowKgPerS) {
        Require.notNegative(powerW, "powerW");
        Require.finite(massFlowKgPerS, "massFlowKgPerS");
        double intakeJPerKg = Water.enthalpy(Water.requireInRange(intakeC, "intakeC"));
        if (massFlowKgPerS <= 0) {
            return Solution.none(FailureReason.FLOW_NOT_POSITIVE);
        }
        double outletJPerKg = intakeJPerKg + powerW / massFlowKgPerS;
        return outletJPerKg > Water.enthalpy(Water.HIGHEST_C)
                ? Solution.none(FailureReason.ABOVE_100_DEGC)
                : Water.temperatureAtEnthalpy(outletJPerKg);
    }

    /**
     * Returns the power, W, that heats a mass flow from the intake to the outlet temperature.
     *
     * @param massFlowKgPerS mass flow, kg/s, zero or more
     * @param intakeC intake temperature, 0..100 degC
     * @param outletC outlet temperature, 0..100 degC
     * @return the power, or {@link FailureReason#NO_HEATING_NEEDED} when the outlet is at or below the intake
     * @throws DomainException outside the ranges
     */
    public static Solution powerForFlow(double massFlowKgPerS, double intakeC, double outletC) {
        Require.notNegative(massFlowKgPerS, "massFlowKgPerS");
        double riseJPerKg = enthalpyRise(intakeC, outletC);
        return outletC <= intakeC
                ? Solution.none(FailureReason.NO_HEATING_NEEDED)
                : Solution.of(massFlowKgPerS * riseJPerKg);
    }

    private static double enthalpyRise(double intakeC, double outletC) {
        Water.requireInRange(intakeC, "intakeC");
        Water.requireInRange(outletC, "outletC");
        return Water.enthalpy(outletC) - Water.enthalpy(intakeC);
    }

    /** Returns the volume flow, m3/s, at the inlet (what the pipes carry) of a mass flow, kg/s, at the intake, degC. */
    public static double volumeFlowAtInlet(double massFlowKgPerS, double intakeC) {
        return Require.result(Require.notNegative(massFlowKgPerS, "massFlowKgPerS") / Water.density(intakeC));
    }

    /** Returns the volume flow, m3/s, at the outlet (what a bucket catches) of a mass flow, kg/s, at the outlet, degC. */
    public static double volumeFlowAtOutlet(double massFlowKgPerS, double outletC) {
        return Require.result(Require.notNegative(massFlowKgPerS, "massFlowKgPerS") / Water.density(outletC));
    }

    /** Returns the mass flow, kg/s, of a volume flow, m3/s (zero or more), that was measured at a temperature, degC. */
    public static double massFlow(double volumeFlowM3PerS, double temperatureC) {
        return Require.result(Require.notNegative(volumeFlowM3PerS, "volumeFlowM3PerS") * Water.density(temperatureC));
    }

    /**
     * Returns the power, W, of a resistance at another voltage than its rated one: Pr (U/Ur)^2.
     *
     * @param ratedW rated power, W, zero or more
     * @param ratedV rated voltage, V, positive
     * @param actualV voltage at the terminals, V, zero or more
     * @throws DomainException outside the ranges
     */
    public static double powerAtVoltage(double ratedW, double ratedV, double actualV) {
        Require.notNegative(ratedW, "ratedW");
        double ratio = Require.notNegative(actualV, "actualV") / Require.positive(ratedV, "ratedV");
        return Require.result(ratedW * ratio * ratio);
    }

    /** Returns the resistance, ohm, Ur^2/Pr, of a rated power, W, at a rated voltage, V, both positive. */
    public static double elementResistance(double ratedW, double ratedV) {
        return Require.result(Require.positive(ratedV, "ratedV") * ratedV / Require.positive(ratedW, "ratedW"));
    }

    /**
     * Returns the current, A, of a heater at a voltage: U Pr / Ur^2.
     *
     * @param ratedW rated power, W, zero or more
     * @param ratedV rated voltage, V, positive
     * @param actualV voltage at the terminals, V, zero or more
     * @throws DomainException outside the ranges
     */
    public static double currentAt(double ratedW, double ratedV, double actualV) {
        Require.notNegative(ratedW, "ratedW");
        Require.notNegative(actualV, "actualV");
        return Require.result(actualV * ratedW / (Require.positive(ratedV, "ratedV") * ratedV));
    }

    /** Returns the power, W, of a resistance, ohm (positive), at a voltage, V (zero or more): U^2/R. */
    public static double powerOfResistance(double resistanceOhm, double actualV) {
        return Require.result(
                Require.notNegative(actualV, "actualV") * actualV / Require.positive(resistanceOhm, "resistanceOhm"));
    }

    /**
     * Returns the resistance, ohm, of elements in parallel.
     *
     * @param elementsOhm the elements, each positive, at least one
     * @throws DomainException if there is none, or one is not positive
     */
    public static double parallelResistance(double... elementsOhm) {
        if (elementsOhm.length == 0) {
            throw new DomainException(FailureReason.NOT_POSITIVE, "elementsOhm.length", 0);
        }
        return Require.result(1 / conductance(elementsOhm));
    }

    /**
     * Returns the share of full power, 0..1, that one element alone gives: low power by the selector, or the other
     * elements open.
     *
     * @param element index of the element that heats
     * @param elementsOhm all elements as built, each positive
     * @throws DomainException if the index is not that of an element, or an element is not positive
     */
    public static double shareOfElement(int element, double... elementsOhm) {
        Require.within(element, 0, elementsOhm.length - 1.0, "element");
        return Require.result(1 / elementsOhm[element] / conductance(elementsOhm));
    }

    private static double conductance(double... elementsOhm) {
        double sum = 0;
        for (double ohm : elementsOhm) {
            sum += 1 / Require.positive(ohm, "elementsOhm");
        }
        return sum;
    }
}
