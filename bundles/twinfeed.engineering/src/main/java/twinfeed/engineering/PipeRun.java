// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import java.util.ArrayList;
import java.util.List;

/**
 * Segments of pipe one after another, with everything that does not depend on the flow worked out once: the quick way to
 * ask for the loss at many flows.
 *
 * <p>Gives the same as the sum of {@link Pipe} over the segments. Immutable.
 */
public final class PipeRun {
    /** A friction factor of the usual size in house pipes, only for the start of a search. */
    private static final double USUAL_FACTOR = 0.03;

    private final List<Bore> bores;
    private final double fittingPaPerFlow2;
    private final double risePa;
    private final double laminarPaPerFlow;
    private final double roughPaPerFlow2;

    private PipeRun(List<Bore> bores, double fittingPaPerFlow2, double risePa) {
        this.bores = List.copyOf(bores);
        this.fittingPaPerFlow2 = fittingPaPerFlow2;
        this.risePa = risePa;
        this.laminarPaPerFlow =
                bores.stream().mapToDouble(Bore::laminarPaPerFlow).sum();
        this.roughPaPerFlow2 =
                bores.stream().mapToDouble(Bore::paPerFlow2AndFactor).sum() * USUAL_FACTOR;
    }

    /**
     * All pipe of one bore and roughness.
     *
     * @param reynoldsPerFlow Re/Q, s/m3
     * @param a roughness term of Colebrook-White
     * @param laminarPaPerFlow loss over flow in laminar flow, Pa s/m3
     * @param paPerFlow2AndFactor loss over f Q^2
     */
    private record Bore(double reynoldsPerFlow, double a, double laminarPaPerFlow, double paPerFlow2AndFactor) {
        Bore {
            Require.result(reynoldsPerFlow);
            Require.result(laminarPaPerFlow);
            Require.result(paPerFlow2AndFactor);
        }

        static Bore of(PipeSegment segment, Fluid fluid) {
            double area = Math.PI * segment.boreM() * segment.boreM() / 4;
            double nu = fluid.kinematicViscosityM2PerS();
            double lengths = segment.lengthM() / segment.boreM();
            return new Bore(
                    segment.boreM() / (area * nu),
                    segment.roughnessM() / segment.boreM() / Colebrook.ROUGHNESS_DIVISOR,
                    32 * lengths * fluid.densityKgPerM3() * nu / (segment.boreM() * area),
                    lengths * fluid.densityKgPerM3() / (2 * area * area));
        }

        boolean joins(Bore other) {
            return reynoldsPerFlow == other.reynoldsPerFlow && a == other.a;
        }

        Bore plus(Bore other) {
            return new Bore(
                    reynoldsPerFlow,
                    a,
                    laminarPaPerFlow + other.laminarPaPerFlow,
                    paPerFlow2AndFactor + other.paPerFlow2AndFactor);
        }

        void add(double flow, SlopedValue sum) {
            double reynolds = reynoldsPerFlow * flow;
            if (reynolds < Pipe.LAMINAR_BELOW) {
                sum.value += laminarPaPerFlow * flow;
                sum.slope += laminarPaPerFlow;
                return;
            }
            double b = Colebrook.VISCOUS_NUMERATOR / reynolds;
            double x = Colebrook.inverseRoot(a, b);
            double loss = paPerFlow2AndFactor * flow * flow / (x * x);
            // Above Re = 2000 the turbulent factor is the larger for every roughness, so no comparison is needed here.
            sum.value += loss;
            sum.slope += 2 * loss / flow * (1 - Colebrook.viscousShare(a, b, x));
        }
    }

    /**
     * Returns the run of the given segments, in any number, none included.
     *
     * @param segments the segments
     * @param fluid what flows
     */
    public static PipeRun of(List<PipeSegment> segments, Fluid fluid) {
        List<Bore> bores = new ArrayList<>();
        double fittings = 0;
        double rise = 0;
        for (PipeSegment segment : segments) {
            join(bores, Bore.of(segment, fluid));
            fittings += Pipe.fittingLossPa(segment, fluid, 1);
            rise += Pipe.heightPa(segment, fluid);
        }
        return new PipeRun(bores, Require.finite(fittings, "k"), Require.finite(rise, "riseM"));
    }

