// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleSetTest {
    /** Read for each test, not taken from those that the program keeps. */
    private final RuleSet bs = read(RuleSets.DEFAULT);

    private static RuleSet iec() {
        return read("iec60364-5-52");
    }

    private static RuleSet read(String id) {
        return new RuleShelf(RuleSets.ids(), null).find(id).orElseThrow();
    }

    static List<String> ids() {
        return RuleSets.ids();
    }

    @Test
    void theStandardOneComesFirst() {
        assertEquals(List.of("bs7671-2018-a2", "iec60364-5-52"), RuleSets.ids());
        assertTrue(RuleSets.find("nothing").isEmpty());
    }

    @Test
    void titleAndCautionNameTheEdition() {
        assertEquals("BS 7671:2018+A2:2022 tables", bs.title());
        assertTrue(bs.caution().contains("A4:2026"));
        assertTrue(bs.caution().toLowerCase(Locale.ROOT).contains("govern"));
        assertTrue(iec().caution().contains("memory"));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyTableSaysWhereItIsFromAndHowFarItIsVerified(String id) {
        RuleSet rules = read(id);
        for (String name : RuleSet.TABLES) {
            assertFalse(rules.table(name).source().isEmpty(), name);
            assertFalse(rules.table(name).status().isEmpty(), name);
            assertFalse(rules.table(name).units().isEmpty(), name);
        }
        rules.keys().forEach(key -> assertFalse(rules.source(key).isEmpty(), key));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyNumberOfTheStandardOneIsThere(String id) {
        assertTrue(read(id).keys().containsAll(bs.keys()));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void whatTablesReferToIsThere(String id) {
        RuleSet rules = read(id);
        assertTrue(rules.method(rules.text("method.clipped")).isPresent());
        assertTrue(rules.devices().find(rules.text("device.new.kind")).isPresent());
        for (String key : rules.methods()) {
            rules.method(key)
                    .orElseThrow()
                    .plausible()
                    .forEach(other -> assertTrue(rules.method(other).isPresent(), key + " to " + other));
        }
        for (String cable : rules.cables().keys()) {
            for (CableSize size : rules.cables().sizes(cable)) {
                size.currents()
                        .keySet()
                        .forEach(method -> assertTrue(rules.method(method).isPresent(), method));
                assertTrue(rules.cables().conductorOhmPerM(size.cpcMm2()).isPresent(), "cpc of " + size);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void thickerCablesCarryMoreAndDropLess(String id) {
        RuleSet rules = read(id);
        List<CableSize> sizes = rules.cables().sizes(rules.cables().first());
        for (int at = 1; at < sizes.size(); at++) {
            CableSize thin = sizes.get(at - 1);
            CableSize thick = sizes.get(at);
            assertTrue(thick.dropVPerAm() < thin.dropVPerAm());
            assertTrue(thick.lineOhmPerM() < thin.lineOhmPerM());
            assertTrue(thick.cpcMm2() >= thin.cpcMm2());
            thin.currents()
                    .forEach((method, current) ->
                            assertTrue(thick.currentA(method).orElse(0) > current, thick.sizeMm2() + " " + method));
        }
    }

    /**
     * The tabulated drop is the resistance of both conductors at 70 degC and rounded: IEC 60228 conductors times the factor of
     * copper from 20 to 70 degC, an independent source. 4 %: the tables are rounded, and annex G of the IEC standard takes the
     * nominal area for the true one.
     */
    @ParameterizedTest
    @MethodSource("ids")
    void theDropAgreesWithTheConductors(String id) {
        RuleSet rules = read(id);
        for (CableSize size : rules.cables().sizes(rules.cables().first())) {
            double computed = 2 * size.lineOhmPerM() * (1 + 0.00393 * 50);
            assertEquals(computed, size.dropVPerAm(), 0.04 * computed, size.sizeMm2() + " mm²");
        }
    }

    /** BS 7671:2018 table 4D5; 6 C, 10 100 and 16 100 read in a published article, the rest from memory. */
    @ParameterizedTest
    @CsvSource({"6, C, 47", "10, 100, 45", "16, 100, 57", "10, 101, 36", "16, 101, 46", "6, 103, 23.5", "10, C, 64"})
    void flatTwinAndEarth(double sizeMm2, String method, double expectedA) {
        assertEquals(
                expectedA,
                bs.cables()
                        .find("flat-70", sizeMm2)
                        .orElseThrow()
                        .currentA(method)
                        .orElseThrow());
    }

    /** IEC 60364-5-52:2009 table B.52.2, from memory, agreed with by widely printed copies. */
    @ParameterizedTest
    @CsvSource({"6, A1, 34", "6, A2, 32", "6, B1, 41", "6, B2, 38", "6, C, 46", "10, A1, 46", "10, C, 63", "2.5, C, 27"
    })
    void twoLoadedConductors(double sizeMm2, String method, double expectedA) {
        assertEquals(
                expectedA,
                iec().cables()
                        .find("pvc-two-core", sizeMm2)
                        .orElseThrow()
                        .currentA(method)
                        .orElseThrow());
    }

    /** R1 + R2 from the conductors of BS EN 60228:2005 (memory), mohm/m at 20 degC. */
    @ParameterizedTest
    @CsvSource({"1, 36.2", "1.5, 30.2", "2.5, 19.51", "4, 16.71", "6, 10.49", "10, 6.44", "16, 4.23"})
    void lineAndProtectiveConductor(double sizeMm2, double expectedMilliohmPerM) {
        CableSize size = bs.cables().find("flat-70", sizeMm2).orElseThrow();
        double found =
                size.lineOhmPerM() + bs.cables().conductorOhmPerM(size.cpcMm2()).orElseThrow();
        assertEquals(expectedMilliohmPerM, found * 1000, 1e-9);
    }

    /** The ambient factor is sqrt((70 - T) / 40) rounded (physics of the conductor's temperature rise). */
    @ParameterizedTest
    @CsvSource({"30, 1", "35, 0.94", "40, 0.87", "45, 0.79", "50, 0.71", "55, 0.61", "60, 0.50"})
    void ambient(double ambientC, double expected) {
        assertEquals(expected, bs.ambientFactor(ambientC).orElseThrow());
        assertEquals(Math.sqrt((70 - ambientC) / 40), bs.ambientFactor(ambientC).orElseThrow(), 0.006);
    }

    @Test
    void ambientBetweenTheRowsStaysUnderTheCurve() {
        for (double ambientC = 30; ambientC <= 60; ambientC += 0.5) {
            double found = bs.ambientFactor(ambientC).orElseThrow();
            assertTrue(found <= Math.sqrt((70 - ambientC) / 40) + 0.006, "at " + ambientC);
        }
        assertTrue(bs.ambientFactor(60.1).isEmpty());
        assertEquals(1.03, bs.ambientFactor(10).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.03, 0.88", "0.05, 0.88", "0.051, 0.78", "0.4, 0.51", "0.41, 0.50", "9, 0.50"})
    void insulation(double lengthM, double expected) {
        assertEquals(expected, bs.insulationFactor(lengthM));
    }

    @Test
    void groupingBeyondTheTableIsNotGuessed() {
        assertEquals(0.8, bs.groupingFactor("bunched", 2).orElseThrow());
        assertEquals(0.85, bs.groupingFactor("single-layer", 2).orElseThrow());
        assertEquals(0.50, bs.groupingFactor("bunched", 9).orElseThrow());
        assertEquals(
                0.45, bs.groupingFactor("bunched", 10).orElseThrow(), "what lies between has the value of the upper");
        assertEquals(0.70, bs.groupingFactor("single-layer", 40).orElseThrow());
        assertTrue(bs.groupingFactor("bunched", 99).isEmpty());
        assertTrue(bs.groupingFactor("heap", 2).isEmpty());
    }

    @Test
    void devices() {
        DeviceKind fuse = bs.devices().find("fuse-3036").orElseThrow();
        assertEquals(0.725, fuse.cableFactor());
        assertTrue(fuse.multiple().isEmpty());
        assertEquals(1.04, bs.devices().tabulatedLoopOhm("fuse-3036", 30, 0.4).orElseThrow());
        assertEquals(2.51, bs.devices().tabulatedLoopOhm("fuse-3036", 30, 5).orElseThrow());
        assertEquals(1.07, bs.devices().tabulatedLoopOhm("fuse-3036", 60, 5).orElseThrow());
        assertEquals(0.91, bs.devices().tabulatedLoopOhm("fuse-88-3", 32, 0.4).orElseThrow());
        assertEquals(0.68, bs.devices().tabulatedLoopOhm("fuse-88-3", 63, 5).orElseThrow());
        assertEquals(1.09, bs.devices().tabulatedLoopOhm("fuse-1361", 30, 0.4).orElseThrow());
        assertTrue(bs.devices().tabulatedLoopOhm("fuse-88-3", 30, 5).isEmpty(), "not made");
        assertEquals(
                4, bs.devices().find("breaker-3871-1").orElseThrow().multiple().orElseThrow());
        assertEquals(54000, bs.devices().letThroughA2s("breaker-b", 40).orElseThrow());
        assertTrue(bs.devices().letThroughA2s("breaker-b", 50).isEmpty());
        assertTrue(bs.devices().find("breaker-x").isEmpty());
    }

    /** BS 7671 table 41.1 and 411.3.2.2 (memory): up to 32 A 0.4 s, above 5 s; with an own electrode 0.2 s and 1 s. */
    @Test
    void disconnectionTimes() {
        assertEquals(0.4, bs.disconnectionS(32, false));
        assertEquals(5, bs.disconnectionS(40, false));
        assertEquals(0.2, bs.disconnectionS(32, true));
        assertEquals(1, bs.disconnectionS(40, true));
    }

    @Test
    void earthing() {
        assertEquals(25, bs.earthing().tailsMm2(100).orElseThrow());
        assertTrue(bs.earthing().tailsMm2(200).isEmpty());
        assertEquals(10, bs.earthing().bondingMm2(25).orElseThrow());
        assertEquals(16, bs.earthing().bondingMm2(50).orElseThrow());
        assertEquals(10, bs.earthing().conductorMm2(10).orElseThrow());
        assertEquals(16, bs.earthing().conductorMm2(25).orElseThrow());
        assertTrue(bs.earthing().conductorMm2(70).isEmpty());
    }

    @Test
    void whatIsNotThereIsSaid() {
        IllegalArgumentException missing = assertThrows(IllegalArgumentException.class, () -> bs.number("moon.phase"));
        assertTrue(String.valueOf(missing.getMessage()).contains("moon.phase"));
        assertThrows(IllegalArgumentException.class, () -> bs.number("title"));
        assertThrows(IllegalArgumentException.class, () -> bs.table("moons"));
    }

    @Test
    void sizesAreFoundThroughTheNoiseOfUnits() {
        double noisy = 10.000000000000002;
        assertEquals(10, bs.cables().find("flat-70", noisy).orElseThrow().sizeMm2());
        assertTrue(bs.cables().find("flat-70", 7).isEmpty());
        assertTrue(bs.cables().find("rope", 10).isEmpty());
    }

    /** Halfway from 30 to 35 degC halfway from 1.00 to 0.94; a fifth of the way from 40 to 45 degC a fifth from 0.87 to 0.79. */
    @Test
    void ambientFactorsLieOnStraightLinesBetweenTheRows() {
        assertEquals(0.97, bs.ambientFactor(32.5).orElseThrow(), 1e-12);
        assertEquals(0.854, bs.ambientFactor(41).orElseThrow(), 1e-12);
    }

    @Test
    void theStandardOneIsRead() {
        assertEquals("bs7671-2018-a2", bs.id());
        assertEquals(List.of(216.2, 230.0, 240.0, 253.0), bs.gridVoltages());
        assertEquals("BS 7671 525.1 and appendix 4, section 6", bs.text("cite.drop"));
        assertEquals("BS 7671 table 54.3: copper cpc in a thermoplastic cable (read)", bs.source("k"));
        assertEquals("", bs.source("moon.phase"));
        assertEquals(
                "EN 60898-1, energy limiting class 3, breaking capacity 6 kA, type B; memory",
                bs.tableSource("letthrough"));
        assertEquals("rating A; energy A2s", bs.table("letthrough").units());
    }

    /** A row of each table as it is printed in the file, with the units of the model. */
    @Test
    void rowsBecomeMethodsCablesAndDiversity() {
        assertEquals(List.of("100", "101", "102", "103", "C", "A"), bs.methods());
        assertEquals(
                Optional.of(new Method(
                        "C", "clipped direct or buried in masonry", false, Method.Move.CLIP, List.of("102"))),
                bs.method("C"));
        assertEquals(
                Optional.of(new Method(
                        "100",
                        "above a plasterboard ceiling, insulation up to 100 mm",
                        true,
                        Method.Move.LIFT,
                        List.of("101"))),
                bs.method("100"));
        assertEquals(Method.Move.NO, bs.method("102").orElseThrow().move());
        assertEquals(List.of(), iec().method("A2").orElseThrow().plausible());

        assertEquals(List.of("flat-70"), bs.cables().keys());
        assertEquals("flat-70", bs.cables().first());
        assertEquals(
                List.of(1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0),
                bs.cables().sizes("flat-70").stream().map(CableSize::sizeMm2).toList());
        assertEquals(List.of(), bs.cables().sizes("rope"));
        CableSize ten = bs.cables().find("flat-70", 10).orElseThrow();
        assertEquals(0.0044, ten.dropVPerAm(), 1e-15);
        assertEquals(0.00183, ten.lineOhmPerM(), 1e-15);
        assertEquals(4, ten.cpcMm2());
        assertTrue(bs.cables().conductorOhmPerM(7).isEmpty());

        assertEquals(
                new DiversityShare("shower", 0, 1, false, List.of(1.0, 1.0, 0.25), 0),
                bs.diversity().get(0));
        assertEquals(
                new DiversityShare("cooker", 10, 0.3, false, List.of(1.0), 5),
                bs.diversity().get(1));
        assertTrue(bs.diversity().get(3).together(), "lighting");
        assertEquals(8, bs.diversity().size());
    }

    @Test
    void rowsBecomeDevices() {
        assertEquals(
                List.of("breaker-b", "breaker-c", "breaker-d", "rcbo-b", "rcbo-c", "fuse-gg"),
                iec().devices().keys());
        assertEquals(
                Optional.of(new DeviceKind(
                        "rcbo-b",
                        "RCBO, type B",
                        DeviceKind.Family.RCBO,
                        OptionalDouble.of(5),
                        1,
                        List.of(6.0, 10.0, 16.0, 20.0, 25.0, 32.0, 40.0, 45.0, 50.0))),
                bs.devices().find("rcbo-b"));
        assertEquals(
                DeviceKind.Family.BREAKER,
                bs.devices().find("breaker-d").orElseThrow().family());
        assertEquals(
                DeviceKind.Family.FUSE,
                bs.devices().find("fuse-1361").orElseThrow().family());
        assertEquals(Map.of(0.4, 0.91, 5.0, 1.56), bs.devices().tabulatedLoopsOhm("fuse-88-3", 32));
        assertEquals(Map.of(), bs.devices().tabulatedLoopsOhm("fuse-88-3", 30));
        assertEquals(Map.of(), bs.devices().tabulatedLoopsOhm("breaker-b", 32));
        assertTrue(bs.devices().letThroughA2s("breaker-c", 16).isEmpty());
    }

    /** The tables of tails, bonding and earthing conductors as a reader can follow them in a working. */
    @Test
    void theExpressionsOfAWorkingFollowTheTables() {
        assertEquals("if(In <= 60, 16, if(In <= 80, 16, 25))", bs.earthing().tailsExpression("In"));
        assertEquals(
                "if(S <= 35, 10, if(S <= 50, 16, if(S <= 95, 25, 35)))",
                bs.earthing().bondingExpression("S"));
        assertEquals("if(S <= 16, S, 16)", bs.earthing().conductorExpression("S"));
    }
}
