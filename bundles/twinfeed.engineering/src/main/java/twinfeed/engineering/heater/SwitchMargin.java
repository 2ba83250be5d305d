// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.heater;

import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.water.Fluid;

/**
 * How far the pressure at a unit's switch lies above the pressures at which it makes and breaks.
 *
 * <p>Units differ in where the switch feels the pressure:
 *
 * <ul>
 *   <li><b>inlet chamber</b>, before the throttle: p = p_inlet - R_s Q^2, smallest at the largest flow and with taps open;
 *   <li><b>heating chamber</b>, after the throttle: p = R_down Q^2 + rho g z, smallest at the smallest flow, so in winter.
 *       To make, z is 0, because the hose starts empty; to stay made, z is the lowest usable handset position, which may be
 *       below the chamber.
 * </ul>
 *
 * <p>Where the place is not known, both are computed and {@link #worse} governs. Common practice; no source.
 *
 * @param toMakePa pressure at the switch less its make pressure, Pa
 * @param toBreakPa pressure at the switch less its break pressure, Pa
 */
public record SwitchMargin(double toMakePa, double toBreakPa) {
    /** Checks the ranges. */
    public SwitchMargin {
        Require.finite(toMakePa, "toMakePa");
        Require.finite(toBreakPa, "toBreakPa");
    }

    /** Returns the smaller of the two margins, Pa. */
    public double smallestPa() {
        return Math.min(toMakePa, toBreakPa);
    }

    /** Returns the margin with the smaller smallest part; the first when equal. */
    public static SwitchMargin worse(SwitchMargin first, SwitchMargin second) {
        return second.smallestPa() < first.smallestPa() ? second : first;
    }

    /**
     * Returns the pressure, Pa, in the inlet chamber: p_inlet - R_s Q^2.
     *
     * @param inletPressurePa pressure at the unit's inlet, Pa, finite
     * @param strainerPaPerFlow2 R_s, resistance of strainer and solenoid valve, Pa/(m3/s)^2, zero or more
     * @param flowM3PerS flow, m3/s, zero or more
     */
    public static double inletChamberPa(double inletPressurePa, double strainerPaPerFlow2, double flowM3PerS) {
        Require.notNegative(strainerPaPerFlow2, "strainerPaPerFlow2");
        Require.notNegative(flowM3PerS, "flowM3PerS");
        return Require.result(
                Require.finite(inletPressurePa, "inletPressurePa") - strainerPaPerFlow2 * flowM3PerS * flowM3PerS);
    }

    /**
     * Returns the pressure, Pa, in the heating chamber: R_down Q^2 + rho g z.
     *
     * @param downstreamPaPerFlow2 R_down, resistance after the chamber, Pa/(m3/s)^2, zero or more
     * @param flowM3PerS flow, m3/s, zero or more
     * @param handsetHeightM z, height of the handset above the chamber, m, negative when it hangs lower
     * @param fluid water in the hose
     */
    public static double heatingChamberPa(
            double downstreamPaPerFlow2, double flowM3PerS, double handsetHeightM, Fluid fluid) {
        Require.notNegative(downstreamPaPerFlow2, "downstreamPaPerFlow2");
        Require.notNegative(flowM3PerS, "flowM3PerS");
        return Require.result(downstreamPaPerFlow2 * flowM3PerS * flowM3PerS + fluid.pressureOfHead(handsetHeightM));
    }

    /**
     * Returns the margins of a switch in the inlet chamber.
     *
     * @param pressureSwitch make and break pressures
     * @param inletPressurePa pressure at the unit's inlet, Pa, finite
     * @param strainerPaPerFlow2 R_s, Pa/(m3/s)^2, zero or more
     * @param flowM3PerS flow, m3/s, zero or more
     */
    public static SwitchMargin inInletChamber(
            PressureSwitch pressureSwitch, double inletPressurePa, double strainerPaPerFlow2, double flowM3PerS) {
        double pressurePa = inletChamberPa(inletPressurePa, strainerPaPerFlow2, flowM3PerS);
        return new SwitchMargin(pressurePa - pressureSwitch.makePa(), pressurePa - pressureSwitch.breakPa());
    }

    /**
     * Returns the margins of a switch in the heating chamber.
     *
     * @param pressureSwitch make and break pressures
     * @param downstreamPaPerFlow2 R_down, Pa/(m3/s)^2, zero or more
     * @param flowM3PerS flow, m3/s, zero or more
     * @param lowestHandsetM lowest usable height of the handset above the chamber, m, may be negative
     * @param fluid water in the hose
     */
    public static SwitchMargin inHeatingChamber(
            PressureSwitch pressureSwitch,
            double downstreamPaPerFlow2,
            double flowM3PerS,
            double lowestHandsetM,
            Fluid fluid) {
        double starting = heatingChamberPa(downstreamPaPerFlow2, flowM3PerS, 0, fluid);
        double running = heatingChamberPa(downstreamPaPerFlow2, flowM3PerS, lowestHandsetM, fluid);
        return new SwitchMargin(starting - pressureSwitch.makePa(), running - pressureSwitch.breakPa());
    }

    /**
     * Returns the flow, m3/s, below which a switch in the inlet chamber opens, with the unit's throttle held.
     *
     * @param breakPa break pressure, Pa, zero or more
     * @param unit the unit with its throttle held, as seen from its inlet
     * @param strainerPaPerFlow2 R_s, Pa/(m3/s)^2, zero or more
     * @return the flow; {@link FailureReason#ALL_PRESSURE_LOST} when the strainer takes as much as the whole unit;
     *     {@link FailureReason#HELD_BY_HEIGHT} when the height after the inlet alone keeps the switch made
     */
    public static Solution breakFlowInInletChamber(double breakPa, Outlet unit, double strainerPaPerFlow2) {
        Require.notNegative(breakPa, "breakPa");
        Require.notNegative(strainerPaPerFlow2, "strainerPaPerFlow2");
        double afterStrainer = unit.resistancePaPerFlow2() - strainerPaPerFlow2;
        if (afterStrainer <= 0) {
            return Solution.none(FailureReason.ALL_PRESSURE_LOST);
        }
        double leftPa = breakPa - unit.backPressurePa();
        return leftPa <= 0
                ? Solution.none(FailureReason.HELD_BY_HEIGHT)
                : Solution.of(Math.sqrt(leftPa / afterStrainer));
    }

    /**
     * Returns the flow, m3/s, below which a switch in the heating chamber opens.
     *
     * @param breakPa break pressure, Pa, zero or more
     * @param downstreamPaPerFlow2 R_down, Pa/(m3/s)^2, positive
     * @param handsetHeightM height of the handset above the chamber, m, may be negative
     * @param fluid water in the hose
     * @return the flow, or {@link FailureReason#HELD_BY_HEIGHT} when the height alone keeps the switch made
     */
    public static Solution breakFlowInHeatingChamber(
            double breakPa, double downstreamPaPerFlow2, double handsetHeightM, Fluid fluid) {
        Require.notNegative(breakPa, "breakPa");
        Require.positive(downstreamPaPerFlow2, "downstreamPaPerFlow2");
        double leftPa = breakPa - fluid.pressureOfHead(handsetHeightM);
        return leftPa <= 0
                ? Solution.none(FailureReason.HELD_BY_HEIGHT)
                : Solution.of(Math.sqrt(leftPa / downstreamPaPerFlow2));
    }
}
