// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.List;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * The two-branch network of the check values with its tap open (N1b), the unit at a free outlet: the one that EPANET is timed with, in
 * releng/epanet/rate.mjs.
 */
final class FreeOutletNetwork {
    /** So many lengths of the unit's pipe are gone through in turn. */
    static final int LENGTHS = 100;

    private static final double M3_PER_S_PER_L_PER_MIN = 1e-3 / 60;
    private static final double COPPER_ROUGHNESS_M = 1.5e-6;
    private static final double PLASTIC_ROUGHNESS_M = 7e-6;
    private static final Fluid WATER = Fluid.waterAt(10);
    private static final Outlet SHOWER = Outlet.ofCoefficient(2.50528 * M3_PER_S_PER_L_PER_MIN, WATER);

    private final Network network = Network.of(
            new FixedPressure(WATER.pressureOfHead(20.394)),
            List.of(new PipeSegment(15, 20e-3, PLASTIC_ROUGHNESS_M, 6, 0.5)),
            List.of(showerPipe(0)),
            List.of(new Tap(
                    List.of(new PipeSegment(6, 13.6e-3, COPPER_ROUGHNESS_M, 5, 0.5)),
                    Outlet.ofCoefficient(5.31434 * M3_PER_S_PER_L_PER_MIN, WATER))),
            WATER);

    private static PipeSegment showerPipe(int step) {
        return new PipeSegment(8 + step % LENGTHS * 0.01, 13.6e-3, COPPER_ROUGHNESS_M, 8, 3.5);
    }

    /** Changes the length of the pipe to the unit, solves, and gives the flow through the unit, L/min. */
    double flowLPerMin(int step) {
        return network.withUnitBranch(List.of(showerPipe(step)))
                        .atOutlet(SHOWER, 0)
                        .unitFlowM3PerS()
                / M3_PER_S_PER_L_PER_MIN;
    }
}
