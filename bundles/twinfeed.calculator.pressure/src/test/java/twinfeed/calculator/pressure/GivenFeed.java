// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;

/** A feed of figures, in no survey: two pipes of 15 mm copper with the branch of a kitchen tap between them. */
final class GivenFeed {
    static final double L_PER_MIN = 60_000;

    /** The unit wide open. */
    static final Outlet UNIT = Outlet.ofPoint(8 / L_PER_MIN, 0.7e5, 0);

    private GivenFeed() {}

    static Feed of(SupplyCurve curve) {
        PipeSegment pipe = new PipeSegment(5, 0.0136, 1.5e-6, 8, 1);
        PipeSegment branch = new PipeSegment(2, 0.0136, 1.5e-6, 1, 0.2);
        SurveyedTap kitchen = new SurveyedTap(
                "kitchen",
                12 / L_PER_MIN,
                1,
                List.of(new NamedPipe("branch", branch)),
                new Tap(List.of(branch), Outlet.ofPoint(12 / L_PER_MIN, 1e5, 0)));
        return new Feed(curve, List.of(new NamedPipe("a", pipe), new NamedPipe("b", pipe)), List.of(kitchen));
    }
}
