// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.engineering.numeric.DomainException;

/** Rules as in the On-Site Guide, Table A1 (memory); a published total is in electrical.csv. */
class DiversityTest {
    private static final List<DiversityRule> RULES = List.of(
            DiversityRule.byRank("instantaneous heater", List.of(1.0, 1.0, 0.25)),
            new DiversityRule("cooking", 10, 0.3, false, List.of(1.0), 5),
            DiversityRule.onTotal("heating", 10, 0.5),
            DiversityRule.onTotal("lighting", 0, 0.66),
            DiversityRule.byRank("circuit", List.of(1.0, 0.4)),
            DiversityRule.byRank("storage", List.of(1.0)));

    @Test
    void aThirdShowerCountsAQuarter() {
        Demand demand = Diversity.of(
                List.of(
                        load("small", "instantaneous heater", 30),
                        load("large", "instantaneous heater", 44),
                        load("middle", "instantaneous heater", 40)),
                RULES);
        assertEquals(44 + 40 + 7.5, demand.totalA(), 1e-12);
        assertEquals(114, demand.connectedA(), 1e-12);
        assertEquals(
                List.of(List.of("large"), List.of("middle"), List.of("small")),
                demand.steps().stream().map(Demand.Step::ids).toList());
    }

    @Test
    void theLastShareHoldsForAllThatFollow() {
        List<DiversityLoad> five = List.of(
                load("a", "instantaneous heater", 40),
                load("b", "instantaneous heater", 40),
                load("c", "instantaneous heater", 40),
                load("d", "instantaneous heater", 40),
                load("e", "instantaneous heater", 40));
        assertEquals(40 + 40 + 3 * 10, Diversity.of(five, RULES).totalA(), 1e-12);
    }

    @Test
    void socketsOfLoadsTakenTogetherAreAddedToTheirSum() {
        List<DiversityRule> rules = List.of(new DiversityRule("cooking", 10, 0.3, true, List.of(1.0), 5));
        List<DiversityLoad> loads =
                List.of(new DiversityLoad("hob", "cooking", 20, true), new DiversityLoad("oven", "cooking", 10, false));
        // 10 + 0.3 x 20, and one socket of 5 A
        assertEquals(21, Diversity.of(loads, rules).totalA(), 1e-12);
    }

    @Test
    void heatingIsTakenTogether() {
        Demand demand = Diversity.of(List.of(load("a", "heating", 8), load("b", "heating", 8)), RULES);
        assertEquals(10 + 0.5 * 6, demand.totalA(), 1e-12);
        assertEquals(List.of("a", "b"), demand.steps().get(0).ids());
        assertEquals(8, Diversity.of(List.of(load("a", "heating", 8)), RULES).totalA(), 1e-12);
    }

    @Test
    void aCookerBelowTheThresholdCountsInFull() {
        assertEquals(8, Diversity.of(List.of(load("hob", "cooking", 8)), RULES).totalA(), 1e-12);
        DiversityLoad withSocket = new DiversityLoad("hob", "cooking", 8, true);
        assertEquals(13, Diversity.of(List.of(withSocket), RULES).totalA(), 1e-12);
    }

    @Test
    void stepsAddUpAndFollowTheRules() {
        Demand demand = Diversity.of(
                List.of(load("car", "storage", 32), load("ring", "circuit", 32), load("lights", "lighting", 6)), RULES);
        assertEquals(
                List.of("lighting", "circuit", "storage"),
                demand.steps().stream().map(Demand.Step::kind).toList());
        assertEquals(32 + 32 + 3.96, demand.totalA(), 1e-12);
        assertTrue(Diversity.of(List.of(), RULES).steps().isEmpty());
        assertEquals(0, Diversity.of(List.of(), RULES).totalA());
    }

    @Test
    void nothingDropsOutOfTheSum() {
        var missing = assertThrows(
                IllegalArgumentException.class, () -> Diversity.of(List.of(load("pump", "unknown", 3)), RULES));
        assertEquals("load pump: no diversity rule for kind unknown", missing.getMessage());
        List<DiversityRule> twice = List.of(RULES.get(0), RULES.get(0));
        assertThrows(IllegalArgumentException.class, () -> Diversity.of(List.of(), twice));
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThrows(DomainException.class, () -> load("x", "heating", -1));
        assertThrows(DomainException.class, () -> DiversityRule.byRank("x", List.of()));
        assertThrows(DomainException.class, () -> DiversityRule.byRank("x", List.of(1.1)));
        assertThrows(DomainException.class, () -> DiversityRule.onTotal("x", -1, 0.5));
        assertThrows(DomainException.class, () -> new DiversityRule("x", 1, 0.5, false, List.of(1.0), -1));
    }

    private static DiversityLoad load(String id, String kind, double currentA) {
        return new DiversityLoad(id, kind, currentA, false);
    }
}
