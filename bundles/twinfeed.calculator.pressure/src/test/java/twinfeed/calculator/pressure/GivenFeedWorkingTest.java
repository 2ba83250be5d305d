// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.working.OperatingPointWorking;
import twinfeed.engineering.network.SupplyCurve;

/** A feed and a unit that are given as such, in no survey: the workings begin with their figures. */
class GivenFeedWorkingTest {
    private static UnitFlows flows(double targetKgPerS) {
        Grid grid = new Grid(
                List.of(new Intake(0, 5)),
                new double[] {230},
                0,
                List.of(new DrawOffState(0, List.of()), new DrawOffState(1, List.of("kitchen"))));
        SharedQuantities shared = new SharedQuantities(grid);
        shared.put(SharedQuantity.DELIVERED_POWER, 9000);
        shared.put(SharedQuantity.TARGET_FLOW, targetKgPerS);
        Feed feed = GivenFeed.of(new SupplyCurve(3e5, 1.8e5, 12 / GivenFeed.L_PER_MIN));
        return new UnitFlows(new FeedConditions(feed, grid), shared, GivenFeed.UNIT);
    }

    private static double value(List<Step> steps, String symbol) {
        return steps.stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** 0.7 bar at 8 L/min are 0.0109375 bar/(L/min)²; the kitchen tap's 1 bar at 12 L/min 0.0069444. */
    @Test
    void aFlowThatTheFeedLimitsIsFoundFromTheGivenOutlets() {
        UnitFlows flows = flows(1);
        OperatingPoint point = flows.running(0, 0, 1);
        assertTrue(point.limited());
        List<Step> steps = OperatingPointWorking.of(flows, point)
                .addInlet()
                .lines()
                .build()
                .steps();
        assertEquals(0.7 / 64, value(steps, "R_u"), 1e-12);
        assertEquals(1 / 144.0, value(steps, "R_t1"), 1e-12);
        assertEquals(3, value(steps, "p_0"), 1e-12);
        assertEquals(1.8, value(steps, "p_1"), 1e-12);
        assertEquals(12, value(steps, "Q_1"), 1e-9);
        assertEquals(point.flowM3PerS() * GivenFeed.L_PER_MIN, value(steps, "Q"), 1e-7);
        assertEquals(0.7 / 64 * value(steps, "Q") * value(steps, "Q"), value(steps, "p_in"), 1e-9);
    }

    /** 0 kg/s is what the flow calculator gives where the water is warm enough. */
    @Test
    void aUnitWithNothingToHeatHasNoLargestTarget() {
        assertFalse(flows(0).heats());
        assertTrue(flows(0.05).heats());
        assertEquals(0, flows(0.05).largestTarget());
    }
}
