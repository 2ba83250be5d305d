// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;

/** Outside values are in electrical.csv; here are laws and handworked values. Table cells as in BS 7671 (memory). */
class CableTest {
    /** 10 mm2 clipped direct. */
    private static final CableSegment CLIPPED = new CableSegment(15, 4.4e-3, 64, 1, 1, 1, 1);
    /** 10 mm2 above a ceiling under more than 100 mm of insulation, at 40 degC. */
    private static final CableSegment LOFT = new CableSegment(5, 4.4e-3, 36, 0.87, 1, 1, 1);

    private static final double ELEMENT_OHM = Heat.elementResistance(9500, 240);

    @Test
    void theWorstSegmentGoverns() {
        List<CableSegment> run = List.of(CLIPPED, LOFT, CLIPPED);
        assertEquals(1, Cable.governingSegment(run));
        assertEquals(36 * 0.87, Cable.capacityA(run), 1e-12);
        assertEquals(4.4e-3 * 35 * 40, Cable.voltageDropV(run, 40), 1e-12);
        assertEquals(0, Cable.governingSegment(List.of(CLIPPED, CLIPPED)));
    }

    @Test
    void allFactorsCount() {
        CableSegment segment = new CableSegment(1, 1e-3, 100, 0.87, 0.8, 0.5, 0.725);
        assertEquals(100 * 0.87 * 0.8 * 0.5 * 0.725, segment.capacityA(), 1e-12);
        assertEquals(100, Cable.neededTabulatedA(segment.capacityA(), 0.87, 0.8, 0.5, 0.725), 1e-12);
    }

    /** 10 mm2 under 200 mm of loft insulation carries 36 A and fails a 40 A device; 16 mm2 (46 A) passes. */
    @ParameterizedTest
    @CsvSource({"36, false", "46, true"})
    void theDeviceMustNotExceedTheCable(double tabulatedA, boolean carries) {
        List<CableSegment> run = List.of(CLIPPED, new CableSegment(2, 2.8e-3, tabulatedA, 1, 1, 1, 1));
        Solution power = Cable.highestPowerW(40, 240, run, 11.5);
        assertEquals(carries, power.isPresent());
        assertEquals(carries ? Solution.of(9600) : Solution.none(FailureReason.DEVICE_ABOVE_CAPACITY), power);
    }

    @Test
    void aLongRunIsLimitedByItsDrop() {
        List<CableSegment> run = List.of(new CableSegment(100, 4.4e-3, 64, 1, 1, 1, 1));
        // 11.5 V / (4.4 mV x 100 m) = 26.136 A
        assertEquals(240 * 26.136, Cable.highestPowerW(40, 240, run, 11.5).value(), 1);
        assertEquals(
                240 * 40, Cable.highestPowerW(40, 240, List.of(CLIPPED), 11.5).value(), 1e-9);
    }

    /** BS 7671:2018 433.1.1: the rating of the device is not greater than the capacity, so it may equal it. */
    @Test
    void aDeviceAsLargeAsTheCapacityIsAllowed() {
        assertEquals(Solution.of(64 * 240), Cable.highestPowerW(64, 240, List.of(CLIPPED), 11.5));
    }

    @Test
    void withoutLengthNothingDropsAndTheDeviceSetsThePower() {
        CableSegment none = new CableSegment(0, 4.4e-3, 64, 1, 1, 1, 1);
        assertEquals(Solution.of(40 * 240), Cable.highestPowerW(40, 240, List.of(none), 0));
    }

    /** At full load a conductor is at full temperature, without load at ambient. */
    @Test
    void temperatureFactorAtItsEnds() {
        assertEquals(1, Cable.temperatureFactor(1, 1, 64, 64, 70), 1e-15);
        assertEquals(260.0 / 300, Cable.temperatureFactor(1, 1, 0, 64, 70), 1e-15);
        // IEC 60228 gives copper at 30 and 70 degC as (234.5 + 30) / (234.5 + 70); the rule rounds 234.5 to 230.
        assertEquals(264.5 / 304.5, Cable.temperatureFactor(1, 1, 0, 64, 70), 0.003);
        // Ca = 0.71 is about 50 degC ambient: an unloaded conductor has its temperature, sqrt(20/40) = 0.707
        assertEquals(280.0 / 300, Cable.temperatureFactor(Math.sqrt(0.5), 1, 0, 64, 70), 1e-12);
        // Grouped with Cg = 0.8 and loaded to 0.8 of its table it is taken to be as hot as one alone at full load: (230
        // + 70 - 0) / 300.
        assertEquals(1, Cable.temperatureFactor(1, 0.8, 0.8 * 64, 64, 70), 1e-12);
        assertEquals(1 - 0.64 * 40 / 300, Cable.temperatureFactor(1, 0.8, 0, 64, 70), 1e-12);
        assertTrue(Cable.temperatureFactor(1, 1, 70, 64, 70) > 1);
    }

