// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import twinfeed.engineering.TradeUnits;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/** Laws of the water feed that hold for any house: balances close, and more draw-off never leaves more. */
class NetworkProperties {
    private static final double L_PER_MIN = TradeUnits.L_PER_MIN;

    /** A network with what it was made from, so that a balance can be worked out apart from it. */
    record House(Supply supply, List<PipeSegment> common, List<PipeSegment> branch, List<Tap> taps, Fluid fluid) {
        Network network() {
            return Network.of(supply, common, branch, taps, fluid);
        }

        void assertBalances(NetworkState state) {
            double total = state.totalFlowM3PerS();
            double teePa = supply.pressureAt(total) - PipeRun.of(common, fluid).totalPa(total);
            // A flow at the step of the critical regime carries the step's uncertainty in its loss.
            assertEquals(teePa, state.teePressurePa(), 1e-6 * (1e5 + Math.abs(teePa)) + stepPa(common, total));
            IntStream.range(0, taps.size()).forEach(i -> assertBalances(taps.get(i), state, i));
        }

        private void assertBalances(Tap tap, NetworkState state, int index) {
            double flow = state.tapFlowsM3PerS().get(index);
            double needed =
                    PipeRun.of(tap.branch(), fluid).totalPa(flow) + tap.outlet().pressureAt(flow);
            if (flow == 0) {
                assertTrue(state.teePressurePa() <= needed + 1e-9);
            } else {
                assertEquals(needed, state.teePressurePa(), 1e-6 * (1e5 + needed) + stepPa(tap.branch(), flow));
            }
        }

        private double stepPa(List<PipeSegment> segments, double flow) {
            PipeRun run = PipeRun.of(segments, fluid);
            return run.lossPa(flow * (1 + 2e-6)) - run.lossPa(flow * (1 - 2e-6));
        }
    }

