// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.SwitchState;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.hydraulics.WorstSwitchSearch;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.network.SupplyCurve;

/** A house of the test with every condition of its grid tried one by one. */
final class SwitchSweep {
    /** SAP 10.2 Table J1, from the main, after the winter design. */
    private static final double[] INTAKES = {5, 8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5};

    private final FeedConditions feed;
    private final UnitFlows flows;
    private final WorstSwitchSearch search;

    SwitchSweep(double staticBar, double runningBar, double testLPerMin, double powerKw) {
        Grid grid = grid();
        SupplyCurve curve = new SupplyCurve(staticBar * 1e5, runningBar * 1e5, testLPerMin / GivenFeed.L_PER_MIN);
        this.feed = new FeedConditions(GivenFeed.of(curve), grid);
        this.flows = new UnitFlows(feed, shared(grid, powerKw), GivenFeed.UNIT);
        this.search = new WorstSwitchSearch(
                feed, flows, new PressureSwitch(0.3e5, 0.2e5), 0.15e5 / square(8 / GivenFeed.L_PER_MIN));
    }

    private static double square(double flow) {
        return flow * flow;
    }

    private static Grid grid() {
        List<Intake> intakes = new ArrayList<>();
        for (int month = 0; month < INTAKES.length; month++) {
            intakes.add(new Intake(month, INTAKES[month]));
        }
        return new Grid(
                intakes,
                new double[] {216.2, 230, 240, 253},
                2,
                List.of(new DrawOffState(0, List.of()), new DrawOffState(1, List.of("kitchen"))));
    }

    private static SharedQuantities shared(Grid grid, double powerKw) {
        SharedQuantities shared = new SharedQuantities(grid);
        double[] powers = new double[grid.voltageCount()];
        double[] target = new double[grid.intakes().size() * powers.length];
        for (int v = 0; v < powers.length; v++) {
            powers[v] = powerKw * 1000 * square(grid.voltage(v) / 240);
            for (int i = 0; i < INTAKES.length; i++) {
                target[grid.index(i, v)] = powers[v] / (4190 * (40 - INTAKES[i]));
            }
        }
        shared.put(SharedQuantity.DELIVERED_POWER, powers);
        shared.put(SharedQuantity.TARGET_FLOW, target);
        return shared;
    }

    WorstSwitchSearch search() {
        return search;
    }

    double downstream() {
        return 0.25e5 / square(8 / GivenFeed.L_PER_MIN);
    }

    /** The least margin over all conditions. */
    double least(boolean inlet) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < feed.grid().intakes().size(); i++) {
            for (int v = 0; v < feed.grid().voltageCount(); v++) {
                for (int open = 0; open < feed.grid().drawOffs().size(); open++) {
                    OperatingPoint point = flows.running(i, v, open);
                    SwitchState at = inlet ? search.inlet(point) : search.heating(point, downstream(), -0.3);
                    least = Math.min(least, at.marginPa());
                }
            }
        }
        return least;
    }
}
