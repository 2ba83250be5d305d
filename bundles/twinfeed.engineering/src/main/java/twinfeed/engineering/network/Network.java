// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import java.util.ArrayList;
import java.util.List;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Roots;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * The water feed of one unit: a supply, pipe to a tee, a branch to the unit, and branches to open taps.
 *
 * <p>Every question is one bracketed search over the flow through the common pipe: what the supply leaves at the tee falls
 * with it, and what the branches take grows with the pressure at the tee, so there is exactly one answer. Velocity
 * pressures at the tee are left out beyond the K of the fittings, as usual in house pipework.
 *
 * <p>Immutable. What does not depend on flows is worked out when the network is made; a change of pipe or water
 * temperature is a new network.
 */
public final class Network {
    /** More than any house draws, m3/s: the end of the search for a draw-off. */
    private static final double LARGEST_FLOW_M3_PER_S = 1;

    /** A step of friction is looked for within this share of the flow. */
    private static final double STEP_WIDTH = 1e-6;

    private final Supply supply;
    private final PipeRun common;
    private final PipeRun unitBranch;
    private final List<Branch> taps;
    private final Fluid fluid;

    private Network(Supply supply, PipeRun common, PipeRun unitBranch, List<Branch> taps, Fluid fluid) {
        this.supply = supply;
        this.common = common;
        this.unitBranch = unitBranch;
        this.taps = taps;
        this.fluid = fluid;
    }

    /**
     * Returns a network.
     *
     * @param supply the supply at its gauge
     * @param common segments from the gauge to the tee; none when there is no tee
     * @param unitBranch segments from the tee to the unit's inlet
     * @param taps the open taps, none included
     * @param fluid water at the intake temperature
     */
    public static Network of(
            Supply supply, List<PipeSegment> common, List<PipeSegment> unitBranch, List<Tap> taps, Fluid fluid) {
        return new Network(
                supply, PipeRun.of(common, fluid), PipeRun.of(unitBranch, fluid), branches(taps, fluid), fluid);
    }

    private static List<Branch> branches(List<Tap> taps, Fluid fluid) {
        List<Branch> branches = new ArrayList<>(taps.size());
        for (Tap tap : taps) {
            branches.add(new Branch(PipeRun.of(tap.branch(), fluid), tap.outlet()));
        }
        return branches;
    }

    /** Returns the same network with other pipe from the tee to the unit. */
    public Network withUnitBranch(List<PipeSegment> segments) {
        return new Network(supply, common, PipeRun.of(segments, fluid), taps, fluid);
    }

    /**
     * Returns the state in which the unit takes a given flow: the open taps' flows are found.
     *
     * <p>Where the supply cannot give the flow, pressures below zero say by how much: a margin stays a number.
     *
     * @param unitFlowM3PerS flow through the unit, m3/s, zero or more
     * @param otherDrawOffM3PerS imposed draw-off at the tee, m3/s, zero or more
     */
    public NetworkState atUnitFlow(double unitFlowM3PerS, double otherDrawOffM3PerS) {
        Require.notNegative(unitFlowM3PerS, "unitFlowM3PerS");
        Require.notNegative(otherDrawOffM3PerS, "otherDrawOffM3PerS");
        AtTee tee = balance(taps, unitFlowM3PerS + otherDrawOffM3PerS);
        double inletPa = tee.pressurePa() - unitBranch.totalPa(unitFlowM3PerS);
        return new NetworkState(unitFlowM3PerS, tee.flows(taps.size()), otherDrawOffM3PerS, tee.pressurePa(), inletPa);
    }

    /**
     * Returns the state in which the unit is an outlet as well: a throttle held, a full-bore unit, or its need.
     *
     * @param unit the unit as seen from its inlet
     * @param otherDrawOffM3PerS imposed draw-off at the tee, m3/s, zero or more
     */
    public NetworkState atOutlet(Outlet unit, double otherDrawOffM3PerS) {
        Require.notNegative(otherDrawOffM3PerS, "otherDrawOffM3PerS");
        List<Branch> all = new ArrayList<>(taps);
        all.add(new Branch(unitBranch, unit));
        AtTee tee = balance(all, otherDrawOffM3PerS);
        double flow = tee.flow(taps.size());
        double inletPa = flow > 0 ? unit.pressureAt(flow) : tee.pressurePa() - unitBranch.risePa();
        return new NetworkState(flow, tee.flows(taps.size()), otherDrawOffM3PerS, tee.pressurePa(), inletPa);
    }

    /**
     * Returns the imposed draw-off at the tee, m3/s, at which the unit's inlet is down to a pressure while the unit takes
     * a flow: the drop-out point, when pressure and flow are those at which the switch opens.
     *
     * @param unitFlowM3PerS flow through the unit at that moment, m3/s, zero or more
     * @param unitInletPressurePa pressure at its inlet at that moment, Pa, finite
     * @return the draw-off; {@link FailureReason#BELOW_WITHOUT_DRAW_OFF} when the pressure is missed before anything else is
     *     drawn, {@link FailureReason#NEVER_REACHED} when no draw-off up to 1 m3/s brings it down
     */
    public Solution drawOffAt(double unitFlowM3PerS, double unitInletPressurePa) {
        Require.finite(unitInletPressurePa, "unitInletPressurePa");
        double teePa = unitInletPressurePa + unitBranch.totalPa(unitFlowM3PerS);
        double taken = unitFlowM3PerS + branchFlow(taps, teePa).value;
        if (taken > LARGEST_FLOW_M3_PER_S || teePressure(taken) < teePa) {
            return Solution.none(FailureReason.BELOW_WITHOUT_DRAW_OFF);
        }
        if (teePressure(LARGEST_FLOW_M3_PER_S) > teePa) {
            return Solution.none(FailureReason.NEVER_REACHED);
        }
        double total = Roots.rising(
                (q, at) -> {
                    teePressure(q, at);
                    at.set(teePa - at.value, -at.slope);
                },
                taken,
                LARGEST_FLOW_M3_PER_S,
                2 * taken,
                new SlopedValue());
        return Solution.of(Math.max(0, total - taken));
    }

