// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.calculator.Context;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.model.survey.DrawOff;
import twinfeed.units.Flow;

/**
 * Maps draw-offs to taps. A tap is an outlet Q = C sqrt(h), and C follows from the flow that the survey states for it when it
 * is open alone.
 */
final class TapReader {
    private static final double L_PER_MIN = 60_000;

    /** Pressure at an outlet whose stated flow the supply cannot give, Pa: it is taken as wide open. Judgement. */
    private static final double LEAST_OUTLET_PA = 1000;

    /** Bore of a branch of which nothing is known but its height, m; without length it resists nothing. */
    private static final double ANY_BORE_M = 0.0136;

    private final Context context;
    private final SupplyCurve curve;
    private final List<Piece> run;
    private final Fluid fluid;
    private final PieceReader pieces;

    TapReader(Context context, SupplyCurve curve, List<Piece> run, Fluid fluid, PieceReader pieces) {
        this.context = context;
        this.curve = curve;
        this.run = run;
        this.fluid = fluid;
        this.pieces = pieces;
    }

    /** The tap, or empty where a pipe of its branch cannot be used, which is named among the faults. */
    Optional<TapPoint> read(DrawOff drawOff, String name, int tee) {
        List<Piece> branch = pieces.read(drawOff.getSegments(), "survey.water.drawOffs[" + name + "].segments");
        if (branch.size() < drawOff.getSegments().size()) {
            return Optional.empty();
        }
        Flow stated = drawOff.getFlow();
        if (stated != null && !(stated.si() > 0 && stated.si() <= FormulaTerms.MOST_FLOW)) {
            pieces.fault("survey.water.drawOffs[" + name + "].flow");
            return Optional.empty();
        }
        if (drawOff.getHeight() != null && Math.abs(drawOff.getHeight().si()) > PieceReader.MOST_M) {
            pieces.fault("survey.water.drawOffs[" + name + "].height");
            return Optional.empty();
        }
        if (drawOff.getHeight() != null) {
            branch = atHeight(branch, drawOff.getHeight().si());
        }
        double flow = stated == null ? usualFlow(name) : stated.si();
        Outlet outlet = outlet(name, flow, tee, Feed.pipes(branch));
        return Optional.of(new TapPoint(name, flow, tee, branch, new Tap(Feed.pipes(branch), outlet)));
    }

    /** A stated height is that of the outlet above the tee, whatever the rises of the branch's pipes add up to. */
    private static List<Piece> atHeight(List<Piece> branch, double heightM) {
        List<Piece> level = new ArrayList<>();
        double left = heightM;
        for (Piece piece : branch) {
            PipeSegment pipe = piece.pipe();
            level.add(new Piece(
                    piece.name(), new PipeSegment(pipe.lengthM(), pipe.boreM(), pipe.roughnessM(), pipe.k(), left)));
            left = 0;
        }
        if (level.isEmpty()) {
            level.add(new Piece("", new PipeSegment(0, ANY_BORE_M, 0, 0, heightM)));
        }
        return level;
    }

    private double usualFlow(String name) {
        double usual = PipeTables.designFlowM3PerS(name);
        context.assume("tapFlow", Map.of("name", name, "flow", usual * L_PER_MIN));
        return usual;
    }

    private Outlet outlet(String name, double flow, int tee, List<PipeSegment> branch) {
        double teePa = curve.pressureAt(flow)
                - PipeRun.of(Feed.pipes(run.subList(0, tee)), fluid).totalPa(flow);
        double leftPa = teePa - PipeRun.of(branch, fluid).totalPa(flow);
        if (leftPa < LEAST_OUTLET_PA) {
            context.assume("tapBeyondSupply", Map.of("name", name, "flow", flow * L_PER_MIN));
            leftPa = LEAST_OUTLET_PA;
        }
        return Outlet.ofPoint(flow, leftPa, 0);
    }
}
