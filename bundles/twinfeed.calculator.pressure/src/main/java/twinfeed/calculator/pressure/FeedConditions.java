// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Grid;

/** The feed under every intake of the grid; each is worked out when it is first asked for. Used by one thread at a time. */
final class FeedConditions {
    private final Feed feed;
    private final Grid grid;
    private final @Nullable Hydraulics[] byIntake;
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

    /** A condition of the grid. */
    Condition condition(FlowPoint point) {
        return grid.condition(point.intake(), point.voltage(), point.open());
    }

    /** An intake with all taps shut, whatever the voltage. */
    Condition shut(int intake) {
        return Condition.of(grid.intakes().get(intake), null, grid.drawOffs().get(0));
    }
}
