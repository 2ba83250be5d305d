// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.engineering.network.LossShares;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.water.Fluid;

/**
 * The feed at one intake temperature. What does not depend on flows is worked out at the first use and kept; used by one thread
 * at a time.
 */
public final class FeedHydraulics {
    private final Feed feed;
    private final Fluid fluid;
    private final @Nullable TapNetwork[] byOpen;
    private @Nullable PipeRun whole;
    private @Nullable Network unitAlone;

    public FeedHydraulics(Feed feed, double intakeC) {
        this.feed = feed;
        this.fluid = Fluid.waterAt(intakeC);
        this.byOpen = new TapNetwork[feed.taps().size() + 1];
    }

    /** Water at the intake temperature. */
    public Fluid fluid() {
        return fluid;
    }

    /** Pressure at the unit's inlet, Pa, while the unit takes a flow, m3/s, and the first taps are open. */
    public double inletPa(double flowM3PerS, int open) {
        return open == 0
                ? feed.curve().pressureAt(flowM3PerS) - whole().totalPa(flowM3PerS)
                : network(open).inletPa(flowM3PerS);
    }

    private PipeRun whole() {
        PipeRun known = whole;
        if (known == null) {
            known = PipeRun.of(feed.from(0), fluid);
            whole = known;
        }
        return known;
    }

    /** Flow, m3/s, through a unit that is an outlet, with the first taps open; 0 where the supply does not reach it. */
    public double flowThrough(Outlet unit, int open) {
        return network(open).flowThrough(unit);
    }

    private TapNetwork network(int open) {
        TapNetwork known = byOpen[open];
        if (known == null) {
            known = feed.oneTee(open) ? oneTee(open) : new SeveralTees(feed, open, fluid);
            byOpen[open] = known;
        }
        return known;
    }

    private TapNetwork oneTee(int open) {
        return new OneTee(engine(open));
    }

    private Network engine(int open) {
        int tee = feed.shared(open);
        List<Tap> taps = new ArrayList<>(open);
        for (SurveyedTap tap : feed.taps().subList(0, open)) {
            taps.add(tap.tap());
        }
        return Network.of(feed.curve(), feed.upTo(tee), feed.from(tee), taps, fluid);
    }

    /**
     * The draw-off, m3/s, at the first tap's tee that leaves the unit a pressure, Pa, at its inlet while it takes a flow, m3/s.
     *
     * @return as {@link Network#drawOffAt}
     */
    Solution drawOffAt(double flowM3PerS, double inletPa) {
        Network known = unitAlone;
        if (known == null) {
            int tee = feed.shared(1);
            known = Network.of(feed.curve(), feed.upTo(tee), feed.from(tee), List.of(), fluid);
            unitAlone = known;
        }
        return known.drawOffAt(flowM3PerS, inletPa);
    }

    /** Where the pressure goes while the unit takes a flow, m3/s, with all taps shut. */
    public LossShares lossShares(double flowM3PerS) {
        PipeRun run = whole();
        return new LossShares(
                feed.curve().pressureAt(0) - feed.curve().pressureAt(flowM3PerS),
                run.frictionPa(flowM3PerS),
                run.fittingPa(flowM3PerS),
                run.risePa());
    }

    /** Open taps at one tee, or none: the engineering's network. */
    private record OneTee(Network network) implements TapNetwork {
        @Override
        public double inletPa(double flowM3PerS) {
            return network.atUnitFlow(flowM3PerS, 0).unitInletPressurePa();
        }

        @Override
        public double flowThrough(Outlet unit) {
            return network.atOutlet(unit, 0).unitFlowM3PerS();
        }
    }

    /**
     * Flows of open taps, m3/s, while the unit takes a flow, m3/s.
     *
     * @param open the open taps in the order of their tees
     */
    public double[] tapFlows(double flowM3PerS, List<SurveyedTap> open) {
        return open.isEmpty() ? new double[0] : new SeveralTees(feed, open.size(), fluid).tapFlows(flowM3PerS);
    }
}
