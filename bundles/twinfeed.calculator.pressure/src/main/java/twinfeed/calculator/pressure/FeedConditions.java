// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Grid;
import twinfeed.engineering.Outlet;

/** The feed under every intake of the grid; each is worked out when it is first asked for. Used by one thread at a time. */
final class FeedConditions {
    private final Feed feed;
    private final Grid grid;
    private final @Nullable Hydraulics[] byIntake;
    private final Map<Outlet, double[]> availableByUnit = new HashMap<>();
    private final int warmest;
    private final int coldest;

    FeedConditions(Feed feed, Grid grid) {
        this.feed = feed;
        this.grid = grid;
        this.byIntake = new Hydraulics[grid.intakes().size()];
        int warm = 0;
        int cold = 0;
        for (int i = 1; i < byIntake.length; i++) {
            warm = intakeC(i) > intakeC(warm) ? i : warm;
            cold = intakeC(i) < intakeC(cold) ? i : cold;
        }
        this.warmest = warm;
        this.coldest = cold;
    }

    Feed feed() {
        return feed;
    }

    Grid grid() {
        return grid;
    }

    /** An intake temperature, degC. */
    double intakeC(int intake) {
        return grid.intakes().get(intake).temperatureC();
    }

    /**
     * Largest flow, m3/s, through a unit that is an outlet, with the first taps open. Many heaters share the same need, so what
     * was found is kept.
     */
    double available(Outlet unit, int intake, int open) {
        double[] known = availableByUnit.computeIfAbsent(unit, this::unknown);
        int at = intake * grid.drawOffs().size() + open;
        if (known[at] < 0) {
            known[at] = at(intake).flowThrough(unit, open);
        }
        return known[at];
    }

    private double[] unknown(Outlet unit) {
        double[] flows = new double[byIntake.length * grid.drawOffs().size()];
        Arrays.fill(flows, -1);
        return flows;
    }

    /** The feed at an intake. */
    Hydraulics at(int intake) {
        Hydraulics known = byIntake[intake];
        if (known == null) {
            known = new Hydraulics(feed, intakeC(intake));
            byIntake[intake] = known;
        }
        return known;
    }

    /** Index of the warmest intake. */
    int warmest() {
        return warmest;
    }

    /** Index of the coldest intake, the design one where months are as cold. */
    int coldest() {
        return coldest;
    }

    /** The most taps that are opened together. */
    int mostOpen() {
        return grid.drawOffs().size() - 1;
    }

    int lowestVoltage() {
        return 0;
    }

    int highestVoltage() {
        return grid.voltageCount() - 1;
    }

    /** A condition of the grid; the voltage does not matter where the feed limits the flow. */
    Condition condition(FlowPoint point) {
        return Condition.of(
                grid.intakes().get(point.intake()),
                point.limited() ? null : Double.valueOf(grid.voltage(point.voltage())),
                grid.drawOffs().get(point.open()));
    }

    /** An intake with all taps shut, whatever the voltage. */
    Condition shut(int intake) {
        return Condition.of(grid.intakes().get(intake), null, grid.drawOffs().get(0));
    }
}
