// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.demand.Diversity;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.engineering.demand.DiversityRule;
import twinfeed.engineering.water.Heat;

/** Table values are those of the wiring rules' tables that each case names, as given in the case's source. */
class ElectricalCasesTest {
    private static final double R1R2_6_2_5 = 10.49e-3;
    private static final double R1R2_10_4 = 6.44e-3;

    private final Map<String, Consumer<CaseFile.Case>> checks = new HashMap<>();

    @TestFactory
    Stream<DynamicTest> electrical() {
        heater();
        loops();
        capacities();
        drops();
        conductors();
        return CaseFile.read("electrical.csv").tests(checks);
    }

    private void heater() {
        checks.put("E1", row -> row.agrees(Heat.powerOfResistance(Heat.parallelResistance(13.1, 13.6), 240) / 1000));
        checks.put("E2", row -> row.agrees(Heat.currentAt(9500, 240, 240)));
        checks.put("E2b", row -> row.agrees(Heat.powerAtVoltage(9500, 240, 230) / 1000));
        checks.put("E18", row -> row.agrees(maximumDemandA()));
    }

    private void loops() {
        checks.put("Z1", row -> row.agrees(Protection.maxLoopImpedanceOhm(5, 32, 230, 0.95)));
        checks.put("Z2", row -> row.agrees(Protection.maxLoopImpedanceOhm(5, 40, 230, 0.95)));
        checks.put("Z3", row -> row.agrees(Protection.maxLoopImpedanceOhm(10, 50, 230, 0.95)));
        checks.put("R1", row -> row.agrees(Protection.r1r2Ohm(50, R1R2_6_2_5, 1)));
        checks.put("R2", row -> row.agrees(Protection.r1r2Ohm(50, R1R2_10_4, 1)));
        checks.put(
                "E19",
                row -> row.agrees(Protection.electrodeLimitOhm(50, 0.03), Protection.electrodeLimitOhm(50, 0.1)));
        checks.put("L2", row -> row.agrees(longestByLoopM(Protection.maxLoopImpedanceOhm(5, 45, 240, 1))));
        checks.put("L2n", row -> row.agrees(longestByLoopM(Protection.maxLoopImpedanceOhm(5, 45, 230, 0.95))));
    }

    private void capacities() {
        checks.put("M1", row -> row.says(verdict(44, 47)));
        checks.put("M2", row -> row.says(verdict(50, 45)));
        checks.put("M3", row -> row.says(verdict(45, 45)));
        checks.put("M4", row -> row.agrees(Cable.neededTabulatedA(32, 0.87, 0.80, 1, 1)));
        checks.put("E3", row -> row.agrees(Cable.neededTabulatedA(25, 0.94, 0.80, 0.51, 1)));
        checks.put("E12", row -> row.agrees(Cable.neededTabulatedA(32, 1.03, 0.90, 1, 1)));
    }

    private void drops() {
        checks.put("E6a", row -> row.agrees(Cable.voltageDropV(run(20, 11e-3, 37), 30)));
        checks.put("E6b", row -> row.agrees(Cable.voltageDropV(run(40, 7.3e-3, 47), 45)));
        checks.put("E6c", row -> row.agrees(Cable.voltageDropV(run(40, 4.4e-3, 64), 45)));
        checks.put(
                "L1",
                row -> row.agrees(Cable.longestRunByDropM(9.6, 0, 4.4e-3, 45).value()));
        checks.put(
                "L1n",
                row -> row.agrees(Cable.longestRunByDropM(11.5, 0, 4.4e-3, 45).value()));
    }

    private void conductors() {
        checks.put(
                "E15",
                row -> row.agrees(Protection.adiabaticAreaMm2(Protection.faultCurrentA(230, 0.35), 0.1, 115)
                        .value()));
        checks.put(
                "E16",
                row -> row.agrees(Protection.adiabaticAreaMm2(1095, 0.1, 115).value()));
    }

    private static List<CableSegment> run(double lengthM, double dropVPerAm, double tabulatedA) {
        return List.of(new CableSegment(lengthM, dropVPerAm, tabulatedA, 1, 1, 1, 1));
    }

    private static double longestByLoopM(double limitOhm) {
        return Cable.longestRunByLoopM(limitOhm, 0.8, R1R2_10_4 * Protection.WARM_FACTOR)
                .value();
    }

    /** The words of the cases, from the capacity that the code works out and the load or device rating. */
    private static String verdict(double ratingA, int tabulatedA) {
        double capacityA = Cable.capacityA(run(1, 1e-3, tabulatedA));
        return (ratingA <= capacityA ? "carries" : "does not carry") + " (" + tabulatedA + " A)";
    }

    private static double maximumDemandA() {
        List<DiversityRule> rules = List.of(
                DiversityRule.byRank("ring", List.of(1.0, 0.4)),
                DiversityRule.onTotal("lighting", 0, 0.66),
                DiversityRule.byRank("water", List.of(1.0, 1.0, 0.25)),
                new DiversityRule("cooking", 10, 0.3, false, List.of(1.0), 5));
        List<DiversityLoad> loads = List.of(
                new DiversityLoad("ring 1", "ring", 32, false),
                new DiversityLoad("ring 2", "ring", 32, false),
                new DiversityLoad("lights 1", "lighting", 6, false),
                new DiversityLoad("lights 2", "lighting", 6, false),
                new DiversityLoad("heater", "water", 16, false),
                new DiversityLoad("cooker", "cooking", 32, true));
        return Diversity.of(loads, rules).totalA();
    }
}
