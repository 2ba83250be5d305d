// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/** Balances that hold whatever the numbers; the comparison with an outside solver is in hydraulics.csv. */
class NetworkTest {
    private static final Fluid COLD = Fluid.waterAt(10);
    private static final SupplyCurve WEAK = new SupplyCurve(3.0 * BAR, 1.6 * BAR, 15 * L_PER_MIN);
    private static final List<PipeSegment> COMMON = List.of(new PipeSegment(10, 20.2e-3, 0.0015e-3, 4, 0.5));
    private static final List<PipeSegment> BRANCH = List.of(new PipeSegment(6, 13.6e-3, 0.0015e-3, 6, 3.0));
    private static final Tap KITCHEN =
            new Tap(List.of(new PipeSegment(4, 13.6e-3, 0.0015e-3, 4, 0.5)), Outlet.ofCoefficient(4 * L_PER_MIN, COLD));
    private static final Tap BASIN =
            new Tap(List.of(new PipeSegment(7, 13.6e-3, 0.0015e-3, 5, 2.5)), Outlet.ofCoefficient(2 * L_PER_MIN, COLD));
    private static final Network SHUT = Network.of(WEAK, COMMON, BRANCH, List.of(), COLD);
    private static final Network OPEN = Network.of(WEAK, COMMON, BRANCH, List.of(KITCHEN, BASIN), COLD);
    /** Least running pressure 1.0 bar at 8 L/min. */
    private static final Outlet NEED = Outlet.ofPoint(8 * L_PER_MIN, 1.0 * BAR, 0);

    @Test
    void flowsAndPressuresBalance() {
        NetworkState state = OPEN.atUnitFlow(4 * L_PER_MIN, 1 * L_PER_MIN);
        double total = state.totalFlowM3PerS();
        assertEquals(2, state.tapFlowsM3PerS().size());
        assertEquals(
                5 * L_PER_MIN
                        + state.tapFlowsM3PerS().get(0)
                        + state.tapFlowsM3PerS().get(1),
                total,
                1e-15);
        assertEquals(WEAK.pressureAt(total) - PipeRun.of(COMMON, COLD).totalPa(total), state.teePressurePa(), 1e-6);
        assertEquals(
                state.teePressurePa() - PipeRun.of(BRANCH, COLD).totalPa(4 * L_PER_MIN),
                state.unitInletPressurePa(),
                1e-6);
        assertTapBalances(KITCHEN, state, 0);
        assertTapBalances(BASIN, state, 1);
    }

    private static void assertTapBalances(Tap tap, NetworkState state, int index) {
        double flow = state.tapFlowsM3PerS().get(index);
        double needed =
                PipeRun.of(tap.branch(), COLD).totalPa(flow) + tap.outlet().pressureAt(flow);
        assertEquals(needed, state.teePressurePa(), state.teePressurePa() * 1e-9);
    }

    @Test
    void withoutTapsTheImposedFlowIsWorkedOutDirectly() {
        NetworkState state = SHUT.atUnitFlow(6 * L_PER_MIN, 2 * L_PER_MIN);
        double expected = WEAK.pressureAt(8 * L_PER_MIN)
                - PipeRun.of(COMMON, COLD).totalPa(8 * L_PER_MIN)
                - PipeRun.of(BRANCH, COLD).totalPa(6 * L_PER_MIN);
        assertEquals(expected, state.unitInletPressurePa(), 1e-9);
        assertEquals(List.of(), state.tapFlowsM3PerS());
    }

    @Test
    void anImposedFlowTooLargeGivesAPressureBelowZeroInsteadOfAnError() {
        NetworkState state = SHUT.atUnitFlow(30 * L_PER_MIN, 0);
        assertTrue(state.unitInletPressurePa() < 0);
    }

    @Test
    void largestFlowMeetsTheNeed() {
        for (Network network : List.of(SHUT, OPEN)) {
            double flow = network.atOutlet(NEED, 0).unitFlowM3PerS();
            NetworkState state = network.atUnitFlow(flow, 0);
            assertEquals(NEED.pressureAt(flow), state.unitInletPressurePa(), 1e-3);
        }
        assertTrue(
                OPEN.atOutlet(NEED, 0).unitFlowM3PerS() < SHUT.atOutlet(NEED, 0).unitFlowM3PerS());
    }

    @Test
    void nothingFlowsWhereTheSupplyDoesNotReachTheUnit() {
        Network attic = Network.of(new FixedPressure(0.25 * BAR), COMMON, BRANCH, List.of(), COLD);
        assertEquals(0, attic.atOutlet(NEED, 0).unitFlowM3PerS());
        Network withTap = Network.of(new FixedPressure(0.25 * BAR), COMMON, BRANCH, List.of(KITCHEN), COLD);
        NetworkState state = withTap.atOutlet(NEED, 0);
        assertEquals(0, state.unitFlowM3PerS());
        assertTrue(state.tapFlowsM3PerS().get(0) > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 6})
    void dropOutDrawOffComesBack(double litresPerMin) {
        double drawOff = litresPerMin * L_PER_MIN;
        for (Network network : List.of(SHUT, Network.of(WEAK, COMMON, BRANCH, List.of(BASIN), COLD))) {
            double pressurePa = network.atUnitFlow(4 * L_PER_MIN, drawOff).unitInletPressurePa();
            assertEquals(drawOff, network.drawOffAt(4 * L_PER_MIN, pressurePa).value(), drawOff * 1e-9);
        }
    }

