// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.calculator.pressure.survey.TapFit;
import twinfeed.calculator.pressure.survey.TestOrigin;
import twinfeed.units.Kind;

/** Writes down the flow of a tap that is open alone: as it was read, or what its outlet gives in a house that work has changed. */
public final class TapAloneWorking {
    private static final String MEANING = "tapAlone";

    /** By less than this share nothing changed: the flow that is found again has the last digits of a search. */
    private static final double SAME = 1e-9;

    private TapAloneWorking() {}

    /** Adds the flow, L/min, under a symbol. */
    public static void add(WorkingLines lines, Feed feed, SurveyedTap tap, String symbol) {
        TapFit fit = tap.fit();
        TestOrigin test = feed.test();
        boolean read = fit != null && isAsRead(tap, fit);
        if (fit == null || test == null || read) {
            String origin = fit == null || !read ? "" : fit.flowOrigin();
            lines.input(symbol, MEANING, Kind.FLOW.amount(tap.flowM3PerS()), "", origin);
            return;
        }
        WorkingLines alone = new WorkingLines();
        FeedWorking.addWater(alone, test.temperatureC(), test.temperatureOrigin());
        FeedWorking.addTest(alone, feed);
        String flow = NetworkWorking.alone(alone, feed, tap);
        lines.include(alone.build(), "_l").step(symbol, MEANING, flow + "_l", "L/min", "");
    }

    private static boolean isAsRead(SurveyedTap tap, TapFit fit) {
        return Math.abs(tap.flowM3PerS() - fit.flowM3PerS()) <= SAME * fit.flowM3PerS();
    }
}
