// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static twinfeed.engineering.TradeUnits.KG_PER_MIN;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;

class HeatCasesTest {
    private final Map<String, Consumer<CaseFile.Case>> checks = new HashMap<>();

    @TestFactory
    Stream<DynamicTest> heat() {
        checks.put("S3", row -> row.agrees(inletLitres(7500, 4, 38)));
        checks.put("S4", row -> row.agrees(kilowatts(1, 10, 40)));
        checks.put("S6", row -> row.agrees(kilowatts(9.46, 10, 49)));
        checks.put("S8", row -> row.agrees(kilograms(8500, 5, 40)));
        checks.put(
                "S8o", row -> row.agrees(Heat.volumeFlowAtOutlet(kilograms(8500, 5, 40) * KG_PER_MIN, 40) / L_PER_MIN));
        checks.put("S9", row -> row.agrees(kilograms(8500, 15, 40)));
        checks.put("S10a", row -> row.agrees(kilograms(9500, 5, 40)));
        checks.put("S10b", row -> row.agrees(kilograms(9500, 20, 38)));
        checks.put("S11", row -> row.agrees(kilograms(10500, 5, 38)));
        checks.put("S12", row -> row.agrees(kilograms(Heat.powerAtVoltage(9500, 240, 230), 5, 40)));
        checks.put("S13", row -> row.agrees(outlet(9500, 5, 2.0)));
        checks.put("S14", HeatCasesTest::noHeatingNeeded);
        checks.put(
                "S15",
                row -> row.agrees(outlet(9500 * Heat.shareOfElement(1, 12.126, 12.126), 5, kilograms(9500, 5, 40))));
        checks.put("E21", row -> row.agrees(inletLitres(9500, 5, 40)));
        return CaseFile.read("heat.csv").tests(checks);
    }

    private static double kilograms(double powerW, double intakeC, double outletC) {
        return Heat.massFlowForOutlet(powerW, intakeC, outletC).value() / KG_PER_MIN;
    }

    private static double inletLitres(double powerW, double intakeC, double outletC) {
        return Heat.volumeFlowAtInlet(kilograms(powerW, intakeC, outletC) * KG_PER_MIN, intakeC) / L_PER_MIN;
    }

    private static double kilowatts(double litresPerMin, double intakeC, double outletC) {
        double mass = Heat.massFlow(litresPerMin * L_PER_MIN, intakeC);
        return Heat.powerForFlow(mass, intakeC, outletC).value() / 1000;
    }

    private static double outlet(double powerW, double intakeC, double kgPerMin) {
        return Heat.outletTemperature(powerW, intakeC, kgPerMin * KG_PER_MIN).value();
    }

    private static void noHeatingNeeded(CaseFile.Case row) {
        Solution none = Solution.none(FailureReason.NO_HEATING_NEEDED);
        assertEquals(none, Heat.massFlowForOutlet(9500, 20, 20), row::toString);
        assertEquals(none, Heat.massFlowForOutlet(9500, 20, 15), row::toString);
        assertEquals(none, Heat.powerForFlow(0.1, 20, 20), row::toString);
        assertEquals(none, Heat.powerForFlow(0.1, 20, 15), row::toString);
    }
}
