// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.engineering.pipe.Outlet;

/** Writes down the flow through a unit and the pressure at its inlet in one condition of the grid. */
public final class OperatingPointWorking {
    private final WorkingLines lines = new WorkingLines();
    private final FeedConditions feed;
    private final OperatingPoint point;
    private final @Nullable Outlet fullBore;

    public OperatingPointWorking(FeedConditions feed, OperatingPoint point, @Nullable Outlet fullBore) {
        this.feed = feed;
        this.point = point;
        this.fullBore = fullBore;
    }

    /** The lines. */
    public WorkingLines lines() {
        return lines;
    }

    /** The symbol of the flow through the unit, L/min. */
    public String flow() {
        return "Q";
    }

    /** Adds the flow: the wished one is put in, one that the feed limits is found. */
    public OperatingPointWorking addFlow() {
        if (point.limited() && fullBore != null) {
            addAvailable(fullBore);
        } else {
            lines.input("Q", "unitFlow", point.flowM3PerS() * FeedUnits.L_PER_MIN, "L/min", "check of the flow");
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
    public OperatingPointWorking addInlet() {
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
    public static Working flow(FeedConditions feed, OperatingPoint point, @Nullable Outlet fullBore) {
        return new OperatingPointWorking(feed, point, fullBore).addFlow().lines.build();
    }
}
