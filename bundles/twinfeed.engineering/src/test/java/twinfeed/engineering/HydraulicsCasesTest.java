// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.FOOT;
import static twinfeed.engineering.TradeUnits.INCH;
import static twinfeed.engineering.TradeUnits.KPA;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;
import static twinfeed.engineering.TradeUnits.PSI;
import static twinfeed.engineering.TradeUnits.US_GPM;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.engineering.water.Heat;

class HydraulicsCasesTest {
    private static final double COPPER_M = 0.0015e-3;
    private static final double PLASTIC_M = 0.007e-3;
    private static final Fluid COLD = Fluid.waterAt(10);

    private final Map<String, Consumer<CaseFile.Case>> checks = new HashMap<>();

    @TestFactory
    Stream<DynamicTest> hydraulics() {
        pipes();
        textbooks();
        supplies();
        networks();
        return CaseFile.read("hydraulics.csv").tests(checks);
    }

    private void pipes() {
        checks.put("P3a", row -> row.agrees(psiPer100Feet(13.84, 1, 15.6)));
        checks.put("P3c", row -> row.agrees(psiPer100Feet(13.84, 3, 15.6)));
        checks.put("P4", row -> row.agrees(psiPer100Feet(19.94, 4, 15.6)));
        checks.put("PE3", row -> row.agrees(headLossM(13.6, COPPER_M, 3)));
        checks.put("PE6", row -> row.agrees(headLossM(13.6, COPPER_M, 6)));
        checks.put("PE9", row -> row.agrees(headLossM(13.6, COPPER_M, 9)));
        checks.put("PE12", row -> row.agrees(headLossM(13.6, COPPER_M, 12)));
        checks.put("PE12b", row -> row.agrees(headLossM(8.8, COPPER_M, 12)));
        checks.put("PE12c", row -> row.agrees(headLossM(11.7, PLASTIC_M, 12)));
        checks.put("D4a", row -> row.agrees(Pipe.frictionLossPa(plain(1, 13.6e-3, COPPER_M), COLD, 0.2e-3) / KPA));
    }

    private void textbooks() {
        checks.put(
                "P8",
                row -> row.agrees(Pipe.frictionLossPa(
                                plain(15, 2e-3, 0), new Fluid(999.7, 1.307e-3 / 999.7), 1.2 * Math.PI * 1e-6)
                        / KPA));
        checks.put(
                "P11",
                row -> row.agrees(Pipe.headLossM(new PipeSegment(0, 20e-3, 0, 5.5, 0), COLD, 2 * Math.PI * 1e-4)));
        checks.put(
                "TB1",
                row -> row.agrees(
                        Pipe.frictionLossPa(plain(30, 40e-3, 0.002e-3), new Fluid(999.1, 1.138e-3 / 999.1), 8e-3)
                                / KPA));
        PipeSegment copper = new PipeSegment(60 * FOOT, 0.75 * INCH, COPPER_M, 18, 0);
        Fluid at60Fahrenheit = Fluid.waterAt(15.556);
        checks.put("TB2a", row -> row.agrees(Pipe.frictionLossPa(copper, at60Fahrenheit, 12 * US_GPM) / PSI));
        checks.put("TB2b", row -> row.agrees(Pipe.fittingLossPa(copper, at60Fahrenheit, 12 * US_GPM) / PSI));
    }

    private void supplies() {
        SupplyCurve curve = new SupplyCurve(3.0 * BAR, 1.6 * BAR, 15 * L_PER_MIN);
        checks.put("C3", row -> row.agrees(curve.pressureAt(18 * L_PER_MIN, 1.85) / BAR));
        checks.put("C4", row -> row.agrees(curve.pressureAt(9 * L_PER_MIN, 2) / BAR));
        checks.put("C3r", row -> row.agrees(curve.pressureAt(18 * L_PER_MIN) / BAR));
        checks.put("C4r", row -> row.agrees(curve.pressureAt(9 * L_PER_MIN) / BAR));
        SupplyCurve hydrant = new SupplyCurve(85 * PSI, 72 * PSI, 1100 * US_GPM);
        checks.put("C2", row -> row.agrees(hydrant.flowAt(20 * PSI, 1.85).value() / US_GPM));
        checks.put("C6", HydraulicsCasesTest::refusedOrWarned);
        checks.put("T60", row -> row.agrees(outletAtPressureShare(0.6), outletAtPressureShare(0.4)));
    }

