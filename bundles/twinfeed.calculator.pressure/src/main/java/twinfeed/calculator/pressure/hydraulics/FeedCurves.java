// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.Series;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** Curves of pressure over flow at a unit's inlet. */
public final class FeedCurves {
    private static final int POINTS = 25;

    /** So far beyond the test's flow the supply's curve is drawn. */
    private static final double BEYOND = 1.25;

    /** The curves reach at least so far, m3/s: more than any such heater takes. */
    private static final double LEAST_REACH = DisplayUnit.of(Kind.FLOW).toSi(15);

    private static final Series.Axis FLOW = Series.Axis.of("flow", Kind.FLOW);
    private static final Series.Axis DISTANCE = Series.Axis.of("distance", Kind.LENGTH);
    private static final Series.Axis PRESSURE = Series.Axis.of("pressure", Kind.PRESSURE);

    private FeedCurves() {}

    /** What the feed leaves at the inlet, with all taps shut. */
    static Series feed(Feed feed, FeedHydraulics hydraulics) {
        return curve("pressure.supplyCurve", reach(feed), POINTS, flow -> hydraulics.inletPa(flow, 0));
    }

    private static double reach(Feed feed) {
        return Math.max(LEAST_REACH, BEYOND * feed.curve().testFlowM3PerS());
    }

    /** What the unit needs, by the square law through its instructions' point. */
    public static Series need(Outlet need) {
        return curve("pressure.need", LEAST_REACH, POINTS, need::pressureAt);
    }

    /** The pressure at the inlet from which a switch ahead of the throttle closes. */
    public static Series switchLine(double makePa, double strainer) {
        return curve("pressure.switchLine", LEAST_REACH, POINTS, flow -> makePa + strainer * flow * flow);
    }

    /** One point. */
    public static Series point(String key, double flow, double pressurePa) {
        return new Series(key, FLOW, PRESSURE, List.of(), new double[] {flow}, new double[] {pressurePa});
    }

    /** The pressure at each point of the pipes, from the gauge to the unit, while the unit takes a flow with all taps shut. */
    public static Series along(String key, FeedConditions conditions, int intake, double flow) {
        Feed feed = conditions.feed();
        int points = feed.run().size() + 1;
        double[] x = new double[points];
        double[] y = new double[points];
        List<String> labels = new ArrayList<>(List.of(FeedProfile.START));
        y[0] = feed.curve().pressureAt(flow);
        for (int i = 1; i < points; i++) {
            NamedPipe piece = feed.run().get(i - 1);
            labels.add(piece.name());
            x[i] = x[i - 1] + piece.pipe().lengthM();
            // Each time the loss of the whole way so far, so that the last point is the very pressure that is judged.
            y[i] = y[0]
                    - PipeRun.of(feed.upTo(i), conditions.at(intake).fluid()).totalPa(flow);
        }
        return new Series(key, DISTANCE, PRESSURE, labels, x, y);
    }

    private static Series curve(String key, double reach, int points, DoubleUnaryOperator pressurePa) {
        double[] x = new double[points];
        double[] y = new double[points];
        Arrays.setAll(x, i -> reach * i / (points - 1));
        Arrays.setAll(y, i -> pressurePa.applyAsDouble(reach * i / (points - 1)));
        return new Series(key, FLOW, PRESSURE, List.of(), x, y);
    }
}
