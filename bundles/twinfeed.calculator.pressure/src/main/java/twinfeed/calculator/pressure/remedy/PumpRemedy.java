// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Flow;
import twinfeed.units.Kind;
import twinfeed.units.Pressure;

/**
 * A break tank with a pump for the shower alone: the taps stay where they draw now, since water out of a tank is not kept fit to drink. What
 * costs less is tried first, and the work says so where the survey does not show that it was done: the stop valve fully open and the
 * pressure confirmed by the water company, or, where a tank feeds the unit, the main measured.
 */
public final class PumpRemedy {
    private static final int DAYS = 10;

    /** A small domestic set: pressure with all shut, while running, and the flow then. Judgement. */
    private static final double SHUT_PA = 3.0e5;

    private static final double RUNNING_PA = 2.2e5;
    private static final double FLOW_M3_PER_S = DisplayUnit.of(Kind.FLOW).toSi(20);

    private PumpRemedy() {}

    /** The work for a water feed. */
    public static Remedy of(WaterFeed water) {
        String first = first(water);
        List<Remedy.Item> items = new ArrayList<>();
        if (!first.isEmpty()) {
            items.add(Remedy.Item.of("task-test-supply", 1));
        }
        items.add(Remedy.Item.of("break-tank-pump", 1));
        return new Remedy("break-tank-pump", "breakTankPump" + first, Map.of(), items, false, DAYS, PumpRemedy::fit);
    }

    private static String first(WaterFeed water) {
        if (water.getSource() == WaterSource.MAINS) {
            boolean tried = Boolean.TRUE.equals(water.getStopValveOpen())
                    && Boolean.TRUE.equals(water.getCompanyPressureConfirmed());
            return tried ? "" : "AfterValve";
        }
        return MainRemedy.measured(water) ? "" : "AfterMain";
    }

    /**
     * At the start of the unit's own pipe, after the gauge and all tees: its curve takes the place of what fed the unit, and no tap
     * draws on it. A break tank is small and stays as cold as the main.
     */
    private static void fit(Survey survey) {
        WaterFeed water = survey.getWater();
        if (water.getSource() == WaterSource.MAINS
                && survey.getClimate() == null
                && survey.getAnnualMeanAir() == null
                && survey.getMonthlyAirSpread() == null) {
            survey.setClimate("uk-mains");
        }
        water.setSource(WaterSource.PUMPED);
        WaterTest test = water.getTest();
        List<PipeSegment> shared = WaterChanges.shared(water);
        if (!shared.isEmpty()) {
            test.setGaugeAfter(shared.get(shared.size() - 1).getName());
        }
        water.getDrawOffs().clear();
        test.setStaticPressure(Pressure.ofSi(SHUT_PA));
        test.setRunningPressure(Pressure.ofSi(RUNNING_PA));
        test.setFlow(Flow.ofSi(FLOW_M3_PER_S));
        test.setGaugeHeight(null);
        test.setAtPeak(true);
    }
}
