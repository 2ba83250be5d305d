// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.model.survey.DrawOff;
import twinfeed.units.Flow;
import twinfeed.units.Kind;

/**
 * Maps draw-offs to taps. A tap is an outlet Q = C sqrt(h), and C follows from the flow that the survey states for it when it
 * is open alone.
 */
final class TapReader {
    /** Pressure at an outlet whose stated flow the supply cannot give, Pa: it is taken as wide open. Judgement. */
    private static final double LEAST_OUTLET_PA = 1000;

    /** Bore of a branch of which nothing is known but its height, m; without length it resists nothing. */
    private static final double ANY_BORE_M = 0.0136;

    private final Context context;
    private final Feed feed;
    private final SupplyCurve curve;
    private final List<NamedPipe> run;
    private final Fluid fluid;
    private final PipeReader pieces;

    TapReader(Context context, Feed feed, Fluid fluid, PipeReader pieces) {
        this.context = context;
        this.feed = feed;
        this.curve = feed.curve();
        this.run = feed.run();
        this.fluid = fluid;
        this.pieces = pieces;
    }

    /**
     * The tap, or empty where a pipe of its branch cannot be used, which is named among the faults.
     *
     * @param fitted the tap as fitted in the house as surveyed, or null to fit it here
     */
    Optional<SurveyedTap> read(DrawOff drawOff, String name, int tee, @Nullable SurveyedTap fitted) {
        List<NamedPipe> branch = pieces.read(drawOff.getSegments(), "survey.water.drawOffs[" + name + "].segments");
        if (branch.size() < drawOff.getSegments().size()) {
            return Optional.empty();
        }
        Flow stated = drawOff.getFlow();
        if (stated != null && !(stated.si() > 0 && stated.si() <= ReadingLimits.MAX_FLOW_M3_PER_S)) {
            pieces.fault("survey.water.drawOffs[" + name + "].flow");
            return Optional.empty();
        }
        if (drawOff.getHeight() != null && Math.abs(drawOff.getHeight().si()) > ReadingLimits.MAX_LENGTH_M) {
            pieces.fault("survey.water.drawOffs[" + name + "].height");
            return Optional.empty();
        }
        if (drawOff.getHeight() != null) {
            branch = atHeight(branch, drawOff.getHeight().si(), "survey.water.drawOffs[" + name + "].height");
        }
        double flow = stated == null ? usualFlow(name) : stated.si();
        if (fitted != null) {
            Tap tap = new Tap(Feed.pipes(branch), fitted.tap().outlet());
            return Optional.of(new SurveyedTap(name, flowAlone(tap, tee), tee, branch, tap, fitted.fit()));
        }
        Outlet outlet = outlet(name, flow, tee, Feed.pipes(branch));
        TapFit fit = new TapFit(
                new Feed(curve, run.subList(0, tee), List.of(), feed.test()),
                branch,
                flow,
                "survey.water.drawOffs[" + name + "].flow");
        return Optional.of(new SurveyedTap(name, flow, tee, branch, new Tap(Feed.pipes(branch), outlet), fit));
    }

    /** A stated height is that of the outlet above the tee, whatever the rises of the branch's pipes add up to. */
    private static List<NamedPipe> atHeight(List<NamedPipe> branch, double heightM, String path) {
        List<NamedPipe> level = new ArrayList<>();
        double left = heightM;
        for (NamedPipe piece : branch) {
            PipeSegment pipe = piece.pipe();
            level.add(new NamedPipe(
                    piece.name(),
                    new PipeSegment(pipe.lengthM(), pipe.boreM(), pipe.roughnessM(), pipe.k(), left),
                    new PipeOrigin(
                            piece.origin().path(),
                            level.isEmpty() ? path : "",
                            piece.origin().fittings())));
            left = 0;
        }
        if (level.isEmpty()) {
            level.add(new NamedPipe(
                    "", new PipeSegment(0, ANY_BORE_M, 0, 0, heightM), new PipeOrigin("", path, List.of())));
        }
        return level;
    }

    private double usualFlow(String name) {
        double usual = PipeTables.designFlowM3PerS(name);
        context.assume("tapFlow", Map.of("name", name, "flow", Kind.FLOW.amount(usual)));
        return usual;
    }

    /** What a tap gives in the changed house when it is open alone, m3/s. */
    private double flowAlone(Tap tap, int tee) {
        Network network = Network.of(curve, Feed.pipes(run.subList(0, tee)), List.of(), List.of(tap), fluid);
        return network.atUnitFlow(0, 0).tapFlowsM3PerS().get(0);
    }

    private Outlet outlet(String name, double flow, int tee, List<PipeSegment> branch) {
        double teePa = curve.pressureAt(flow)
                - PipeRun.of(Feed.pipes(run.subList(0, tee)), fluid).totalPa(flow);
        double leftPa = teePa - PipeRun.of(branch, fluid).totalPa(flow);
        if (leftPa < LEAST_OUTLET_PA) {
            context.assume("tapBeyondSupply", Map.of("name", name, "flow", Kind.FLOW.amount(flow)));
            leftPa = LEAST_OUTLET_PA;
        }
        return Outlet.ofPoint(flow, leftPa, 0);
    }
}
