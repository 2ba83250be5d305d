// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import java.util.ArrayList;
import java.util.List;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Roots;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;

/**
 * Segments of pipe one after another, with everything that does not depend on the flow worked out once: the quick way to
 * ask for the loss at many flows.
 *
 * <p>Gives the same as the sum of {@link Pipe} over the segments. Immutable.
 */
public final class PipeRun {
    /** A friction factor of the usual size in house pipes, only for the start of a search. */
    private static final double USUAL_FACTOR = 0.03;

    private final Bore[] bores;
    private final double fittingPaPerFlow2;
    private final double risePa;
    private final double laminarPaPerFlow;
    private final double roughPaPerFlow2;

    private PipeRun(List<Bore> bores, double fittingPaPerFlow2, double risePa) {
        this.bores = bores.toArray(Bore[]::new);
        this.fittingPaPerFlow2 = fittingPaPerFlow2;
        this.risePa = risePa;
        double laminar = 0;
        double rough = 0;
        for (Bore bore : bores) {
            laminar += bore.laminarPaPerFlow();
            rough += bore.paPerFlow2AndFactor() * USUAL_FACTOR;
        }
        this.laminarPaPerFlow = laminar;
        this.roughPaPerFlow2 = rough;
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
     * @return the flow, zero for a difference of zero or below, or {@link FailureReason#NO_RESISTANCE} when the run has neither
     *     length nor fittings
     */
    public Solution flowAt(double pressureDifferencePa) {
        Require.finite(pressureDifferencePa, "pressureDifferencePa");
        if (pressureDifferencePa <= 0) {
            return Solution.of(0);
        }
        if (laminarPaPerFlow == 0 && fittingPaPerFlow2 == 0) {
            return Solution.none(FailureReason.NO_RESISTANCE);
        }
        SlopedValue flow = new SlopedValue();
        flowAgainst(pressureDifferencePa, 0, flow);
        return Solution.of(flow.value);
    }

    /** Loss and its slope at a flow of zero or more. */
    public void loss(double flow, SlopedValue out) {
        out.set(fittingPaPerFlow2 * flow * flow, 2 * fittingPaPerFlow2 * flow);
        for (Bore bore : bores) {
            bore.add(flow, out);
        }
    }

    /** How many bores there are. */
    int boreCount() {
        return bores.length;
    }

    /** One of them. */
    Bore bore(int index) {
        return bores[index];
    }

    /** Loss of the fittings over the square of the flow, Pa/(m3/s)2. */
    double fittingPaPerFlow2() {
        return fittingPaPerFlow2;
    }

    /** Loss of friction over the square of the flow with a factor of the usual size, Pa/(m3/s)2. */
    double roughPaPerFlow2() {
        return roughPaPerFlow2;
    }

    /** The flow, and its slope by the pressure, at which this run and an outlet R Q^2 after it take a pressure. */
    public void flowAgainst(double pressurePa, double outletPaPerFlow2, SlopedValue out) {
        if (pressurePa <= 0) {
            out.set(0, 0);
            return;
        }
        RunLoss loss = new RunLoss(this, outletPaPerFlow2);
        if (loss.reached(pressurePa)) {
            out.set(loss.flow, 1 / loss.loss.slope);
        } else {
            bracketed(pressurePa, outletPaPerFlow2, out);
        }
    }

    /** For pressures at which the flow jumps to and fro across a step of friction, and for numbers at the ends of their range. */
    private void bracketed(double pressurePa, double outletPaPerFlow2, SlopedValue out) {
        double square = fittingPaPerFlow2 + outletPaPerFlow2;
        // No law is below the laminar one, so this flow, a little widened, is an upper bound.
        double high = 2.001
                * pressurePa
                / (laminarPaPerFlow + Math.sqrt(laminarPaPerFlow * laminarPaPerFlow + 4 * square * pressurePa));
        double flow = Roots.rising(
                (q, at) -> {
                    loss(q, at);
                    at.set(at.value + outletPaPerFlow2 * q * q - pressurePa, at.slope + 2 * outletPaPerFlow2 * q);
                },
                0,
                high,
                high / 2,
                out);
        out.set(flow, 1 / out.slope);
    }
}
