// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import twinfeed.engineering.Fluid;
import twinfeed.engineering.Outlet;
import twinfeed.engineering.PipeRun;
import twinfeed.engineering.PipeSegment;
import twinfeed.engineering.Roots;

/**
 * Open taps at different tees. One search over the flow from the gauge: the pressures fall along the run, each tap takes what
 * the pressure at its tee gives, and what is left has to be what the unit takes. More from the gauge means less pressure and so
 * less at the taps, so there is exactly one answer.
 */
final class SeveralTees implements TapNetwork {
    /** Flows are of the order of 1e-4 m3/s. */
    private static final double TOLERANCE_M3_PER_S = 1e-16;

    private static final double ANY_BORE_M = 0.01;

    private final Feed feed;
    private final Fluid fluid;
    private final List<Branching> branchings = new ArrayList<>();
    private final PipeRun toUnit;
    private final int lastTee;

    /** Pipes up to a tee, and the tap that leaves there with its outlet as one more fitting. */
    private record Branching(PipeRun before, PipeRun tap) {}

    SeveralTees(Feed feed, int open, Fluid fluid) {
        this.feed = feed;
        this.fluid = fluid;
        List<TapPoint> taps = new ArrayList<>(feed.taps().subList(0, open));
        taps.sort(Comparator.comparingInt(TapPoint::tee));
        int at = 0;
        for (TapPoint tap : taps) {
            PipeRun before = PipeRun.of(Feed.pipes(feed.run().subList(at, tap.tee())), fluid);
            branchings.add(new Branching(
                    before, withOutlet(tap.tap().branch(), tap.tap().outlet())));
            at = tap.tee();
        }
        this.lastTee = at;
        this.toUnit = PipeRun.of(feed.from(at), fluid);
    }

    private PipeRun withOutlet(List<PipeSegment> pipes, Outlet outlet) {
        double area = Math.PI * ANY_BORE_M * ANY_BORE_M / 4;
        double k = 2 * outlet.resistancePaPerFlow2() * area * area / fluid.densityKgPerM3();
        double riseM = fluid.headOfPressure(outlet.backPressurePa());
        List<PipeSegment> all = new ArrayList<>(pipes);
        all.add(new PipeSegment(0, ANY_BORE_M, 0, k, riseM));
        return PipeRun.of(all, fluid);
    }

    /** What is left of a flow from the gauge after the taps, m3/s, and the pressure at the last tee, Pa. */
    private record Left(double flowM3PerS, double teePa) {}

    private Left march(double totalM3PerS) {
        double left = totalM3PerS;
        double pressurePa = feed.curve().pressureAt(totalM3PerS);
        for (Branching branching : branchings) {
            pressurePa -= branching.before.totalPa(Math.max(0, left));
            left -= branching.tap.flowAt(pressurePa - branching.tap.risePa()).value();
        }
        return new Left(left, pressurePa);
    }

    @Override
    public double totalAt(double flowM3PerS) {
        double most = 2 * flowM3PerS - march(flowM3PerS).flowM3PerS();
        return Roots.bracketed(total -> march(total).flowM3PerS() - flowM3PerS, flowM3PerS, most, TOLERANCE_M3_PER_S)
                .orElse(flowM3PerS);
    }

    @Override
    public double inletPa(double flowM3PerS) {
        return march(totalAt(flowM3PerS)).teePa() - toUnit.totalPa(flowM3PerS);
    }

    @Override
    public double totalThrough(Outlet unit) {
        PipeRun unitRun = withOutlet(feed.from(lastTee), unit);
        return Roots.bracketed(total -> excess(total, unitRun), 0, -excess(0, unitRun), TOLERANCE_M3_PER_S)
                .orElse(0);
    }

    private double excess(double total, PipeRun unitRun) {
        Left left = march(total);
        return left.flowM3PerS()
                - unitRun.flowAt(left.teePa() - unitRun.risePa()).value();
    }

    @Override
    public double flowThrough(Outlet unit) {
        PipeRun unitRun = withOutlet(feed.from(lastTee), unit);
        return unitRun.flowAt(march(totalThrough(unit)).teePa() - unitRun.risePa())
                .value();
    }
}
