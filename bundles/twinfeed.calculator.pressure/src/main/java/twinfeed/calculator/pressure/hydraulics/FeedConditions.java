// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Series;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.engineering.pipe.Outlet;

/** The feed under every intake of the grid; each is worked out when it is first asked for. Used by one thread at a time. */
public final class FeedConditions {
    private final Feed feed;
    private final Grid grid;
    private final @Nullable FeedHydraulics[] byIntake;
    private final Map<Outlet, double[]> availableByUnit = new HashMap<>();
    private @Nullable Series curve;
    private final int[] ranked;

    public FeedConditions(Feed feed, Grid grid) {
        this.feed = feed;
        this.grid = grid;
        this.byIntake = new FeedHydraulics[grid.intakes().size()];
        this.ranked = IntStream.range(0, byIntake.length)
                .boxed()
                .sorted(Comparator.comparingDouble(this::intakeC))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    public Feed feed() {
        return feed;
    }

    public Grid grid() {
        return grid;
    }

    /** An intake temperature, degC. */
    public double intakeC(int intake) {
        return grid.intakes().get(intake).temperatureC();
    }

    /** Origin of an intake temperature in workings. */
    public String intakeOrigin(int intake) {
        return grid.intakes().get(intake).origin();
    }

    /**
     * Largest flow, m3/s, through a unit that is an outlet, with the first taps open. Many heaters share the same need, so what
     * was found is kept.
     */
    public double available(Outlet unit, int intake, int open) {
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

    /** What the feed leaves at the inlet over the flow, in the coldest water with all taps shut. */
    public Series curve() {
        Series known = curve;
        if (known == null) {
            known = FeedCurves.feed(feed, at(coldest()));
            curve = known;
        }
        return known;
    }

    /** The feed at an intake. */
    public FeedHydraulics at(int intake) {
        FeedHydraulics known = byIntake[intake];
        if (known == null) {
            known = new FeedHydraulics(feed, intakeC(intake));
            byIntake[intake] = known;
        }
        return known;
    }

    /** Index of the coldest intake, the design one where months are as cold. */
    public int coldest() {
        return ranked[0];
    }

    /** The intake of a rank by temperature, 0 the coldest. */
    public int byRank(int rank) {
        return ranked[rank];
    }

    /** The rank of an intake. */
    public int rank(int intake) {
        for (int rank = 0; rank < ranked.length; rank++) {
            if (ranked[rank] == intake) {
                return rank;
            }
        }
        throw new IllegalArgumentException("no intake " + intake);
    }

    /** The most taps that are opened together. */
    public int mostOpen() {
        return grid.drawOffs().size() - 1;
    }

    public int lowestVoltage() {
        return 0;
    }

    public int highestVoltage() {
        return grid.voltageCount() - 1;
    }

    /** A condition of the grid; the voltage does not matter where the feed limits the flow. */
    public Condition condition(OperatingPoint point) {
        return Condition.of(
                grid.intakes().get(point.intake()),
                point.limited() ? null : Double.valueOf(grid.voltage(point.voltage())),
                grid.drawOffs().get(point.open()));
    }

    /** An intake with all taps shut, whatever the voltage. */
    public Condition shut(int intake) {
        return Condition.of(grid.intakes().get(intake), null, grid.drawOffs().get(0));
    }
}
