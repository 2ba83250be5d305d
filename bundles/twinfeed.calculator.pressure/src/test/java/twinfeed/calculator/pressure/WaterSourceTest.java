// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/** Main, tank, pump and hot water: what a heater's instructions make of each, and the way back to the cold main. */
class WaterSourceTest {
    private static final String SOURCE = "pressure.source";
    private static final String TANK_HEAD = "pressure.tankHead";

    private static Survey house(WaterSource source) {
        Survey survey = Samples.survey();
        survey.getWater().setSource(source);
        survey.getWater().getTest().setAtPeak(true);
        return survey;
    }

    /** A tank 4 m over the gauge, its pipe falling to the unit; the main was tested in the loft, where a pipe would begin. */
    private static Survey tankHouse() {
        Survey survey = house(WaterSource.TANK);
        survey.getWater().setTest(SampleHouse.waterTest("0.4 bar", "0.2 bar", "8 L/min"));
        survey.getWater().getTest().setAtPeak(true);
        survey.getWater().getSegments().clear();
        survey.getWater()
                .getSegments()
                .add(SampleHouse.pipe("down pipe", PipeMaterial.COPPER, "20.2 mm", "5 m", "0 m"));
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("down pipe"));
        return survey;
    }

    private static void measureMain(Survey survey, String running) {
        survey.getWater().setMainTest(SampleHouse.waterTest("3.2 bar", running, "14 L/min"));
        survey.getWater().getMainTest().setAtPeak(true);
        survey.getWater().setMainPipe(SurveyFactory.eINSTANCE.createPipeSegment());
        survey.getWater().getMainPipe().setLength(Length.valueOf("7 m"));
        survey.getWater().getMainPipe().setRise(Length.valueOf("-1 m"));
    }

    private static WorkPlan plan(Survey survey, Heater heater) {
        Candidate candidate = new Candidate(heater, false);
        OptionResult before = Houses.runner().judge(survey, candidate);
        return new RemedySearch(Houses.runner()::judge, WorkCost.BY_COUNT).plan(survey, candidate, before);
    }

    private static List<String> works(WorkPlan plan) {
        return plan.works().stream().map(Remedy::id).toList();
    }

    @Test
    void theMainSuitsEveryHeater() {
        Finding finding = Houses.finding(house(WaterSource.MAINS), Samples.heater(), SOURCE);
        assertEquals(Outcome.PASSES, finding.outcome());
        assertEquals(
                Outcome.NOT_APPLICABLE,
                Houses.finding(house(WaterSource.MAINS), Samples.heater(), TANK_HEAD)
                        .outcome());
    }

    @Test
    void whatTheNeighboursDrawDoesNotWeakenATank() {
        for (WaterSource source : List.of(WaterSource.TANK, WaterSource.PUMPED)) {
            Survey survey = tankHouse();
            survey.getWater().setSource(source);
            survey.getWater().getTest().setAtPeak(false);
            Finding peak = Houses.finding(survey, Samples.heater(), "pressure.peak");
            assertEquals(Outcome.NOT_APPLICABLE, peak.outcome());
            assertEquals(
                    "The water comes from a tank, whose pressure does not depend on what the neighbours draw.",
                    Houses.words(peak));
        }
    }

    @Test
    void aTankWithThePressureOfAPumpIsQueried() {
        Survey survey = house(WaterSource.TANK);
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("2.5 bar"));
        Finding query = Houses.finding(survey, Samples.heater(), TANK_HEAD);
        assertEquals(Outcome.FAILS, query.outcome());
        assertFalse(query.check().deciding(), "a query and no verdict");
        // 2.5 bar over 9.81 kPa for each metre of water: 25 m.
        assertTrue(
                Houses.words(query).contains("the gauge shows 2.5 bar: the tank would have to be 25 m"),
                Houses.words(query));
        // Density 1000 kg/m3 at 4 degC times standard gravity 9.80665 m/s2.
        assertEquals(2.5e5 / 9806.65, ((Number) query.arguments().get("height")).doubleValue(), 0.01);
        assertEquals(
                Outcome.PASSES,
                Houses.finding(tankHouse(), Samples.heater(), TANK_HEAD).outcome());
    }

    /** Instructions that forbid both decide; where they forbid one of the two, it has to be found out which it is. */
    @Test
    void instructionsDecideAboutADoubtfulTank() {
        Survey survey = house(WaterSource.TANK);
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("2.5 bar"));
        Heater heater = Samples.heater();
        assertEquals(Outcome.PASSES, Houses.finding(survey, heater, SOURCE).outcome());
        heater.setPumpedFeedAllowed(false);
        Finding open = Houses.finding(survey, heater, SOURCE);
        assertEquals(Outcome.CANNOT_TELL, open.outcome());
        assertEquals(List.of("survey.water.source"), open.missing());
        heater.setTankFeedAllowed(false);
        assertEquals(Outcome.FAILS, Houses.finding(survey, heater, SOURCE).outcome());
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("0.6 bar"));
        heater.setPumpedFeedAllowed(null);
        assertEquals(Outcome.FAILS, Houses.finding(survey, heater, SOURCE).outcome());
    }

    /** Ten metres up, 1 bar, no header tank within a house hangs; a hundredth more may be a pump's. */
    @Test
    void aTankIsDoubtfulAboveTenMetresOfWater() {
        Survey survey = house(WaterSource.TANK);
        Heater heater = Samples.heater();
        heater.setPumpedFeedAllowed(false);
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.0 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.5 bar"));
        assertEquals(Outcome.PASSES, Houses.finding(survey, heater, SOURCE).outcome());
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.01 bar"));
        assertEquals(Outcome.CANNOT_TELL, Houses.finding(survey, heater, SOURCE).outcome());
    }

    @Test
    void aHotFeedIsMovedToTheColdMain() {
        Survey survey = house(WaterSource.HOT);
        survey.getWater().setTest(SampleHouse.waterTest("4.0 bar", "3.4 bar", "12 L/min"));
        survey.getWater().getDrawOffs().clear();
        survey.getWater().setHottestFeed(Temperature.valueOf("60 °C"));
        Finding finding = Houses.finding(survey, Samples.heater(), SOURCE);
        assertEquals(Outcome.FAILS, finding.outcome());
        assertTrue(finding.check().deciding());
        WorkPlan plan = plan(survey, Samples.heater());
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
        assertEquals(List.of("repipe-main"), works(plan));
        assertEquals(
                List.of("main-branch", "pipe-22", "pipe-fittings", "making-good"),
                plan.works().get(0).items().stream().map(Remedy.Item::code).toList());
    }

    @Test
    void preheatedWaterSuitsOnlyWhereItIsAllowedAndNotTooHot() {
        Survey survey = house(WaterSource.HOT);
        Heater heater = Samples.heater();
        heater.setPreheatedAllowed(true);
        assertEquals(
                List.of("heater.maximumIntake"),
                Houses.finding(survey, heater, SOURCE).missing());
        heater.setMaximumIntake(Temperature.valueOf("55 °C"));
        assertEquals(
                List.of("survey.water.hottestFeed"),
                Houses.finding(survey, heater, SOURCE).missing());
        survey.getWater().setHottestFeed(Temperature.valueOf("55 °C"));
        assertEquals(Outcome.PASSES, Houses.finding(survey, heater, SOURCE).outcome());
        survey.getWater().setHottestFeed(Temperature.valueOf("60 °C"));
        Finding hot = Houses.finding(survey, heater, SOURCE);
        assertEquals(Outcome.FAILS, hot.outcome());
        assertTrue(Houses.words(hot)
                .contains("Water of up to 60 °C feeds the heater, but its instructions allow only 55 °C"));
    }

    /** The tank is too low for the heater; the main that was measured is not. */
    @Test
    void aTankFedUnitIsMovedToTheMainBeforeAPumpIsFitted() {
        Survey survey = tankHouse();
        survey.getWater().getDrawOffs().clear();
        measureMain(survey, "2.4 bar");
        assertEquals(
                Outcome.FAILS,
                Houses.finding(survey, Samples.heater(), "pressure.running").outcome());
        List<String> offered = Houses.finding(survey, Samples.heater(), "pressure.running").remedies().stream()
                .map(Remedy::id)
                .toList();
        assertTrue(offered.indexOf("repipe-main") < offered.indexOf("break-tank-pump"), offered.toString());
        WorkPlan plan = plan(survey, Samples.heater());
        assertEquals(Verdict.SUITS_WITH_WORK, plan.verdict());
        assertEquals(List.of("repipe-main"), works(plan));
    }

    @Test
    void aPumpForATankWaitsForTheMainToBeTested() {
        Survey survey = tankHouse();
        survey.getWater().getDrawOffs().clear();
        WorkPlan plan = plan(survey, Samples.heater());
        assertEquals(List.of("break-tank-pump"), works(plan));
        assertEquals("breakTankPumpAfterMain", plan.works().get(0).kind());
        assertEquals("task-test-supply", plan.works().get(0).items().get(0).code());
    }

    @Test
    void aHeaterThatForbidsAPumpGetsNone() {
        Heater heater = Samples.heater();
        heater.setPumpedFeedAllowed(false);
        Survey survey = tankHouse();
        survey.getWater().getDrawOffs().clear();
        WorkPlan plan = plan(survey, heater);
        assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict());
        assertEquals(List.of(), works(plan));
    }

    @Test
    void beforeAPumpTheStopValveIsOpenedAndTheCompanyAsked() {
        Survey survey = house(WaterSource.MAINS);
        survey.getWater().setTest(SampleHouse.waterTest("1.0 bar", "0.4 bar", "8 L/min"));
        survey.getWater().getTest().setAtPeak(true);
        assertEquals("breakTankPumpAfterValve", pump(survey).kind());
        assertEquals("task-test-supply", pump(survey).items().get(0).code());
        survey.getWater().setStopValveOpen(true);
        assertEquals("breakTankPumpAfterValve", pump(survey).kind());
        survey.getWater().setCompanyPressureConfirmed(true);
        assertEquals("breakTankPump", pump(survey).kind());
        assertEquals(1, pump(survey).items().size());
    }

    /** A tank whose gauge shows more than 1 bar would stand 10 m up (engineering judgement): the source is asked again. */
    @Test
    void aTankStandsNoHigherThanTenMetres() {
        Finding head = Houses.finding(tankHouse(), Samples.heater(), TANK_HEAD);
        assertEquals(1.0, Fixtures.limit(head), 1e-9);
    }

    private static Remedy pump(Survey survey) {
        return Houses.finding(survey, Samples.heater(), "pressure.running").remedies().stream()
                .filter(work -> work.id().equals("break-tank-pump"))
                .findFirst()
                .orElseThrow();
    }

    /** A throttled stop valve hides the supply: no pump is proposed, the test is to be taken again. */
    @Test
    void aTestBehindAThrottledStopValveTellsNothing() {
        Survey survey = house(WaterSource.MAINS);
        survey.getWater().setTest(SampleHouse.waterTest("1.0 bar", "0.4 bar", "8 L/min"));
        survey.getWater().setStopValveOpen(false);
        Finding running = Houses.finding(survey, Samples.heater(), "pressure.running");
        assertEquals(Outcome.CANNOT_TELL, running.outcome());
        assertEquals(List.of("survey.water.stopValveOpen"), running.missing());
        assertEquals(
                "Cannot tell yet. Missing: a test of the supply with the stop valve fully open. Open the valve fully and take the"
                        + " two-point test again.",
                Houses.words(Houses.finding(survey, Samples.heater(), "pressure.switch")));
        WorkPlan plan = plan(survey, Samples.heater());
        assertEquals(Verdict.CANNOT_TELL, plan.verdict());
        assertEquals(List.of(), works(plan));
    }

    @Test
    void thePipeFromTheMainTakesThePlaceOfTheOldFeed() {
        Survey survey = tankHouse();
        measureMain(survey, "2.4 bar");
        Survey edited = EcoreUtil.copy(survey);
        Houses.finding(survey, Samples.heater(), "pressure.running").remedies().stream()
                .filter(work -> work.id().equals("repipe-main"))
                .forEach(work -> {
                    work.edit().accept(edited);
                    work.edit().accept(edited);
                });
        assertEquals(WaterSource.MAINS, edited.getWater().getSource());
        assertEquals(1, edited.getWater().getSegments().size());
        assertEquals(7, edited.getWater().getSegments().get(0).getLength().si(), 1e-12);
        assertEquals(-1, edited.getWater().getSegments().get(0).getRise().si(), 1e-12);
        assertEquals(3.2e5, edited.getWater().getTest().getStaticPressure().si(), 1e-6);
        assertNull(edited.getWater().getMainTest());
        // What the taps drew through is theirs now.
        assertEquals(2, edited.getWater().getDrawOffs().get(0).getSegments().size());
        assertEquals(WaterSource.TANK, survey.getWater().getSource());
        assertEquals(
                Map.of("length", 7.0),
                Houses.finding(survey, Samples.heater(), "pressure.running").remedies().stream()
                        .filter(work -> work.id().equals("repipe-main"))
                        .findFirst()
                        .orElseThrow()
                        .arguments());
    }
}