    @Provide
    Arbitrary<PipeSegment> segments() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 20).ofScale(9),
                        Arbitraries.doubles().between(0.006, 0.03).ofScale(9),
                        Arbitraries.doubles().between(0, 0.02e-3).ofScale(9),
                        Arbitraries.doubles().between(0, 15).ofScale(9),
                        Arbitraries.doubles().between(-3, 4).ofScale(9))
                .as(PipeSegment::new);
    }

    @Provide
    Arbitrary<Supply> supplies() {
        Arbitrary<Supply> tanks =
                Arbitraries.doubles().between(0, 6e5).ofScale(9).map(FixedPressure::new);
        Arbitrary<Supply> curves = Combinators.combine(
                        Arbitraries.doubles().between(0.2e5, 8e5).ofScale(9),
                        Arbitraries.doubles().between(0, 0.99).ofScale(9),
                        Arbitraries.doubles().between(3, 40).ofScale(9))
                .as((p0, share, q1) -> new SupplyCurve(p0, p0 * share, q1 * L_PER_MIN));
        return Arbitraries.oneOf(tanks, curves);
    }

    @Provide
    Arbitrary<House> houses() {
        Arbitrary<Outlet> outlets = Arbitraries.doubles()
                .between(0.5, 8)
                .ofScale(9)
                .map(c -> Outlet.ofCoefficient(c * L_PER_MIN, Fluid.waterAt(10)));
        Arbitrary<Tap> taps =
                Combinators.combine(segments().list().ofMaxSize(3), outlets).as(Tap::new);
        return Combinators.combine(
                        supplies(),
                        segments().list().ofMaxSize(3),
                        segments().list().ofMaxSize(3),
                        taps.list().ofMaxSize(3),
                        Arbitraries.doubles().between(1, 30).ofScale(9).map(Fluid::waterAt))
                .as(House::new);
    }

    @Property(seed = "1", tries = 2000)
    void imposedFlowBalances(
            @ForAll("houses") House house,
            @ForAll @DoubleRange(min = 0, max = 15) double unit,
            @ForAll @DoubleRange(min = 0, max = 20) double other) {
        NetworkState state = house.network().atUnitFlow(unit * L_PER_MIN, other * L_PER_MIN);
        house.assertBalances(state);
        assertEquals(unit * L_PER_MIN, state.unitFlowM3PerS());
    }

    @Property(seed = "2", tries = 2000)
    void freeOutletBalances(
            @ForAll("houses") House house,
            @ForAll @DoubleRange(min = 0.5, max = 12) double need,
            @ForAll @DoubleRange(min = 0, max = 20) double other) {
        Outlet unit = Outlet.ofPoint(need * L_PER_MIN, 1e5, 0);
        NetworkState state = house.network().atOutlet(unit, other * L_PER_MIN);
        house.assertBalances(state);
        double flow = state.unitFlowM3PerS();
        if (flow == 0) {
            assertTrue(state.unitInletPressurePa() <= 1e-9);
        } else {
            double inletPa = state.teePressurePa()
                    - PipeRun.of(house.branch(), house.fluid()).totalPa(flow);
            double step = house.stepPa(house.branch(), flow);
            assertEquals(inletPa, unit.pressureAt(flow), 1e-6 * (1e5 + unit.pressureAt(flow)) + step);
            assertEquals(unit.pressureAt(flow), state.unitInletPressurePa(), 1e-9 * (1e5 + inletPa));
        }
    }

    @Property(seed = "3")
    void moreDrawOffLeavesLess(
            @ForAll("houses") House house,
            @ForAll @DoubleRange(min = 0, max = 12) double unit,
            @ForAll @DoubleRange(min = 0, max = 12) double other,
            @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
        Network network = house.network();
        double before = network.atUnitFlow(unit * L_PER_MIN, other * L_PER_MIN).unitInletPressurePa();
        double after =
                network.atUnitFlow(unit * L_PER_MIN, (other + more) * L_PER_MIN).unitInletPressurePa();
        assertTrue(after <= before + 1e-6 * (1e5 + Math.abs(before)));
        Outlet need = Outlet.ofPoint(8 * L_PER_MIN, 1e5, 0);
        double flowBefore = network.atOutlet(need, other * L_PER_MIN).unitFlowM3PerS();
        double flowAfter = network.atOutlet(need, (other + more) * L_PER_MIN).unitFlowM3PerS();
        assertTrue(flowAfter <= flowBefore * (1 + 1e-9));
    }

    @Property(seed = "4")
    void anOpenTapLeavesLess(@ForAll("houses") House house, @ForAll @DoubleRange(min = 0.5, max = 12) double unit) {
        Network open = house.network();
        Network noTap = Network.of(house.supply(), house.common(), house.branch(), List.of(), house.fluid());
        double shut = noTap.atUnitFlow(unit * L_PER_MIN, 0).unitInletPressurePa();
        double running = open.atUnitFlow(unit * L_PER_MIN, 0).unitInletPressurePa();
        assertTrue(running <= shut + 1e-6 * (1e5 + Math.abs(shut)));
    }

    @Property(seed = "5")
    void dropOutIsWhereThePressureIsReached(
            @ForAll("houses") House house,
            @ForAll @DoubleRange(min = 0.5, max = 10) double unit,
            @ForAll @DoubleRange(min = 0, max = 3e5) double pressurePa) {
        Network network = house.network();
        Solution drawOff = network.drawOffAt(unit * L_PER_MIN, pressurePa);
        if (drawOff.isPresent()) {
            NetworkState state = network.atUnitFlow(unit * L_PER_MIN, drawOff.value());
            double step = house.stepPa(house.common(), state.totalFlowM3PerS());
            assertEquals(pressurePa, state.unitInletPressurePa(), 1e-6 * (1e5 + pressurePa) + step);
        } else if (drawOff.trouble() == FailureReason.BELOW_WITHOUT_DRAW_OFF) {
            double most = network.atUnitFlow(unit * L_PER_MIN, 0).unitInletPressurePa();
            assertTrue(most <= pressurePa + 1e-6 * (1e5 + pressurePa));
        } else {
            assertEquals(FailureReason.NEVER_REACHED, drawOff.trouble());
            assertTrue(network.atUnitFlow(unit * L_PER_MIN, 0.9).unitInletPressurePa() > pressurePa);
        }
    }
}
