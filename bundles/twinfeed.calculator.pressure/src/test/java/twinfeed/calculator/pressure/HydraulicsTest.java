// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import twinfeed.calculator.pressure.hydraulics.FeedHydraulics;
import twinfeed.calculator.pressure.hydraulics.SeveralTees;
import twinfeed.calculator.pressure.hydraulics.SwitchState;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/** The feed with taps at one tee and at several, against the engineering's network and against the balance itself. */
class HydraulicsTest {
    private static final double L_PER_MIN = 60_000;
    private static final Fluid COLD = Fluid.waterAt(10);

    private static PipeSegment pipe(double lengthM, double boreMm, double k, double riseM) {
        return new PipeSegment(lengthM, boreMm / 1000, 1.5e-6, k, riseM);
    }

    private static SurveyedTap tap(String name, double lPerMin, int tee, double riseM) {
        PipeSegment branch = pipe(2.5, 13.6, 3, riseM);
        Tap tap = new Tap(List.of(branch), Outlet.ofPoint(lPerMin / L_PER_MIN, 1e5, 0));
        return new SurveyedTap(name, lPerMin / L_PER_MIN, tee, List.of(new NamedPipe(name, branch)), tap);
    }

    private static Feed feed(SupplyCurve curve, int firstTee, int secondTee) {
        List<NamedPipe> run = List.of(
                new NamedPipe("a", pipe(5, 20.2, 4, 1)),
                new NamedPipe("b", pipe(4, 13.6, 2, 1.5)),
                new NamedPipe("c", pipe(3, 13.6, 6, 0.5)));
        return new Feed(curve, run, List.of(tap("kitchen", 12, firstTee, 0.2), tap("basin", 6, secondTee, 0.5)));
    }

    /** Taps at one tee, by the search over several tees: a tee of its own for the second that lies at the same place. */
    @Property(seed = "1")
    void bothSearchesAgreeAtOneTee(
            @ForAll @DoubleRange(min = 1.2, max = 6) double staticBar,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) double runningShare,
            @ForAll @DoubleRange(min = 4, max = 25) double testLPerMin,
            @ForAll @DoubleRange(min = 0.5, max = 12) double unitLPerMin) {
        SupplyCurve curve = new SupplyCurve(staticBar * 1e5, staticBar * runningShare * 1e5, testLPerMin / L_PER_MIN);
        Feed feed = feed(curve, 2, 2);
        SeveralTees several = new SeveralTees(feed, 2, COLD);
        FeedHydraulics hydraulics = new FeedHydraulics(feed, 10);
        double unit = unitLPerMin / L_PER_MIN;
        assertEquals(hydraulics.inletPa(unit, 2), several.inletPa(unit), 1e-4 + 1e-7 * staticBar * 1e5);
        Outlet need = Outlet.ofPoint(8 / L_PER_MIN, 0.7e5, 0);
        assertEquals(hydraulics.flowThrough(need, 2), several.flowThrough(need), 1e-12);
    }

    /** At several tees: the pressure at every tee, pipe by pipe, drives just the flow that the tap takes. */
    @Property(seed = "2")
    void severalTeesBalance(
            @ForAll @DoubleRange(min = 1.5, max = 6) double staticBar,
            @ForAll @DoubleRange(min = 0.2, max = 0.95) double runningShare,
            @ForAll @DoubleRange(min = 0.5, max = 8) double unitLPerMin) {
        SupplyCurve curve = new SupplyCurve(staticBar * 1e5, staticBar * runningShare * 1e5, 15 / L_PER_MIN);
        Feed feed = feed(curve, 1, 2);
        SeveralTees several = new SeveralTees(feed, 2, COLD);
        double unit = unitLPerMin / L_PER_MIN;
        double[] taps = several.tapFlows(unit);
        double total = unit + taps[0] + taps[1];
        assertEquals(total, several.totalAt(unit), 1e-13);
        double firstTeePa =
                curve.pressureAt(total) - PipeRun.of(feed.upTo(1), COLD).totalPa(total);
        assertEquals(taps[0], alone(feed.taps().get(0), firstTeePa), 1e-12 + 1e-9 * taps[0]);
        double rest = unit + taps[1];
        double secondTeePa =
                firstTeePa - PipeRun.of(List.of(feed.run().get(1).pipe()), COLD).totalPa(rest);
        assertEquals(taps[1], alone(feed.taps().get(1), secondTeePa), 1e-12 + 1e-9 * taps[1]);
        double inletPa = secondTeePa - PipeRun.of(feed.from(2), COLD).totalPa(unit);
        assertEquals(inletPa, several.inletPa(unit), 1e-3);
    }

    /** Flow of a tap that a pressure at its tee drives, by bisection on the engineering's pipe loss: an independent search. */
    private static double alone(SurveyedTap tap, double teePa) {
        PipeSegment branch = tap.branch().get(0).pipe();
        double low = 0;
        double high = 0.01;
        for (int i = 0; i < 200; i++) {
            double flow = (low + high) / 2;
            double neededPa = PipeRun.of(List.of(branch), COLD).totalPa(flow)
                    + tap.tap().outlet().pressureAt(flow);
            if (neededPa < teePa) {
                low = flow;
            } else {
                high = flow;
            }
        }
        return low;
    }

    /** The worst switch pressure of the search over the whole grid, condition by condition. */
    @Property(seed = "3", tries = 60)
    void theWorstConditionIsThatOfTheWholeGrid(
            @ForAll @DoubleRange(min = 1.0, max = 5) double staticBar,
            @ForAll @DoubleRange(min = 0.2, max = 0.97) double runningShare,
            @ForAll @DoubleRange(min = 6, max = 20) double testLPerMin,
            @ForAll @DoubleRange(min = 6, max = 12) double powerKw) {
        SwitchSweep sweep = new SwitchSweep(staticBar, staticBar * runningShare, testLPerMin, powerKw);
        List<Double> found = new ArrayList<>();
        for (boolean inlet : new boolean[] {true, false}) {
            SwitchState worst = inlet ? sweep.search().inlet() : sweep.search().heating(sweep.downstream(), -0.3);
            double least = sweep.least(inlet);
            assertEquals(least, worst.marginPa(), 1e-6 * staticBar * 1e5 + 0.005 * Math.abs(least));
            found.add(worst.marginPa());
        }
        assertEquals(2, found.size());
    }
}