    @Test
    void dropOutWithoutANumberIsNamed() {
        assertEquals(Solution.none(FailureReason.BELOW_WITHOUT_DRAW_OFF), SHUT.drawOffAt(4 * L_PER_MIN, 3.1 * BAR));
        Network noCommonPipe = Network.of(new FixedPressure(2 * BAR), List.of(), BRANCH, List.of(), COLD);
        assertEquals(Solution.none(FailureReason.NEVER_REACHED), noCommonPipe.drawOffAt(4 * L_PER_MIN, 0.5 * BAR));
        assertEquals(
                Solution.of(0),
                noCommonPipe.drawOffAt(0, 2 * BAR - COLD.pressureOfHead(3)).map(Math::rint));
    }

    @Test
    void otherPipeToTheUnitIsAnotherNetwork() {
        List<PipeSegment> wide = List.of(new PipeSegment(6, 20.2e-3, 0.0015e-3, 6, 3.0));
        NetworkState changed = OPEN.withUnitBranch(wide).atOutlet(NEED, 0);
        NetworkState made =
                Network.of(WEAK, COMMON, wide, List.of(KITCHEN, BASIN), COLD).atOutlet(NEED, 0);
        assertEquals(made, changed);
        assertTrue(changed.unitFlowM3PerS() > OPEN.atOutlet(NEED, 0).unitFlowM3PerS());
    }

    @Test
    void riseAndBackPressureBothHaveToBePassed() {
        double backPa = 0.2 * BAR;
        Outlet high = new Outlet(NEED.resistancePaPerFlow2(), backPa);
        for (Network network : List.of(SHUT, OPEN)) {
            NetworkState state = network.atOutlet(high, 0);
            double inletPa = state.teePressurePa() - PipeRun.of(BRANCH, COLD).totalPa(state.unitFlowM3PerS());
            assertTrue(state.unitFlowM3PerS() > 0);
            assertEquals(inletPa, high.pressureAt(state.unitFlowM3PerS()), 1e-3);
        }
    }

    @Test
    void lossSharesAddUp() {
        NetworkState state = OPEN.atUnitFlow(4 * L_PER_MIN, 0);
        LossShares shares = OPEN.lossShares(state);
        assertEquals(3.0 * BAR - state.unitInletPressurePa(), shares.totalPa(), 1e-6);
        assertEquals(COLD.pressureOfHead(3.5), shares.heightPa(), 1e-6);
        assertTrue(shares.supplyPa() > 0 && shares.frictionPa() > 0 && shares.fittingPa() > 0);
    }

    @Test
    void whatFlowsInIsDrawnEvenAtTheStepOfFriction() {
        // A long narrow pipe whose flow would be turbulent just below and laminar just above Re = 2000: it stays there.
        Fluid fluid = new Fluid(1000, 1.73e-6);
        SupplyCurve supply = new SupplyCurve(20_000, 0, 5e-5);
        PipeSegment narrow = new PipeSegment(1.67, 6e-3, 0, 0, 0);
        double stepFlow = 2000 * Math.PI / 4 * 6e-3 * 1.73e-6;
        PipeRun common = PipeRun.of(List.of(narrow), fluid);
        double abovePa = supply.pressureAt(stepFlow) - common.lossPa(stepFlow * (1 - 1e-9));
        double belowPa = supply.pressureAt(stepFlow) - common.lossPa(stepFlow * (1 + 1e-9));
        double middlePa = (abovePa + belowPa) / 2;
        Tap tap = new Tap(List.of(), Outlet.ofPoint(stepFlow, middlePa, 0));
        NetworkState state = Network.of(supply, List.of(narrow), List.of(), List.of(tap), fluid)
                .atUnitFlow(0, 0);
        assertTrue(abovePa - belowPa > 500, "the step is there");
        assertEquals(stepFlow, state.totalFlowM3PerS(), stepFlow * 1e-6);
        assertEquals(middlePa, state.teePressurePa(), 1);
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThrows(DomainException.class, () -> SHUT.atUnitFlow(-1e-9, 0));
        assertThrows(DomainException.class, () -> SHUT.atOutlet(NEED, -1e-9));
        assertThrows(DomainException.class, () -> SHUT.drawOffAt(1e-4, Double.NaN));
        assertThrows(DomainException.class, () -> Outlet.ofPoint(1e-4, 1e4, 2e4));
        assertThrows(DomainException.class, () -> Outlet.ofCoefficient(0, COLD));
        List<PipeSegment> kept = KITCHEN.branch();
        assertSame(kept, new Tap(kept, NEED).branch());
    }
}