    private void networks() {
        Network guaranteed = Network.of(
                new FixedPressure(COLD.pressureOfHead(7)),
                List.of(),
                List.of(new PipeSegment(10, 13.6e-3, COPPER_M, 0, 3.5)),
                List.of(),
                COLD);
        checks.put(
                "C9",
                row -> row.agrees(
                        COLD.headOfPressure(guaranteed.atUnitFlow(0, 0).unitInletPressurePa())));
        Outlet shower = Outlet.ofCoefficient(2.50528 * L_PER_MIN, COLD);
        Tap tap = new Tap(
                List.of(new PipeSegment(6, 13.6e-3, COPPER_M, 5, 0.5)),
                Outlet.ofCoefficient(5.31434 * L_PER_MIN, COLD));
        checks.put(
                "N1a",
                row -> row.agrees(twoBranches(List.of()).atOutlet(shower, 0).unitFlowM3PerS() / L_PER_MIN));
        checks.put(
                "N1b",
                row -> row.agrees(twoBranches(List.of(tap)).atOutlet(shower, 0).unitFlowM3PerS() / L_PER_MIN));
    }

    private static Network twoBranches(List<Tap> open) {
        return Network.of(
                new FixedPressure(COLD.pressureOfHead(20.394)),
                List.of(new PipeSegment(15, 20e-3, PLASTIC_M, 6, 0.5)),
                List.of(new PipeSegment(8, 13.6e-3, COPPER_M, 8, 3.5)),
                open,
                COLD);
    }

    private static PipeSegment plain(double lengthM, double boreM, double roughnessM) {
        return new PipeSegment(lengthM, boreM, roughnessM, 0, 0);
    }

    private static double psiPer100Feet(double boreMm, double usGpm, double temperatureC) {
        PipeSegment copper = plain(100 * FOOT, boreMm / 1000, COPPER_M);
        return Pipe.frictionLossPa(copper, Fluid.waterAt(temperatureC), usGpm * US_GPM) / PSI;
    }

    private static double headLossM(double boreMm, double roughnessM, double litresPerMin) {
        return Pipe.headLossM(plain(12, boreMm / 1000, roughnessM), COLD, litresPerMin * L_PER_MIN);
    }

    private static double outletAtPressureShare(double share) {
        double before = Heat.massFlowForOutlet(9500, 5, 40).value();
        return Heat.outletTemperature(9500, 5, Throttle.flowAtRatio(before, share))
                .value();
    }

    private static void refusedOrWarned(CaseFile.Case row) {
        double flow = 15 * L_PER_MIN;
        assertEquals(SupplyTest.RUNNING_NOT_BELOW_STATIC, SupplyTest.of(3 * BAR, 3 * BAR, flow), row::toString);
        assertEquals(SupplyTest.RUNNING_NOT_BELOW_STATIC, SupplyTest.of(3 * BAR, 3.1 * BAR, flow), row::toString);
        assertEquals(SupplyTest.FLOW_NOT_POSITIVE, SupplyTest.of(3 * BAR, 2 * BAR, 0), row::toString);
        assertEquals(SupplyTest.FLOW_NOT_POSITIVE, SupplyTest.of(3 * BAR, 2 * BAR, -flow), row::toString);
        assertEquals(SupplyTest.SMALL_DROP, SupplyTest.of(3 * BAR, 2.71 * BAR, flow), row::toString);
        assertEquals(SupplyTest.USABLE, SupplyTest.of(3 * BAR, 2.7 * BAR, flow), row::toString);
        DomainException refused =
                assertThrows(DomainException.class, () -> new SupplyCurve(3 * BAR, 3 * BAR, flow), row::toString);
        assertEquals(FailureReason.RUNNING_NOT_BELOW_STATIC, refused.trouble(), row::toString);
        assertEquals("runningPa", refused.argument(), row::toString);
        refused = assertThrows(DomainException.class, () -> new SupplyCurve(3 * BAR, 2 * BAR, 0), row::toString);
        assertEquals(FailureReason.FLOW_NOT_POSITIVE, refused.trouble(), row::toString);
        assertEquals("testFlowM3PerS", refused.argument(), row::toString);
    }
}