    /** Returns where the pressure between the static supply and the unit's inlet goes in a state of this network. */
    public LossShares lossShares(NetworkState state) {
        double total = state.totalFlowM3PerS();
        double unit = state.unitFlowM3PerS();
        return new LossShares(
                supply.pressureAt(0) - supply.pressureAt(total),
                common.frictionPa(total) + unitBranch.frictionPa(unit),
                common.fittingPa(total) + unitBranch.fittingPa(unit),
                common.risePa() + unitBranch.risePa());
    }

    /** What is found for the tee: its pressure, and the flow of each branch. */
    private record AtTee(double pressurePa, double[] flows) {
        double flow(int branch) {
            return flows[branch];
        }

        /** Flows of the first branches. */
        List<Double> flows(int count) {
            Double[] first = new Double[count];
            for (int i = 0; i < count; i++) {
                first[i] = flows[i];
            }
            return List.of(first);
        }
    }

    /** The tee when a fixed flow and the given branches are drawn from it. */
    private AtTee balance(List<Branch> branches, double fixedFlow) {
        if (branches.isEmpty()) {
            return new AtTee(teePressure(fixedFlow), new double[0]);
        }
        FlowBalance balance = new FlowBalance(supply, common, branches, fixedFlow);
        return balance.found() ? new AtTee(balance.teePa(), balance.flows()) : bracketed(branches, fixedFlow);
    }

    private AtTee bracketed(List<Branch> branches, double fixedFlow) {
        double teePa = teePressureWith(branches, fixedFlow);
        double[] flows = new double[branches.size()];
        SlopedValue flow = new SlopedValue();
        for (int i = 0; i < flows.length; i++) {
            branches.get(i).flowAt(teePa, flow);
            flows[i] = flow.value;
        }
        return new AtTee(teePa, flows);
    }

    /** The pressure at the tee when a fixed flow and the given branches are drawn from it. */
    private double teePressureWith(List<Branch> branches, double fixedFlow) {
        double highestPa = teePressure(fixedFlow);
        SlopedValue most = branchFlow(branches, highestPa);
        if (most.value == 0) {
            return highestPa;
        }
        SlopedValue tee = new SlopedValue();
        SlopedValue excess = new SlopedValue();
        double total = Roots.rising(
                (q, out) -> excess(branches, fixedFlow, q, tee, out),
                fixedFlow,
                fixedFlow + most.value,
                fixedFlow + most.value / 2,
                excess);
        // From the last evaluation, not at the root itself, which may lie just across a step of friction.
        return Math.abs(excess.value) <= STEP_WIDTH * total
                ? tee.value - tee.slope * excess.value / excess.slope
                : teePressureWithinStep(branches, fixedFlow, total);
    }

    /**
     * The pressure at the tee when the common pipe runs just where its friction steps up: between those on both sides of
     * the step, so that what flows in is what is drawn.
     */
    private double teePressureWithinStep(List<Branch> branches, double fixedFlow, double total) {
        double lowPa = teePressure(total * (1 + STEP_WIDTH));
        double highPa = teePressure(total * (1 - STEP_WIDTH));
        return Roots.rising(
                (pa, out) -> {
                    SlopedValue drawn = branchFlow(branches, pa);
                    out.set(fixedFlow + drawn.value - total, drawn.slope);
                },
                lowPa,
                highPa,
                lowPa,
                new SlopedValue());
    }

    /** How much more flows in the common pipe than is drawn at the pressure that it leaves at the tee. */
    private void excess(List<Branch> branches, double fixedFlow, double q, SlopedValue tee, SlopedValue out) {
        teePressure(q, tee);
        SlopedValue drawn = branchFlow(branches, tee.value);
        out.set(q - fixedFlow - drawn.value, 1 - drawn.slope * tee.slope);
    }

    private static SlopedValue branchFlow(List<Branch> branches, double teePa) {
        SlopedValue sum = new SlopedValue();
        SlopedValue flow = new SlopedValue();
        for (int i = 0; i < branches.size(); i++) {
            branches.get(i).flowAt(teePa, flow);
            sum.set(sum.value + flow.value, sum.slope + flow.slope);
        }
        return sum;
    }

    private double teePressure(double q) {
        return supply.pressureAt(q) - common.totalPa(q);
    }

    private void teePressure(double q, SlopedValue out) {
        common.loss(q, out);
        double takenPa = out.value + common.risePa();
        double slope = out.slope;
        Gauge.at(supply, q, out);
        out.set(out.value - takenPa, out.slope - slope);
    }
}
