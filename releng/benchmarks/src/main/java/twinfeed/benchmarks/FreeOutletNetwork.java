// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.List;
import java.util.function.IntFunction;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * A network with the unit at a free outlet and its taps open, solved with ever another length of the unit's pipe. EPANET solves the same ones
 * in releng/epanet/rate.mjs.
 */
enum FreeOutletNetwork {
    /** The two-branch network of the check values with its tap open (N1b). */
    ONE_TAP(
            "one tap",
            List.of(plastic(15, 20, 6, 0.5)),
            step -> List.of(copper(longer(8, step), 13.6, 8, 3.5)),
            List.of(tap(5.31434, copper(6, 13.6, 5, 0.5)))),
    /** A house of ten pipes with four taps open. */
    FOUR_TAPS(
            "four taps",
            List.of(plastic(9, 20, 3, 0.2), plastic(6, 20, 3, 0.3)),
            step -> List.of(copper(5, 13.6, 4, 2), copper(longer(3, step), 13.6, 4, 1.5)),
            List.of(
                    tap(5.31434, copper(4, 20, 2, 1), copper(2, 20, 2, 0)),
                    tap(3, copper(3, 13.6, 2, 0), copper(2, 13.6, 3, 0.5)),
                    tap(4, copper(6, 13.6, 5, 0.5)),
                    tap(5, copper(8, 13.6, 5, 0.3))));

    /** So many lengths of the unit's pipe are gone through in turn. */
    static final int LENGTHS = 100;

    private static final double STEP_M = 0.01;
    private static final double M3_PER_S_PER_L_PER_MIN = 1e-3 / 60;

    /** What both sides call it. */
    final String title;

    private final IntFunction<List<PipeSegment>> unitPipes;
    private final Outlet unit = outlet(2.50528);
    private final Network network;

    FreeOutletNetwork(
            String title, List<PipeSegment> common, IntFunction<List<PipeSegment>> unitPipes, List<Tap> taps) {
        this.title = title;
        this.unitPipes = unitPipes;
        this.network = Network.of(
                new FixedPressure(water().pressureOfHead(20.394)), common, unitPipes.apply(0), taps, water());
    }

    private static Fluid water() {
        return Fluid.waterAt(10);
    }

    private static double longer(double shortestM, int step) {
        return shortestM + step * STEP_M;
    }

    private static PipeSegment plastic(double lengthM, double boreMm, double k, double riseM) {
        return new PipeSegment(lengthM, boreMm * 1e-3, 7e-6, k, riseM);
    }

    private static PipeSegment copper(double lengthM, double boreMm, double k, double riseM) {
        return new PipeSegment(lengthM, boreMm * 1e-3, 1.5e-6, k, riseM);
    }

    private static Tap tap(double coefficient, PipeSegment... pipes) {
        return new Tap(List.of(pipes), outlet(coefficient));
    }

    /** An outlet by its coefficient, L/min at a head of one metre. */
    private static Outlet outlet(double coefficient) {
        return Outlet.ofCoefficient(coefficient * M3_PER_S_PER_L_PER_MIN, water());
    }

    /** Changes the length of the pipe to the unit, solves, and gives the flow through the unit, L/min. */
    double flowLPerMin(int step) {
        return network.withUnitBranch(unitPipes.apply(step % LENGTHS))
                        .atOutlet(unit, 0)
                        .unitFlowM3PerS()
                / M3_PER_S_PER_L_PER_MIN;
    }
}
