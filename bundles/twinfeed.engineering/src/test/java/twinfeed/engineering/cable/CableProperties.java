// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import twinfeed.engineering.demand.Demand;
import twinfeed.engineering.demand.Diversity;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.engineering.demand.DiversityRule;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;

/** Laws of the cable run that hold for any house. */
class CableProperties {
    @Provide
    Arbitrary<CableSegment> segments() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.1, 60).ofScale(9),
                        Arbitraries.doubles().between(1e-3, 44e-3).ofScale(9),
                        Arbitraries.doubles().between(8, 100).ofScale(9),
                        Arbitraries.doubles().between(0.5, 1.1).ofScale(9),
                        Arbitraries.doubles().between(0.5, 1).ofScale(9),
                        Arbitraries.of(1.0, 0.88, 0.5),
                        Arbitraries.of(1.0, 0.725))
                .as(CableSegment::new);
    }

    @Provide
    Arbitrary<List<CableSegment>> runs() {
        return segments().list().ofMinSize(1).ofMaxSize(4);
    }

    @Property(seed = "1")
    void terminalVoltageIsBelowTheOriginAndPowerIsConserved(
            @ForAll("runs") List<CableSegment> run,
            @ForAll @DoubleRange(min = 1, max = 260) @Scale(12) double originV,
            @ForAll @DoubleRange(min = 4, max = 60) @Scale(12) double elementOhm,
            @ForAll ConductorTemperature rule) {
        double volt = Cable.terminalVoltageV(originV, elementOhm, run, rule);
        double amp = volt / elementOhm;
        assertTrue(volt > 0 && volt < originV);
        double delivered = Heat.powerOfResistance(elementOhm, volt);
        double lost = amp * amp * Cable.loopResistanceOhm(run, amp, rule);
        assertEquals(originV * amp, delivered + lost, 1e-9 * originV * amp);
    }

    @Property(seed = "2")
    void aLongerCableDropsMore(
            @ForAll("runs") List<CableSegment> run,
            @ForAll("segments") CableSegment more,
            @ForAll @DoubleRange(min = 4, max = 60) @Scale(12) double elementOhm,
            @ForAll ConductorTemperature rule) {
        List<CableSegment> longer = new ArrayList<>(run);
        longer.add(more);
        assertTrue(Cable.voltageDropV(longer, 40) > Cable.voltageDropV(run, 40));
        assertTrue(Cable.terminalVoltageV(230, elementOhm, longer, rule)
                < Cable.terminalVoltageV(230, elementOhm, run, rule));
        assertTrue(Cable.capacityA(longer) <= Cable.capacityA(run));
    }

    @Property(seed = "3")
    void longestRunsUseUpTheirLimits(
            @ForAll @DoubleRange(min = 5, max = 12) @Scale(12) double limitV,
            @ForAll @DoubleRange(min = 0, max = 4) @Scale(12) double usedV,
            @ForAll @DoubleRange(min = 1e-3, max = 44e-3) @Scale(12) double dropVPerAm,
            @ForAll @DoubleRange(min = 1, max = 60) @Scale(12) double currentA) {
        double lengthM =
                Cable.longestRunByDropM(limitV, usedV, dropVPerAm, currentA).value();
        CableSegment segment = new CableSegment(lengthM, dropVPerAm, 50, 1, 1, 1, 1);
        assertEquals(limitV, usedV + segment.dropV(currentA), 1e-9);
        double byLoop = Cable.longestRunByLoopM(1.37, 0.35, 10e-3).value();
        assertEquals(1.37, Protection.loopImpedanceOhm(0.35, Protection.r1r2Ohm(byLoop, 10e-3, 1)), 1e-12);
    }

    @Property(seed = "4")
    void highestPowerKeepsAllThreeRules(
            @ForAll("runs") List<CableSegment> run, @ForAll @DoubleRange(min = 6, max = 63) @Scale(12) double deviceA) {
        Solution power = Cable.highestPowerW(deviceA, 240, run, 11.5);
        if (power.isPresent()) {
            double designA = power.value() / 240;
            assertTrue(designA <= deviceA * (1 + 1e-12));
            assertTrue(deviceA <= Cable.capacityA(run));
            assertTrue(Cable.voltageDropV(run, designA) <= 11.5 * (1 + 1e-12));
        } else {
            assertTrue(deviceA > Cable.capacityA(run));
        }
    }

    @Property(seed = "5")
    void demandIsNeverMoreThanWhatIsConnectedPlusSockets(
            @ForAll @DoubleRange(min = 0, max = 60) @Scale(12) double first,
            @ForAll @DoubleRange(min = 0, max = 60) @Scale(12) double second,
            @ForAll @DoubleRange(min = 0, max = 60) @Scale(12) double third) {
        List<DiversityRule> rules = List.of(DiversityRule.byRank("heater", List.of(1.0, 1.0, 0.25)));
        List<DiversityLoad> loads = List.of(
                new DiversityLoad("1", "heater", first, false),
                new DiversityLoad("2", "heater", second, false),
                new DiversityLoad("3", "heater", third, false));
        Demand demand = Diversity.of(loads, rules);
        double smallest = Math.min(first, Math.min(second, third));
        assertEquals(first + second + third - 0.75 * smallest, demand.totalA(), 1e-9);
    }
}