    private static void join(List<Bore> bores, Bore bore) {
        if (bore.laminarPaPerFlow() == 0) {
            return;
        }
        for (int i = 0; i < bores.size(); i++) {
            if (bores.get(i).joins(bore)) {
                bores.set(i, bores.get(i).plus(bore));
                return;
            }
        }
        bores.add(bore);
    }

    /** Returns the loss of friction and fittings, Pa, at a flow, m3/s, zero or more. */
    public double lossPa(double flowM3PerS) {
        return Require.result(frictionPa(flowM3PerS) + fittingPa(flowM3PerS));
    }

    /** Returns the loss of friction alone, Pa, at a flow, m3/s, zero or more. */
    public double frictionPa(double flowM3PerS) {
        Require.notNegative(flowM3PerS, "flowM3PerS");
        SlopedValue sum = new SlopedValue();
        for (Bore bore : bores) {
            bore.add(flowM3PerS, sum);
        }
        return Require.result(sum.value);
    }

    /** Returns the loss of fittings alone, Pa, at a flow, m3/s, zero or more. */
    public double fittingPa(double flowM3PerS) {
        return Require.result(fittingPaPerFlow2 * Require.notNegative(flowM3PerS, "flowM3PerS") * flowM3PerS);
    }

    /** Returns the pressure, Pa, that the whole rise takes; negative when the run falls. */
    public double risePa() {
        return risePa;
    }

    /** Returns friction, fittings and rise, Pa, at a flow, m3/s, zero or more. */
    public double totalPa(double flowM3PerS) {
        return Require.result(lossPa(flowM3PerS) + risePa);
    }

    /**
     * Returns the flow, m3/s, that a pressure at the near end drives through the run against a pressure at the far end.
     *
     * @param pressureDifferencePa near end less far end less the rise, Pa, finite
     * @return the flow, zero for a difference of zero or below, or {@link Trouble#NO_RESISTANCE} when the run has neither
     *     length nor fittings
     */
    public Solution flowAt(double pressureDifferencePa) {
        Require.finite(pressureDifferencePa, "pressureDifferencePa");
        if (pressureDifferencePa <= 0) {
            return Solution.of(0);
        }
        if (laminarPaPerFlow == 0 && fittingPaPerFlow2 == 0) {
            return Solution.none(Trouble.NO_RESISTANCE);
        }
        SlopedValue flow = new SlopedValue();
        flowAgainst(pressureDifferencePa, 0, flow);
        return Solution.of(flow.value);
    }

    /** Loss and its slope at a flow of zero or more. */
    void loss(double flow, SlopedValue out) {
        out.set(fittingPaPerFlow2 * flow * flow, 2 * fittingPaPerFlow2 * flow);
        for (int i = 0; i < bores.size(); i++) {
            bores.get(i).add(flow, out);
        }
    }

    /** The flow, and its slope by the pressure, at which this run and an outlet R Q^2 after it take a pressure. */
    void flowAgainst(double pressurePa, double outletPaPerFlow2, SlopedValue out) {
        if (pressurePa <= 0) {
            out.set(0, 0);
            return;
        }
        double square = fittingPaPerFlow2 + outletPaPerFlow2;
        // No law is below the laminar one, so this flow, a little widened, is an upper bound.
        double high = 2.001
                * pressurePa
                / (laminarPaPerFlow + Math.sqrt(laminarPaPerFlow * laminarPaPerFlow + 4 * square * pressurePa));
        double guess = Math.sqrt(pressurePa / (square + roughPaPerFlow2));
        double root = Math.sqrt(pressurePa);
        // The square root of the loss is nearly a straight line of the flow: Newton needs three steps instead of six.
        double flow = Roots.rising(
                (q, at) -> {
                    loss(q, at);
                    double loss = at.value + outletPaPerFlow2 * q * q;
                    double slope = at.slope + 2 * outletPaPerFlow2 * q;
                    double rootOfLoss = Math.sqrt(loss);
                    at.set(rootOfLoss - root, slope / (2 * rootOfLoss));
                },
                0,
                high,
                guess,
                out);
        out.set(flow, 1 / (2 * root * out.slope));
    }
}