    /** BS 7671 Appendix 4 (from memory): 70 degC thermoplastic at 30 degC, so half the tabulated current warms by a quarter of 40 K. */
    @Test
    void aSegmentHasTheTemperatureOfThermoplasticInsulation() {
        assertEquals(
                (230.0 + 30 + 10) / (230 + 70),
                Cable.temperatureFactor(CLIPPED, 32, ConductorTemperature.BY_CURRENT),
                1e-12);
    }

    @Test
    void temperatureFactorClaimsNothingWhereItWouldBeTooMuch() {
        ConductorTemperature rule = ConductorTemperature.BY_CURRENT;
        assertEquals(1, Cable.temperatureFactor(CLIPPED, 20, ConductorTemperature.FULL));
        assertTrue(Cable.temperatureFactor(CLIPPED, 20, rule) < 1);
        assertEquals(1, Cable.temperatureFactor(new CableSegment(1, 1e-3, 64, 1, 1, 0.5, 1), 20, rule));
        assertEquals(1, Cable.temperatureFactor(new CableSegment(1, 1e-3, 64, 1, 1, 1, 0.725), 20, rule));
        CableSegment cool = new CableSegment(1, 1e-3, 64, 1.03, 1, 1, 1);
        assertEquals(Cable.temperatureFactor(CLIPPED, 20, rule), Cable.temperatureFactor(cool, 20, rule));
    }

    @Test
    void terminalVoltageAtFullTemperatureIsADivider() {
        List<CableSegment> run = List.of(CLIPPED, LOFT);
        double expected = 230 * ELEMENT_OHM / (ELEMENT_OHM + 4.4e-3 * 20);
        assertEquals(expected, Cable.terminalVoltageV(230, ELEMENT_OHM, run, ConductorTemperature.FULL), 1e-11);
    }

    @Test
    void terminalVoltageByCurrentClosesTheLoop() {
        List<CableSegment> run = List.of(CLIPPED, LOFT);
        double volt = Cable.terminalVoltageV(230, ELEMENT_OHM, run, ConductorTemperature.BY_CURRENT);
        double amp = volt / ELEMENT_OHM;
        double loop = Cable.loopResistanceOhm(run, amp, ConductorTemperature.BY_CURRENT);
        assertEquals(230, volt + amp * loop, 1e-10);
        assertTrue(volt > Cable.terminalVoltageV(230, ELEMENT_OHM, run, ConductorTemperature.FULL));
    }

    @Test
    void terminalVoltageAtTheEnds() {
        ConductorTemperature rule = ConductorTemperature.BY_CURRENT;
        assertEquals(0, Cable.terminalVoltageV(0, ELEMENT_OHM, List.of(CLIPPED), rule));
        assertEquals(230, Cable.terminalVoltageV(230, ELEMENT_OHM, List.of(), rule));
    }

    @Test
    void aUsedUpLimitLeavesNoLength() {
        assertEquals(Solution.none(FailureReason.NO_LENGTH_LEFT), Cable.longestRunByDropM(11.5, 11.5, 4.4e-3, 40));
        assertEquals(Solution.none(FailureReason.NO_LENGTH_LEFT), Cable.longestRunByLoopM(0.5, 0.8, 7.7e-3));
        assertEquals(Solution.none(FailureReason.NO_LENGTH_LEFT), Cable.longestRunByLoopM(0.5, 0.5, 7.7e-3));
        assertEquals(
                10,
                Cable.longestRunByDropM(11.5, 11.5 - 4.4e-3 * 400, 4.4e-3, 40).value(),
                1e-9);
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertRefused("lengthM", () -> new CableSegment(-1, 1e-3, 64, 1, 1, 1, 1));
        assertRefused("dropVPerAm", () -> new CableSegment(1, 0, 64, 1, 1, 1, 1));
        assertRefused("tabulatedA", () -> new CableSegment(1, 1e-3, 0, 1, 1, 1, 1));
        assertRefused("ca", () -> new CableSegment(1, 1e-3, 64, 2.1, 1, 1, 1));
        assertRefused("cg", () -> new CableSegment(1, 1e-3, 64, 1, 1.1, 1, 1));
        assertRefused("ci", () -> new CableSegment(1, 1e-3, 64, 1, 1, 0, 1));
        assertRefused("cf", () -> new CableSegment(1, 1e-3, 64, 1, 1, 1, 1.1));
        assertRefused("segments.size", () -> Cable.capacityA(List.of()));
        assertRefused("currentA", () -> Cable.voltageDropV(List.of(CLIPPED), -1));
        assertRefused("elementOhm", () -> Cable.terminalVoltageV(230, 0, List.of(), ConductorTemperature.FULL));
    }

    private static void assertRefused(String argument, Runnable call) {
        assertEquals(argument, assertThrows(DomainException.class, call::run).argument());
    }
}
