// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/**
 * Houses fed from the main, a tank, a pump and a hot-water store, each through the whole assessment with the demonstration's prices: the
 * verdict, what decides and the work, as the trade would judge them (common practice).
 */
class WaterSourceHousesTest {
    private House house;
    private WaterFeed water;
    private Heater heater;

    @BeforeEach
    void openAHouseInOrder() {
        house = new House("h85");
        water = house.survey().getWater();
        heater = house.heater();
    }

    private static WaterTest test(String staticPressure, String running, String flow) {
        WaterTest test = SurveyFactory.eINSTANCE.createWaterTest();
        test.setStaticPressure(Pressure.valueOf(staticPressure));
        test.setRunningPressure(Pressure.valueOf(running));
        test.setFlow(Flow.valueOf(flow));
        test.setAtPeak(true);
        return test;
    }

    /** A cistern in the loft, a 22 mm pipe of its own to the shower. */
    private void tank(String staticPressure, String running) {
        water.setSource(WaterSource.TANK);
        water.setTest(test(staticPressure, running, "8 L/min"));
        water.getDrawOffs().clear();
        water.getSegments().clear();
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        pipe.setName("down pipe");
        pipe.setMaterial(PipeMaterial.COPPER);
        pipe.setSize("22 mm");
        pipe.setBore(Length.valueOf("20.2 mm"));
        pipe.setLength(Length.valueOf("5 m"));
        water.getSegments().add(pipe);
    }

    private void main(String staticPressure, String running) {
        water.setMainTest(test(staticPressure, running, "14 L/min"));
        water.setMainPipe(SurveyFactory.eINSTANCE.createPipeSegment());
        water.getMainPipe().setLength(Length.valueOf("6 m"));
        water.getMainPipe().setRise(Length.valueOf("2 m"));
    }

    @Test
    void theMainSuits() {
        House.assertPlan(house.plan(), Verdict.SUITS);
    }

    @Test
    void aHotFeedIsMovedToTheColdMain() {
        water.setSource(WaterSource.HOT);
        water.setHottestFeed(Temperature.valueOf("60 °C"));
        WorkPlan plan = house.plan();
        assertEquals(Outcome.FAILS, House.outcome(plan, "pressure.source"));
        House.assertPlan(plan, Verdict.SUITS_WITH_WORK, "repipe-main");
    }

    @Test
    void preheatedWaterSuitsTheHeaterThatAllowsIt() {
        water.setSource(WaterSource.HOT);
        water.setHottestFeed(Temperature.valueOf("30 °C"));
        heater.setPreheatedAllowed(true);
        heater.setMaximumIntake(Temperature.valueOf("35 °C"));
        assertEquals(Outcome.PASSES, House.outcome(house.plan(), "pressure.source"));
        water.setHottestFeed(Temperature.valueOf("45 °C"));
        WorkPlan tooHot = house.plan();
        assertEquals(Outcome.FAILS, House.outcome(tooHot, "pressure.source"));
        House.assertPlan(tooHot, Verdict.SUITS_WITH_WORK, "repipe-main");
    }

    @Test
    void aLowTankIsLeftForTheMainWhereThatWasTested() {
        tank("0.4 bar", "0.2 bar");
        main("3.2 bar", "2.4 bar");
        WorkPlan plan = house.plan();
        assertEquals(Outcome.FAILS, House.outcome(plan, "pressure.running"));
        House.assertPlan(plan, Verdict.SUITS_WITH_WORK, "repipe-main");
    }

    @Test
    void aLowTankAndAnUntestedMainGetAPumpAfterTheMainIsTested() {
        tank("0.4 bar", "0.2 bar");
        WorkPlan plan = house.plan();
        House.assertPlan(plan, Verdict.SUITS_WITH_WORK, "break-tank-pump");
        assertEquals("breakTankPumpAfterMain", plan.works().get(0).kind());
    }

    @Test
    void aTankWithTwoAndAHalfBarIsQueriedAndInstructionsDecide() {
        tank("2.5 bar", "1.8 bar");
        WorkPlan plan = house.plan();
        assertEquals(Outcome.FAILS, House.outcome(plan, "pressure.tankHead"));
        House.assertPlan(plan, Verdict.SUITS);
        heater.setPumpedFeedAllowed(false);
        WorkPlan open = house.plan();
        House.assertPlan(open, Verdict.CANNOT_TELL);
        heater.setTankFeedAllowed(false);
        main("3.2 bar", "2.4 bar");
        House.assertPlan(house.plan(), Verdict.SUITS_WITH_WORK, "repipe-main");
    }

    @Test
    void aWeakMainBehindAThrottledStopValveIsTestedAgain() {
        weaken(feed -> feed.setStopValveOpen(false));
        House.assertPlan(house.plan(), Verdict.CANNOT_TELL);
    }

    @Test
    void aWeakMainGetsAPumpOnceValveAndCompanyAreRuledOut() {
        weaken(feed -> {});
        WorkPlan first = house.plan();
        House.assertPlan(first, Verdict.SUITS_WITH_WORK, "break-tank-pump");
        assertEquals("breakTankPumpAfterValve", first.works().get(0).kind());
        weaken(feed -> {
            feed.setStopValveOpen(true);
            feed.setCompanyPressureConfirmed(true);
        });
        WorkPlan then = house.plan();
        House.assertPlan(then, Verdict.SUITS_WITH_WORK, "break-tank-pump");
        assertEquals("breakTankPump", then.works().get(0).kind());
        assertTrue(first.cost().price().compareTo(then.cost().price()) > 0, "the test before the pump is priced");
    }

    private void weaken(Consumer<WaterFeed> more) {
        String gauge = water.getTest().getGaugeAfter();
        water.setTest(test("0.9 bar", "0.4 bar", "8 L/min"));
        water.getTest().setGaugeAfter(gauge);
        water.getDrawOffs().clear();
        more.accept(water);
    }
}
