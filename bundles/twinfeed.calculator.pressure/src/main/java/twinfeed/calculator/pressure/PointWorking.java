// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Working;
import twinfeed.engineering.pipe.Outlet;

/** Writes down the flow through a unit and the pressure at its inlet in one condition of the grid. */
final class PointWorking {
    private final Lines lines = new Lines();
    private final FeedConditions feed;
    private final FlowPoint point;
    private final @Nullable Outlet fullBore;

    PointWorking(FeedConditions feed, FlowPoint point, @Nullable Outlet fullBore) {
        this.feed = feed;
        this.point = point;
        this.fullBore = fullBore;
    }

    /** The lines. */
    Lines lines() {
        return lines;
    }

    /** The symbol of the flow through the unit, L/min. */
    String flow() {
        return "Q";
    }

    /** Adds the flow: the wished one is put in, one that the feed limits is found. */
    PointWorking addFlow() {
        if (point.limited() && fullBore != null) {
            addAvailable(fullBore);
        } else {
            lines.input("Q", "unitFlow", point.flowM3PerS() * FeedWorking.L_PER_MIN, "L/min", "check of the flow");
        }
        return this;
    }

    private void addAvailable(Outlet unit) {
        NetworkWorking network =
                new NetworkWorking(lines, feed.feed(), point.open(), feed.intakeC(point.intake()), unit);
        network.solve(feed.at(point.intake()), point.flowM3PerS());
        lines.step("Q", "unitFlow", network.unitFlow(), "L/min", "");
    }

    /** Adds the flow and the pressure at the inlet, {@code p_in}. */
    PointWorking addInlet() {
        addFlow();
        if (point.limited() && fullBore != null) {
            lines.step("p_in", "inletPressure", "R_u * Q^2", "bar", "");
        } else if (point.open() > 0) {
            NetworkWorking network =
                    new NetworkWorking(lines, feed.feed(), point.open(), feed.intakeC(point.intake()), null);
            network.solve(feed.at(point.intake()), point.flowM3PerS());
            network.addInlet();
        } else {
            FeedWorking.addWater(lines, feed.intakeC(point.intake()));
            FeedWorking.addInlet(lines, feed.feed());
        }
        return this;
    }

    /** The flow, L/min, alone. */
    static Working flow(FeedConditions feed, FlowPoint point, @Nullable Outlet fullBore) {
        return new PointWorking(feed, point, fullBore).addFlow().lines.build();
    }
}
