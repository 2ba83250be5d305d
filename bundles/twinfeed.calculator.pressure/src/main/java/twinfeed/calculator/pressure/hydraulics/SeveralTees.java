// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * Open taps at different tees. One bracketed search over the flow from the gauge: the pressures fall along the run, each tap
 * takes what the pressure at its tee gives, and what is left has to be what the unit takes. More from the gauge means less
 * pressure and so less at the taps, so there is exactly one answer.
 */
public final class SeveralTees implements TapNetwork {
    private static final double ANY_BORE_M = 0.01;

    private final Feed feed;
    private final Fluid fluid;
    private final List<Branching> branchings = new ArrayList<>();
    private final PipeRun toUnit;
    private final int lastTee;
    private final double usualDrawM3PerS;

    /** Pipes up to a tee, and the tap that leaves there with its outlet as one more fitting. */
    private record Branching(PipeRun before, PipeRun tap) {}

    public SeveralTees(Feed feed, int open, Fluid fluid) {
        this.feed = feed;
        this.fluid = fluid;
        List<SurveyedTap> taps = new ArrayList<>(feed.taps().subList(0, open));
        this.usualDrawM3PerS =
                taps.stream().mapToDouble(SurveyedTap::flowM3PerS).sum();
        taps.sort(Comparator.comparingInt(SurveyedTap::tee));
        int at = 0;
        for (SurveyedTap tap : taps) {
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

    /** Flow from the gauge, m3/s, while the unit takes a flow, m3/s. */
    public double totalAt(double flowM3PerS) {
        return solveFixed(flowM3PerS).x();
    }

    private RisingRoot<Left> solveFixed(double flowM3PerS) {
        return RisingRoot.of(
                this::march, left -> left.flowM3PerS() - flowM3PerS, flowM3PerS, flowM3PerS + 0.7 * usualDrawM3PerS);
    }

    @Override
    public double inletPa(double flowM3PerS) {
        return solveFixed(flowM3PerS).state().teePa() - toUnit.totalPa(flowM3PerS);
    }

    /** Flows of the taps, m3/s, in the order of their tees, while the unit takes a flow, m3/s. */
    public double[] tapFlows(double flowM3PerS) {
        double left = totalAt(flowM3PerS);
        double pressurePa = feed.curve().pressureAt(left);
        double[] flows = new double[branchings.size()];
        for (int i = 0; i < flows.length; i++) {
            Branching branching = branchings.get(i);
            pressurePa -= branching.before.totalPa(Math.max(0, left));
            flows[i] = branching.tap.flowAt(pressurePa - branching.tap.risePa()).value();
            left -= flows[i];
        }
        return flows;
    }

    private RisingRoot<Left> solveOutlet(PipeRun unitRun) {
        return RisingRoot.of(this::march, left -> left.flowM3PerS() - through(unitRun, left), 0, 0.9 * usualDrawM3PerS);
    }

    private static double through(PipeRun unitRun, Left left) {
        return unitRun.flowAt(left.teePa() - unitRun.risePa()).value();
    }

    @Override
    public double flowThrough(Outlet unit) {
        PipeRun unitRun = withOutlet(feed.from(lastTee), unit);
        return through(unitRun, solveOutlet(unitRun).state());
    }
}
