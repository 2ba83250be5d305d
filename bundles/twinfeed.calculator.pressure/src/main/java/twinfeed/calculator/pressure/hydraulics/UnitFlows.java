// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.pipe.Outlet;

/** The flows through one unit under the conditions of the grid, volume at its inlet. */
public final class UnitFlows {
    /** Less resistance than any pipe of a house has, Pa/(m3/s)2. */
    private static final Outlet OPEN_END = new Outlet(1e8, 0);

    private final FeedConditions feed;
    private final double[] targetKgPerS;
    private final double[] powerW;
    private final @Nullable Outlet fullBore;
    private final SharedQuantities shared;
    private final Supplier<Working> fullBoreWorking;

    /**
     * Flows of a unit.
     *
     * @param fullBore the unit fully open, as far as it is known
     */
    public UnitFlows(FeedConditions feed, SharedQuantities shared, @Nullable Outlet fullBore) {
        this(feed, shared, fullBore, Working::none);
    }

    /**
     * Flows of a unit.
     *
     * @param fullBore the unit fully open, as far as it is known
     * @param fullBoreWorking how its loss over the square of the flow is known, ending in {@code R}; empty where nobody says
     */
    public UnitFlows(
            FeedConditions feed,
            SharedQuantities shared,
            @Nullable Outlet fullBore,
            Supplier<Working> fullBoreWorking) {
        this.shared = shared;
        this.fullBoreWorking = fullBoreWorking;
        this.feed = feed;
        this.targetKgPerS = shared.get(SharedQuantity.TARGET_FLOW);
        this.powerW = shared.get(SharedQuantity.DELIVERED_POWER);
        this.fullBore = fullBore;
    }

    public FeedConditions feed() {
        return feed;
    }

    /** The unit fully open, or null where nothing is known of it. */
    @Nullable
    public Outlet fullBore() {
        return fullBore;
    }

    /** How the loss of the unit fully open is known. */
    public Working fullBoreWorking() {
        return fullBoreWorking.get();
    }

    /** How the power at a voltage of the grid was found, ending in W; empty where nobody says. */
    public Working powerWorking(int voltage) {
        return shared.working(SharedQuantity.DELIVERED_POWER, voltage);
    }

    /** How the target mass flow was found, ending in kg/s; empty where nobody says. */
    public Working targetWorking(int intake, int voltage) {
        return shared.working(SharedQuantity.TARGET_FLOW, feed.grid().index(intake, voltage));
    }

    /** Power into the water at a voltage of the grid, W. */
    public double powerW(int voltage) {
        return powerW[voltage];
    }

    /** Flow for the target temperature, m3/s; 0 where nothing has to be heated. */
    public double target(int intake, int voltage) {
        return targetKgPerS[feed.grid().index(intake, voltage)]
                / feed.at(intake).fluid().densityKgPerM3();
    }

    /** Largest flow that the feed can drive through the unit, m3/s; where nothing is known of the unit, out of the pipe's open end. */
    public double available(int intake, int open) {
        return feed.available(fullBore == null ? OPEN_END : fullBore, intake, open);
    }

    /** The flow that runs: the target flow, or the available one where that is less. */
    public OperatingPoint running(int intake, int voltage, int open) {
        double target = target(intake, voltage);
        double available = available(intake, open);
        return new OperatingPoint(intake, voltage, open, Math.min(target, available), available < target);
    }

    /** Whether there is anything to heat at all. */
    public boolean heats() {
        return largestTarget() >= 0;
    }

    /**
     * The condition of the grid with the smallest flow: the coldest water, the lowest voltage and most taps open. Colder
     * water is also thicker, so that less of it can be had; the step of the friction law at Re = 2000 can turn that round by a
     * thousandth of the flow, which is neglected.
     */
    public OperatingPoint smallest() {
        int coldest = feed.coldest();
        return running(coldest, feed.lowestVoltage(), feed.mostOpen());
    }

    /** Index of the intake with the largest target flow, or -1 if nothing has to be heated. */
    public int largestTarget() {
        int largest = -1;
        double most = 0;
        for (int i = 0; i < feed.grid().intakes().size(); i++) {
            double target = target(i, feed.highestVoltage());
            if (target > most) {
                most = target;
                largest = i;
            }
        }
        return largest;
    }
}
