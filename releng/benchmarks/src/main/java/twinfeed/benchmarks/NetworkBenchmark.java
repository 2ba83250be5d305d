// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.NetworkState;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * The coupled solve of a water feed: one supply, a common pipe, the unit's branch and open taps. Every assessment of a candidate asks
 * it for each month and each tap, every sampling some thousand times.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NetworkBenchmark {
    private static final double PA_PER_BAR = 1e5;
    private static final double M3_PER_S_PER_L_PER_MIN = 1e-3 / 60;
    private static final double COPPER_ROUGHNESS_M = 1.5e-6;

    /** Open taps beside the unit. */
    @Param({"0", "1", "3"})
    public int taps;

    private Network network = network(0);
    private int step;
    private Outlet need = Outlet.ofPoint(8 * M3_PER_S_PER_L_PER_MIN, PA_PER_BAR, 0);

    /** Makes the network for the number of taps. */
    @Setup
    public void prepare() {
        network = network(taps);
        need = Outlet.ofPoint(8 * M3_PER_S_PER_L_PER_MIN, PA_PER_BAR, 0);
    }

    private static Network network(int taps) {
        Fluid fluid = Fluid.waterAt(10);
        SupplyCurve supply = new SupplyCurve(3.0 * PA_PER_BAR, 1.6 * PA_PER_BAR, 15 * M3_PER_S_PER_L_PER_MIN);
        PipeSegment common = new PipeSegment(10, 20.2e-3, COPPER_ROUGHNESS_M, 4, 0.5);
        PipeSegment branch = new PipeSegment(6, 13.6e-3, COPPER_ROUGHNESS_M, 6, 3.0);
        Tap tap = new Tap(
                List.of(new PipeSegment(4, 13.6e-3, COPPER_ROUGHNESS_M, 4, 0.5)),
                Outlet.ofCoefficient(4 * M3_PER_S_PER_L_PER_MIN, fluid));
        return Network.of(supply, List.of(common), List.of(branch), java.util.Collections.nCopies(taps, tap), fluid);
    }

    /** The network that EPANET is timed with (see {@link EpanetComparison}), one length changed each time. */
    @Benchmark
    public double freeOutletOneLengthChanged() {
        return FreeOutletNetwork.ONE_TAP.flowLPerMin(step++ & 63);
    }

    /** The pressure at the unit that takes its set flow. */
    @Benchmark
    public NetworkState atUnitFlow() {
        return network.atUnitFlow(4 * M3_PER_S_PER_L_PER_MIN, 0);
    }

    /** The flow that the unit can have. */
    @Benchmark
    public NetworkState atOutlet() {
        return network.atOutlet(need, 0);
    }

    /** The draw-off at which the unit drops out. */
    @Benchmark
    public Solution dropOut() {
        return network.drawOffAt(3 * M3_PER_S_PER_L_PER_MIN, 0.5 * PA_PER_BAR);
    }
}
