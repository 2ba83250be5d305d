// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

/**
 * One straight pipe with its fittings.
 *
 * @param lengthM length, m
 * @param boreM bore, m
 * @param roughnessM wall roughness, m
 * @param k loss coefficients of its fittings, summed, referred to the velocity in the bore
 * @param riseM how much higher its end lies, m
 */
record PipeLoss(double lengthM, double boreM, double roughnessM, double k, double riseM) {
    /** Velocity of a flow in m3/s, m/s. */
    double velocity(double flow) {
        return flow / (Math.PI * boreM * boreM / 4);
    }

    /** Pressure lost at a flow in m3/s, height included, Pa: Darcy-Weisbach. */
    double lostPa(double flow, LiquidWater water) {
        return frictionPa(flow, water) + fittingsPa(flow, water) + water.columnPa(riseM);
    }

    double frictionPa(double flow, LiquidWater water) {
        if (flow <= 0) {
            return 0;
        }
        double v = velocity(flow);
        return frictionFactor(v * boreM / water.kinematicViscosity()) * lengthM / boreM * water.density() * v * v / 2;
    }

    double fittingsPa(double flow, LiquidWater water) {
        double v = velocity(Math.max(0, flow));
        return k * water.density() * v * v / 2;
    }

    /**
     * Friction factor after Darcy: 64/Re when laminar, Colebrook-White from Re = 2000 on. In between no law is agreed, so the larger of
     * the two is taken there, as the program says it does.
     */
    private double frictionFactor(double reynolds) {
        double laminar = 64 / reynolds;
        if (reynolds < 2000) {
            return laminar;
        }
        double root = Bisection.root(x -> x + 2 * Math.log10(roughnessM / boreM / 3.7 + 2.51 * x / reynolds), 0.5, 20);
        return Math.max(laminar, 1 / (root * root));
    }
}
