// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.Fixtures.after;
import static twinfeed.calculator.Fixtures.works;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.Survey;
import twinfeed.units.Current;
import twinfeed.units.Power;

/** The demand of a house; expected sums by hand from the On-Site Guide's table A1 (memory). */
class DemandChecksTest {
    private static final double SHOWER_A = 9500 / 240.0;

    /** Cooker 10 + 0.3 x 22 + 5, rings 32 + 0.4 x 32, lighting 0.66 x 6, both showers whole. */
    static final double DEMAND_A = 21.6 + 44.8 + 3.96 + 35 + SHOWER_A;

    private static final Runner RUNNER =
            new Runner(List.of(new DemandCalculator(), new Given()), (mean, spread, day, southern) -> mean);

    /** Gives the design current, as the circuit's calculator does. */
    private static final class Given implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Given.class)
                    .provides(SharedQuantity.DESIGN_CURRENT)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {
                if (candidate.heater().getPower() == null) {
                    shared.markMissing(SharedQuantity.DESIGN_CURRENT, List.of("heater.power"));
                } else {
                    shared.put(SharedQuantity.DESIGN_CURRENT, SHOWER_A);
                }
            };
        }
    }

    static Finding finding(Survey survey, String key) {
        return finding(survey, key, false);
    }

    static Finding finding(Survey survey, String key, boolean present) {
        return RUNNER
                .assess(survey, List.of(new Candidate(Houses.heater(), present)))
                .options()
                .get(0)
                .findings()
                .stream()
                .filter(each -> each.check().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding " + key));
    }

    @Test
    void theNewUnitStandsInPlaceOfThePresentOne() {
        Finding fuse = finding(Houses.house("100 A", "100 A"), "demand.serviceFuse");
        assertEquals(DEMAND_A, Fixtures.value(fuse), 1e-9);
        assertEquals(Outcome.FAILS, fuse.outcome());
    }

    /** Behind a priority unit only the larger of the two showers counts: 35 A less. */
    @Test
    void aPriorityUnitBringsItDownToTheLargerShower() {
        Survey survey = Houses.house("120 A", "160 A");
        Finding fuse = finding(survey, "demand.serviceFuse");
        assertEquals(List.of("priority-unit"), works(fuse), "no larger fuse than 100 A in a house");
        Finding mended = finding(after(survey, fuse, "priority-unit"), "demand.serviceFuse");
        assertEquals(DEMAND_A - 35, Fixtures.value(mended), 1e-9);
        assertEquals(Outcome.PASSES, mended.outcome());
        Finding second = finding(survey, "demand.secondShower");
        assertEquals(DEMAND_A - 35, ((Number) second.arguments().get("single")).doubleValue(), 1e-9);
    }

    /** The other shower is the stronger one: behind a priority unit it is that one which counts. */
    @Test
    void theStrongerShowerCountsBehindAPriorityUnit() {
        Survey survey = Houses.house("120 A", "160 A");
        survey.getElectricity().getLoads().get(3).setCurrent(Current.valueOf("45 A"));
        Finding fuse = finding(survey, "demand.serviceFuse");
        Finding mended = finding(after(survey, fuse, "priority-unit"), "demand.serviceFuse");
        assertEquals(21.6 + 44.8 + 3.96 + 45, Fixtures.value(mended), 1e-9);
    }

    @Test
    void aLargerFuseIsAskedOfTheOperator() {
        Survey survey = Houses.house("60 A", "100 A");
        survey.getElectricity().getLoads().remove(1);
        survey.getElectricity().getLoads().remove(1);
        Finding fuse = finding(survey, "demand.serviceFuse");
        assertEquals(DEMAND_A - 44.8 - 3.96, Fixtures.value(fuse), 1e-9);
        assertEquals(List.of("priority-unit", "operator-fuse-100"), works(fuse));
        Remedy operator = fuse.remedies().get(1);
        assertTrue(operator.enquiry());
        assertTrue(operator.leadDays() > 0);
        Survey asked = after(survey, fuse, "operator-fuse-100");
        assertEquals(Outcome.PASSES, finding(asked, "demand.serviceFuse").outcome());
        assertEquals(Outcome.PASSES, finding(asked, "demand.operator").outcome());
    }

    @Test
    void absentLoadsAreNotNoLoads() {
        Survey survey = Houses.house("100 A", "100 A");
        survey.getElectricity().getLoads().clear();
        Finding fuse = finding(survey, "demand.serviceFuse");
        assertEquals(Outcome.CANNOT_TELL, fuse.outcome());
        assertEquals(List.of("survey.electricity.loads"), fuse.missing());
    }

    @Test
    void aLoadWithoutCurrentIsNotLeftOut() {
        Survey survey = Houses.house("100 A", "100 A");
        survey.getElectricity().getLoads().get(0).setCurrent(null);
        Finding fuse = finding(survey, "demand.serviceFuse");
        assertEquals(Outcome.CANNOT_TELL, fuse.outcome());
        assertEquals(List.of("survey.electricity.loads[cooker].current"), fuse.missing());
        String words = new FindingText(RUNNER, Locale.ENGLISH).missing(fuse).get(0);
        assertEquals("current or power of a load (cooker)", words);
    }

    /** 6.9 kW at the nominal 230 V are 30 A: 10 + 0.3 x 20 + 5. */
    @Test
    void powersCountAtTheNominalVoltage() {
        Survey survey = Houses.house("100 A", "100 A");
        Load cooker = survey.getElectricity().getLoads().get(0);
        cooker.setCurrent(null);
        cooker.setPower(Power.valueOf("6.9 kW"));
        assertEquals(DEMAND_A - 21.6 + 21, Fixtures.value(finding(survey, "demand.serviceFuse")), 1e-9);
    }

    /**
     * What a logger at the meter shows counts in place of the allowances: 46 A without the shower and the shower whole (existing load by
     * measurement plus the load added, the principle of NEC 220.87; memory).
     */
    @Test
    void aLoggedCurrentTakesThePlaceOfTheLoads() {
        Survey survey = Houses.house("100 A", "100 A");
        Finding listed = finding(survey, "demand.serviceFuse");
        assertEquals(Outcome.FAILS, listed.outcome());
        assertTrue(new FindingText(RUNNER, Locale.ENGLISH).sentence(listed).contains("a log of a week or more"));
        survey.getElectricity().getLoads().clear();
        survey.getElectricity().getLoads().add(SampleHouse.load("logged, without the shower", LoadKind.OTHER, "46 A"));
        Finding logged = finding(survey, "demand.serviceFuse");
        assertEquals(46 + SHOWER_A, Fixtures.value(logged), 1e-9);
        assertEquals(Outcome.PASSES, logged.outcome());
        assertEquals(Outcome.PASSES, finding(survey, "demand.mainSwitch").outcome());
    }

    @Test
    void mainSwitch() {
        Survey survey = Houses.house("100 A", "80 A");
        survey.getElectricity().getLoads().remove(3);
        Finding tooSmall = finding(survey, "demand.mainSwitch");
        assertEquals(DEMAND_A - 35, Fixtures.value(tooSmall), 1e-9);
        assertEquals(Outcome.FAILS, tooSmall.outcome());
        assertEquals(List.of(), works(tooSmall), "a new switch of 100 A would not carry it either");
        survey.getElectricity().getLoads().remove(1);
        survey.getElectricity().setMainSwitch(Current.valueOf("63 A"));
        tooSmall = finding(survey, "demand.mainSwitch");
        Survey renewed = after(survey, tooSmall, "consumer-unit");
        assertEquals(Outcome.PASSES, finding(renewed, "demand.mainSwitch").outcome());
    }

    /** What the fuse lets through the switch has to carry; its maker may say otherwise, so it is advice. */
    @Test
    void aSwitchBelowTheFuseIsAdvice() {
        Finding below = finding(Houses.house("100 A", "80 A"), "demand.mainSwitchProtection");
        assertEquals(Outcome.FAILS, below.outcome());
        assertFalse(below.rulesOut());
        assertEquals(List.of("consumer-unit"), works(below));
    }

    @Test
    void theFuseIsTheOperators() {
        Survey survey = Houses.house("100 A", "100 A");
        assertEquals(Outcome.PASSES, finding(survey, "demand.operator").outcome());
        survey.getElectricity().setServiceFuseConfirmed(false);
        Finding asked = finding(survey, "demand.operator");
        assertEquals(Outcome.FAILS, asked.outcome());
        assertFalse(asked.rulesOut());
        assertTrue(new FindingText(RUNNER, Locale.ENGLISH).sentence(asked).contains("Ask the network operator"));
    }

    @Test
    void withoutAnotherShowerTheQuestionDoesNotArise() {
        Survey survey = Houses.house("100 A", "100 A");
        survey.getElectricity().getLoads().remove(3);
        assertEquals(
                Outcome.NOT_APPLICABLE, finding(survey, "demand.secondShower").outcome());
    }

    /** Common practice: fuses of houses are of 60, 80 and 100 A, the main switch of a new consumer unit of 100 A. */
    @ParameterizedTest
    @CsvSource({
        "45, 60, 60",
        "45, 60.1, 80",
        "60, 80, 80",
        "60, 80.1, 100",
        "80, 100, 100",
        "80, 100.1, 0",
        "100, 90, 0"
    })
    void smallestLargerFuseThatCarriesTheDemandIsAskedFor(double presentA, double demandA, double fuseA) {
        assertEquals(
                fuseA == 0 ? List.of() : List.of("operator-fuse-" + (int) fuseA),
                DemandRemedies.largerFuse(presentA, demandA).stream()
                        .map(Remedy::id)
                        .toList());
    }

    @Test
    void newConsumerUnitHasALargerMainSwitch() {
        assertEquals(List.of(), DemandRemedies.largerSwitch(100, 90));
        assertEquals(List.of(), DemandRemedies.largerSwitch(63, 100.1));
        Survey survey = Houses.house("100 A", "63 A");
        Remedy larger = DemandRemedies.largerSwitch(63, 100).get(0);
        assertEquals(Map.of("rating", 100.0), larger.arguments());
        larger.edit().accept(survey);
        assertEquals(100, survey.getElectricity().getMainSwitch().si());
    }
}
