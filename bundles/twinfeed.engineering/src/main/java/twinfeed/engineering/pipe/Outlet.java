// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.water.Fluid;

/**
 * Where water leaves the pipework: what it needs at its inlet is p = p_back + R Q^2.
 *
 * <p>A tap, a hose with its handset, a heater with its throttle held, and the conservative need of a heater all have this
 * form.
 *
 * @param resistancePaPerFlow2 R, Pa/(m3/s)^2, positive
 * @param backPressurePa p_back, Pa, what it takes before anything flows: a height after the inlet; may be negative
 */
public record Outlet(double resistancePaPerFlow2, double backPressurePa) {
    /** Checks the ranges. */
    public Outlet {
        Require.positive(resistancePaPerFlow2, "resistancePaPerFlow2");
        Require.finite(backPressurePa, "backPressurePa");
    }

    /**
     * Returns an outlet that obeys Q = C sqrt(h).
     *
     * @param coefficientM3PerSPerRootM C, m3/s at a head of one metre, positive
     * @param fluid what flows
     */
    public static Outlet ofCoefficient(double coefficientM3PerSPerRootM, Fluid fluid) {
        double c = Require.positive(coefficientM3PerSPerRootM, "coefficientM3PerSPerRootM");
        return new Outlet(fluid.pressureOfHead(1) / (c * c), 0);
    }

    /**
     * Returns an outlet of which one point is known, such as a heater's least running pressure at the flow that its
     * instructions name: p = p_point (Q/Q_point)^2, plus the back pressure.
     *
     * <p>For a heater this is a conservative stand-in, a specification minimum and not a curve of its losses.
     *
     * @param flowM3PerS the point's flow, m3/s, positive
     * @param inletPressurePa the point's pressure at the inlet, Pa, above the back pressure
     * @param backPressurePa back pressure, Pa
     */
    public static Outlet ofPoint(double flowM3PerS, double inletPressurePa, double backPressurePa) {
        Require.positive(flowM3PerS, "flowM3PerS");
        Require.finite(inletPressurePa, "inletPressurePa");
        double differencePa = Require.positive(inletPressurePa - backPressurePa, "inletPressurePa - backPressurePa");
        return new Outlet(differencePa / (flowM3PerS * flowM3PerS), backPressurePa);
    }

    /** Returns the pressure at the inlet, Pa, that a flow, m3/s, zero or more, needs. */
    public double pressureAt(double flowM3PerS) {
        return Require.result(
                backPressurePa + resistancePaPerFlow2 * Require.notNegative(flowM3PerS, "flowM3PerS") * flowM3PerS);
    }

    /** Returns the flow, m3/s, at a pressure at the inlet, Pa; none when it is at or below the back pressure. */
    public double flowAt(double inletPressurePa) {
        double differencePa = Require.finite(inletPressurePa, "inletPressurePa") - backPressurePa;
        return Require.result(Math.sqrt(Math.max(0, differencePa) / resistancePaPerFlow2));
    }
}
