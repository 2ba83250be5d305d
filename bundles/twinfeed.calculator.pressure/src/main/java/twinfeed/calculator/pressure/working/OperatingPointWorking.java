// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.units.Kind;

/** Writes down the flow through a unit and the pressure at its inlet in one condition of the grid. */
public final class OperatingPointWorking {
    /** Flows nearer to one another than this share may change places by what a reading is corrected. */
    private static final double NEAR_SHARE = 0.1;

    private final WorkingLines lines = new WorkingLines();
    private final FeedConditions feed;
    private final OperatingPoint point;
    private final @Nullable Outlet fullBore;
    private final Supplier<Working> outlet;
    private final Supplier<Working> target;
    private final double share;
    private final boolean near;

    private OperatingPointWorking(
            FeedConditions feed,
            OperatingPoint point,
            @Nullable Outlet fullBore,
            Supplier<Working> outlet,
            Supplier<Working> target,
            double share,
            boolean near) {
        this.near = near;
        this.feed = feed;
        this.point = point;
        this.fullBore = fullBore;
        this.outlet = outlet;
        this.target = target;
        this.share = share;
    }

    /** A point at which a unit runs. */
    public static OperatingPointWorking of(UnitFlows flows, OperatingPoint point) {
        return of(flows, point, 1);
    }

    /** The same at a share of the power, and so of the target flow. */
    public static OperatingPointWorking of(UnitFlows flows, OperatingPoint point, double share) {
        return new OperatingPointWorking(
                flows.feed(),
                point,
                flows.fullBore(),
                flows::fullBoreWorking,
                () -> flows.targetWorking(point.intake(), point.voltage()),
                share,
                near(
                        share * flows.target(point.intake(), point.voltage()),
                        flows.available(point.intake(), point.open())));
    }

    /** A point at which a unit is to run with the target flow, whether the feed gives it or not. */
    public static OperatingPointWorking ofTarget(UnitFlows flows, OperatingPoint point) {
        return new OperatingPointWorking(
                flows.feed(),
                point,
                null,
                flows::fullBoreWorking,
                () -> flows.targetWorking(point.intake(), point.voltage()),
                1,
                false);
    }

    private static boolean near(double target, double available) {
        return Math.abs(target - available) <= NEAR_SHARE * target;
    }

    /** The lines. */
    public WorkingLines lines() {
        return lines;
    }

    /** The symbol of the flow through the unit, L/min. */
    public String flow() {
        return "Q";
    }

    /**
     * Adds the flow: the target flow follows from the power, one that the feed limits is found. Where both are near one another, the smaller
     * of them, so that a changed reading may make the other one count.
     */
    public OperatingPointWorking addFlow() {
        if (isNear() && fullBore != null) {
            addTarget("Q_w");
            addAvailable(fullBore, "Q_a");
            lines.step("Q", "unitFlow", "min(Q_w, Q_a)", "L/min", "");
        } else if (point.limited() && fullBore != null) {
            addAvailable(fullBore, "Q");
        } else {
            addTarget("Q");
        }
        return this;
    }

    private boolean isNear() {
        return near && point.flowM3PerS() > 0 && !target.get().steps().isEmpty();
    }

    private void addTarget(String symbol) {
        Working mass = target.get();
        if (mass.steps().isEmpty()) {
            lines.input(symbol, "unitFlow", Kind.FLOW.amount(point.flowM3PerS()), "check of the flow");
            return;
        }
        lines.include(mass, "_w");
        FeedWorking.addDensity(lines, feed.intakeC(point.intake()), feed.intakeOrigin(point.intake()));
        String part = "";
        if (share != 1) {
            lines.input("s", "powerShare", share, "", "");
            part = "s * ";
        }
        lines.step(symbol, "unitFlow", Kind.FLOW.inDisplayUnit(part + "m_w / rho"), "L/min", "");
    }

    private void addAvailable(Outlet unit, String symbol) {
        addOutlet(lines, unit, outlet.get());
        NetworkWorking network =
                NetworkWorking.of(lines, feed, point.intake(), point.open(), "R_u", isNear() ? "a" : "");
        network.solve(feed.at(point.intake()), feed.available(unit, point.intake(), point.open()));
        lines.step(symbol, "unitFlow", network.unitFlow(), "L/min", "");
    }

    /** Adds the loss of the unit fully open, {@code R_u}. */
    static void addOutlet(WorkingLines lines, Outlet unit, Working how) {
        if (how.steps().isEmpty()) {
            lines.input("R_u", "unitResistance", OutletWorking.bar(unit), "bar/(L/min)²", "");
        } else {
            lines.include(how, "_u");
        }
    }

    /** Adds the flow and the pressure at the inlet, {@code p_in}. */
    public OperatingPointWorking addInlet() {
        addFlow();
        if (point.limited() && fullBore != null && !isNear()) {
            lines.step("p_in", "inletPressure", "R_u * Q^2", "bar", "");
        } else if (point.open() > 0) {
            NetworkWorking network = NetworkWorking.of(lines, feed, point.intake(), point.open(), null, "");
            network.solve(feed.at(point.intake()), point.flowM3PerS());
            network.addInlet();
        } else {
            FeedWorking.addWater(lines, feed.intakeC(point.intake()), feed.intakeOrigin(point.intake()));
            FeedWorking.addInlet(lines, feed.feed());
        }
        return this;
    }

    /** The largest flow, L/min, that the feed drives through a unit fully open. */
    public static Working available(
            FeedConditions feed, OperatingPoint point, Outlet fullBore, Supplier<Working> outlet) {
        return new OperatingPointWorking(feed, point, fullBore, outlet, Working::none, 1, false)
                .addFlow()
                .lines
                .build();
    }
}
