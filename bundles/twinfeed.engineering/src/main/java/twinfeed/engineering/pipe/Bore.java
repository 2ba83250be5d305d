// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.water.Fluid;

/**
 * All pipe of one bore and roughness in a run, with what does not depend on the flow worked out.
 *
 * @param reynoldsPerFlow Re/Q, s/m3
 * @param viscousFlow b Q of Colebrook-White, m3/s
 * @param a roughness term of Colebrook-White
 * @param laminarPaPerFlow loss over flow in laminar flow, Pa s/m3
 * @param paPerFlow2AndFactor loss over f Q^2
 */
record Bore(double reynoldsPerFlow, double viscousFlow, double a, double laminarPaPerFlow, double paPerFlow2AndFactor) {
    Bore {
        Require.result(reynoldsPerFlow);
        Require.result(laminarPaPerFlow);
        Require.result(paPerFlow2AndFactor);
    }

    static Bore of(PipeSegment segment, Fluid fluid) {
        double boreM = segment.boreM();
        double area = Math.PI * boreM * boreM / 4;
        double nu = fluid.kinematicViscosityM2PerS();
        double lengths = segment.lengthM() / boreM;
        double reynoldsPerFlow = boreM / (area * nu);
        return new Bore(
                reynoldsPerFlow,
                Colebrook.VISCOUS_NUMERATOR / reynoldsPerFlow,
                segment.roughnessM() / boreM / Colebrook.ROUGHNESS_DIVISOR,
                32 * lengths * fluid.densityKgPerM3() * nu / (boreM * area),
                lengths * fluid.densityKgPerM3() / (2 * area * area));
    }

    boolean joins(Bore other) {
        return reynoldsPerFlow == other.reynoldsPerFlow && a == other.a;
    }

    Bore plus(Bore other) {
        return new Bore(
                reynoldsPerFlow,
                viscousFlow,
                a,
                laminarPaPerFlow + other.laminarPaPerFlow,
                paPerFlow2AndFactor + other.paPerFlow2AndFactor);
    }

    /** Adds the loss at a flow, and its slope. */
    void add(double flow, SlopedValue sum) {
        addTurbulent(flow, laminar(flow) ? 0 : Colebrook.inverseRoot(a, viscousFlow / flow), sum);
    }

    /**
     * Adds the loss at a flow with one step towards its friction factor, from that of a flow nearby.
     *
     * @param x 1/sqrt(f) of the flow nearby
     * @return 1/sqrt(f) of this flow, or x where it is laminar
     */
    double addNear(double flow, double x, SlopedValue sum) {
        double nearer = laminar(flow) ? 0 : Colebrook.nearer(a, viscousFlow / flow, x);
        addTurbulent(flow, nearer, sum);
        return nearer == 0 ? x : nearer;
    }

    private boolean laminar(double flow) {
        return reynoldsPerFlow * flow < Pipe.LAMINAR_BELOW;
    }

    /** Above Re = 2000 the turbulent factor is the larger for every roughness, so the two need not be compared. */
    private void addTurbulent(double flow, double x, SlopedValue sum) {
        if (x == 0) {
            sum.value += laminarPaPerFlow * flow;
            sum.slope += laminarPaPerFlow;
            return;
        }
        double b = viscousFlow / flow;
        double inside = a + b * x;
        double whole = Colebrook.withSlope(inside, b);
        double part = paPerFlow2AndFactor * flow / (x * x * whole);
        sum.value += part * flow * whole;
        sum.slope += 2 * part * inside;
    }
}
