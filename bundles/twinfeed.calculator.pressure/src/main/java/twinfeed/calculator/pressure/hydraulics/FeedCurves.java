// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import twinfeed.calculator.Series;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.engineering.pipe.Outlet;

/** Curves of pressure over flow at a unit's inlet. */
public final class FeedCurves {
    private static final int POINTS = 25;

    /** So far beyond the test's flow the supply's curve is drawn. */
    private static final double BEYOND = 1.25;

    /** The curves reach at least so far, m3/s: more than any such heater takes. */
    private static final double LEAST_REACH = 15 / FeedUnits.L_PER_MIN;

    private static final Series.Axis FLOW = new Series.Axis("flow", "L/min");
    private static final Series.Axis PRESSURE = new Series.Axis("pressure", "bar");

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
        return new Series(key, FLOW, PRESSURE, List.of(), new double[] {flow * FeedUnits.L_PER_MIN}, new double[] {
            pressurePa / FeedUnits.BAR
        });
    }

    private static Series curve(String key, double reach, int points, DoubleUnaryOperator pressurePa) {
        double[] x = new double[points];
        double[] y = new double[points];
        Arrays.setAll(x, i -> reach * i / (points - 1) * FeedUnits.L_PER_MIN);
        Arrays.setAll(y, i -> pressurePa.applyAsDouble(reach * i / (points - 1)) / FeedUnits.BAR);
        return new Series(key, FLOW, PRESSURE, List.of(), x, y);
    }
}
