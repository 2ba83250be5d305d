// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleSetTest {
    private static final RuleSet BS = RuleSets.standard();

    private static RuleSet iec() {
        return RuleSets.find("iec60364-5-52").orElseThrow();
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
        assertEquals("BS 7671:2018+A2:2022 tables", BS.title());
        assertTrue(BS.caution().contains("A4:2026"));
        assertTrue(BS.caution().toLowerCase(Locale.ROOT).contains("govern"));
        assertTrue(iec().caution().contains("memory"));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyTableSaysWhereItIsFromAndHowFarItIsVerified(String id) {
        RuleSet rules = RuleSets.find(id).orElseThrow();
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
        assertTrue(RuleSets.find(id).orElseThrow().keys().containsAll(BS.keys()));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void whatTablesReferToIsThere(String id) {
        RuleSet rules = RuleSets.find(id).orElseThrow();
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
        RuleSet rules = RuleSets.find(id).orElseThrow();
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
        RuleSet rules = RuleSets.find(id).orElseThrow();
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
                BS.cables()
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
        CableSize size = BS.cables().find("flat-70", sizeMm2).orElseThrow();
        double found =
                size.lineOhmPerM() + BS.cables().conductorOhmPerM(size.cpcMm2()).orElseThrow();
        assertEquals(expectedMilliohmPerM, found * 1000, 1e-9);
    }

    /** The ambient factor is sqrt((70 - T) / 40) rounded (physics of the conductor's temperature rise). */
    @ParameterizedTest
    @CsvSource({"30, 1", "35, 0.94", "40, 0.87", "45, 0.79", "50, 0.71", "55, 0.61", "60, 0.50"})
    void ambient(double ambientC, double expected) {
        assertEquals(expected, BS.ambientFactor(ambientC).orElseThrow());
        assertEquals(Math.sqrt((70 - ambientC) / 40), BS.ambientFactor(ambientC).orElseThrow(), 0.006);
    }

    @Test
    void ambientBetweenTheRowsStaysUnderTheCurve() {
        for (double ambientC = 30; ambientC <= 60; ambientC += 0.5) {
            double found = BS.ambientFactor(ambientC).orElseThrow();
            assertTrue(found <= Math.sqrt((70 - ambientC) / 40) + 0.006, "at " + ambientC);
        }
        assertTrue(BS.ambientFactor(60.1).isEmpty());
        assertEquals(1.03, BS.ambientFactor(10).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.03, 0.88", "0.05, 0.88", "0.051, 0.78", "0.4, 0.51", "0.41, 0.50", "9, 0.50"})
    void insulation(double lengthM, double expected) {
        assertEquals(expected, BS.insulationFactor(lengthM));
    }

    @Test
    void groupingBeyondTheTableIsNotGuessed() {
        assertEquals(0.8, BS.groupingFactor("bunched", 2).orElseThrow());
        assertEquals(0.85, BS.groupingFactor("single-layer", 2).orElseThrow());
        assertEquals(0.50, BS.groupingFactor("bunched", 9).orElseThrow());
        assertEquals(
                0.45, BS.groupingFactor("bunched", 10).orElseThrow(), "what lies between has the value of the upper");
        assertEquals(0.70, BS.groupingFactor("single-layer", 40).orElseThrow());
        assertTrue(BS.groupingFactor("bunched", 99).isEmpty());
        assertTrue(BS.groupingFactor("heap", 2).isEmpty());
    }

    @Test
    void devices() {
        DeviceKind fuse = BS.devices().find("fuse-3036").orElseThrow();
        assertEquals(0.725, fuse.cableFactor());
        assertTrue(fuse.multiple().isEmpty());
        assertEquals(1.04, BS.devices().tabulatedLoopOhm("fuse-3036", 30, 0.4).orElseThrow());
        assertEquals(2.51, BS.devices().tabulatedLoopOhm("fuse-3036", 30, 5).orElseThrow());
        assertEquals(1.07, BS.devices().tabulatedLoopOhm("fuse-3036", 60, 5).orElseThrow());
        assertEquals(0.91, BS.devices().tabulatedLoopOhm("fuse-88-3", 32, 0.4).orElseThrow());
        assertEquals(0.68, BS.devices().tabulatedLoopOhm("fuse-88-3", 63, 5).orElseThrow());
        assertEquals(1.09, BS.devices().tabulatedLoopOhm("fuse-1361", 30, 0.4).orElseThrow());
        assertTrue(BS.devices().tabulatedLoopOhm("fuse-88-3", 30, 5).isEmpty(), "not made");
        assertEquals(
                4, BS.devices().find("breaker-3871-1").orElseThrow().multiple().orElseThrow());
        assertEquals(54000, BS.devices().letThroughA2s("breaker-b", 40).orElseThrow());
        assertTrue(BS.devices().letThroughA2s("breaker-b", 50).isEmpty());
        assertTrue(BS.devices().find("breaker-x").isEmpty());
    }

    /** BS 7671 table 41.1 and 411.3.2.2 (memory): up to 32 A 0.4 s, above 5 s; with an own electrode 0.2 s and 1 s. */
    @Test
    void disconnectionTimes() {
        assertEquals(0.4, BS.disconnectionS(32, false));
        assertEquals(5, BS.disconnectionS(40, false));
        assertEquals(0.2, BS.disconnectionS(32, true));
        assertEquals(1, BS.disconnectionS(40, true));
    }

    @Test
    void earthing() {
        assertEquals(25, BS.earthing().tailsMm2(100).orElseThrow());
        assertTrue(BS.earthing().tailsMm2(200).isEmpty());
        assertEquals(10, BS.earthing().bondingMm2(25).orElseThrow());
        assertEquals(16, BS.earthing().bondingMm2(50).orElseThrow());
        assertEquals(10, BS.earthing().conductorMm2(10).orElseThrow());
        assertEquals(16, BS.earthing().conductorMm2(25).orElseThrow());
        assertTrue(BS.earthing().conductorMm2(70).isEmpty());
    }

    @Test
    void whatIsNotThereIsSaid() {
        IllegalArgumentException missing = assertThrows(IllegalArgumentException.class, () -> BS.number("moon.phase"));
        assertTrue(String.valueOf(missing.getMessage()).contains("moon.phase"));
        assertThrows(IllegalArgumentException.class, () -> BS.number("title"));
        assertThrows(IllegalArgumentException.class, () -> BS.table("moons"));
    }

    @Test
    void sizesAreFoundThroughTheNoiseOfUnits() {
        double noisy = 10.000000000000002;
        assertEquals(10, BS.cables().find("flat-70", noisy).orElseThrow().sizeMm2());
        assertTrue(BS.cables().find("flat-70", 7).isEmpty());
        assertTrue(BS.cables().find("rope", 10).isEmpty());
    }
}
