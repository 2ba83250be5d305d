// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.ArrayList;
import java.util.List;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Pressure;

/** What must hold in a water feed. */
final class WaterRules {
    /** A running pressure less than 10 % below static tells little about the supply (practice of hydrant flow tests). */
    private static final double LEAST_DROP = 0.10;

    /** The difference of two decimals is off by some last digits; exactly 10 % is enough. */
    private static final double ROUNDING = 1e-9;

    private static final List<String> BACKFLOW =
            List.of("none", "check-valve", "double-check-valve", "retaining-ring", "air-gap");

    private WaterRules() {}

    static void feed(WaterFeed feed, Problems problems) {
        List<PipeSegment> all = new ArrayList<>(feed.getSegments());
        feed.getDrawOffs().forEach(drawOff -> all.addAll(drawOff.getSegments()));
        NameRules.unique(all, Literals.PIPE_SEGMENT__NAME, problems);
        NameRules.unique(feed.getDrawOffs(), Literals.DRAW_OFF__NAME, problems);
        List<String> names = NameRules.names(feed.getSegments(), Literals.PIPE_SEGMENT__NAME);
        WaterTest test = feed.getTest();
        if (test != null) {
            NameRules.leads(
                    test, Literals.WATER_TEST__GAUGE_AFTER, test.getGaugeAfter(), names, "segment.unknown", problems);
        }
        for (DrawOff drawOff : feed.getDrawOffs()) {
            NameRules.leads(
                    drawOff, Literals.DRAW_OFF__TEE_AFTER, drawOff.getTeeAfter(), names, "segment.unknown", problems);
        }
        NameRules.leads(
                feed,
                Literals.WATER_FEED__BACKFLOW_PROTECTION,
                feed.getBackflowProtection(),
                BACKFLOW,
                "word.unknown",
                problems);
    }

    static void test(WaterTest test, Problems problems) {
        Pressure still = test.getStaticPressure();
        Pressure running = test.getRunningPressure();
        if (still == null || running == null || still.si() < 0 || running.si() < 0) {
            return;
        }
        double drop = still.si() - running.si();
        if (drop <= 0) {
            problems.error(test, Literals.WATER_TEST__RUNNING_PRESSURE, "running.notBelow", still.toString());
        } else if (drop < (LEAST_DROP - ROUNDING) * still.si()) {
            problems.warning(test, Literals.WATER_TEST__RUNNING_PRESSURE, "running.smallDrop", still.toString());
        }
    }
}
