// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.water.Fluid;

/**
 * Losses of pressure in pipes by Darcy-Weisbach.
 *
 * <p>Friction factor: 64/Re below Re = 2000; Colebrook-White above 4000; between them, where no law is agreed, the larger
 * of the two, which is conservative. All losses grow strictly with the flow; at Re = 2000 friction steps upward.
 *
 * <p>Source: handbooks of fluid mechanics (C. F. Colebrook, J. Inst. Civ. Eng. 11, 1939, for the turbulent law; from
 * memory).
 *
 * <p>For many flows through the same pipes see {@link PipeRun}.
 */
public final class Pipe {
    /** Highest Reynolds number of the laminar law. */
    public static final double LAMINAR_BELOW = 2000;

    /** Reynolds number above which the turbulent law stands alone. */
    public static final double TURBULENT_ABOVE = 4000;

    /** Largest roughness over bore for which Colebrook-White is meant. */
    public static final double LARGEST_RELATIVE_ROUGHNESS = 0.05;

    private Pipe() {}

    /** Returns the mean velocity, m/s, of a flow, m3/s (zero or more), in a bore, m (positive). */
    public static double velocity(double flowM3PerS, double boreM) {
        Require.notNegative(flowM3PerS, "flowM3PerS");
        Require.positive(boreM, "boreM");
        return Require.result(flowM3PerS / (Math.PI * boreM * boreM / 4));
    }

    /** Returns the Reynolds number v D / nu of a flow, m3/s (zero or more), in a bore, m (positive). */
    public static double reynolds(double flowM3PerS, double boreM, Fluid fluid) {
        return Require.result(velocity(flowM3PerS, boreM) * boreM / fluid.kinematicViscosityM2PerS());
    }

    /** Returns the regime of a Reynolds number, zero or more. */
    public static FlowRegime regime(double reynolds) {
        if (Require.notNegative(reynolds, "reynolds") == 0) {
            return FlowRegime.STILL;
        }
        if (reynolds < LAMINAR_BELOW) {
            return FlowRegime.LAMINAR;
        }
        return reynolds <= TURBULENT_ABOVE ? FlowRegime.CRITICAL : FlowRegime.TURBULENT;
    }

    /**
     * Returns the Darcy friction factor (four times the Fanning factor).
     *
     * @param reynolds Reynolds number, positive: without flow there is no factor
     * @param relativeRoughness roughness over bore, 0..0.05
     * @throws DomainException outside the ranges
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        Require.positive(reynolds, "reynolds");
        Require.within(relativeRoughness, 0, LARGEST_RELATIVE_ROUGHNESS, "relativeRoughness");
        if (reynolds < LAMINAR_BELOW) {
            return Require.result(64 / reynolds);
        }
        // Above that the turbulent factor is the larger for every roughness, so the two need not be compared.
        double x = Colebrook.inverseRoot(
                relativeRoughness / Colebrook.ROUGHNESS_DIVISOR, Colebrook.VISCOUS_NUMERATOR / reynolds);
        return Require.result(1 / (x * x));
    }

    /** Returns the friction loss, Pa, of a flow, m3/s (zero or more), in a segment. */
    public static double frictionLossPa(PipeSegment segment, Fluid fluid, double flowM3PerS) {
        double reynolds = reynolds(flowM3PerS, segment.boreM(), fluid);
        double lengths = segment.lengthM() / segment.boreM();
        double velocity = velocity(flowM3PerS, segment.boreM());
        if (reynolds < LAMINAR_BELOW) {
            // 64/Re written out, so that no flow gives no loss instead of 0 * infinity
            return Require.result(32
                    * lengths
                    * fluid.densityKgPerM3()
                    * fluid.kinematicViscosityM2PerS()
                    * velocity
                    / segment.boreM());
        }
        double factor = frictionFactor(reynolds, segment.roughnessM() / segment.boreM());
        return Require.result(factor * lengths * velocityPressurePa(fluid, velocity));
    }

    /** Returns the loss, Pa, of a flow, m3/s (zero or more), in the fittings of a segment: K rho v^2 / 2. */
    public static double fittingLossPa(PipeSegment segment, Fluid fluid, double flowM3PerS) {
        return Require.result(segment.k() * velocityPressurePa(fluid, velocity(flowM3PerS, segment.boreM())));
    }

    private static double velocityPressurePa(Fluid fluid, double velocityMPerS) {
        return fluid.densityKgPerM3() * velocityMPerS * velocityMPerS / 2;
    }

    /** Returns the pressure, Pa, that the rise of a segment takes; negative when it falls. */
    public static double heightPa(PipeSegment segment, Fluid fluid) {
        return fluid.pressureOfHead(segment.riseM());
    }

    /** Returns the head, m of the fluid, that friction and fittings take (without the rise). */
    public static double headLossM(PipeSegment segment, Fluid fluid, double flowM3PerS) {
        return fluid.headOfPressure(
                frictionLossPa(segment, fluid, flowM3PerS) + fittingLossPa(segment, fluid, flowM3PerS));
    }
}
