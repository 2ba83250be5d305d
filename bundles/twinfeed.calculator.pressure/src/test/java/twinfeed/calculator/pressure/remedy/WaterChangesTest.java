// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Ratio;

/** What each work changes in the survey, also where the survey says little. */
class WaterChangesTest {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private final Survey house = MAKE.createSurvey();
    private final WaterFeed water = MAKE.createWaterFeed();
    private final WaterTest test = MAKE.createWaterTest();

    @BeforeEach
    void house() {
        test.setStaticPressure(Pressure.valueOf("3 bar"));
        test.setRunningPressure(Pressure.valueOf("2 bar"));
        test.setFlow(Flow.valueOf("12 L/min"));
        water.setSource(WaterSource.MAINS);
        water.setTest(test);
        house.setWater(water);
    }

    private PipeSegment pipe(String name, PipeMaterial material, String length) {
        PipeSegment pipe = SampleHouse.pipe(name, material, length);
        water.getSegments().add(pipe);
        return pipe;
    }

    private List<String> fittings(int pipe) {
        return water.getSegments().get(pipe).getFittings().stream()
                .map(fitting -> fitting.getKind())
                .toList();
    }

    @Test
    void fittingsGoIntoTheLastPipeWhereThereIsOne() {
        WaterChanges.addScaleInhibitor(house);
        assertFalse(WaterRemedies.hasScaleInhibitor(water));
        assertFalse(WaterRemedies.hasScaleInhibitor(null));
        pipe("riser", PipeMaterial.COPPER, "4 m");
        WaterChanges.addScaleInhibitor(house);
        WaterChanges.addCheckValve(house);
        assertEquals(List.of(WaterChanges.SCALE_INHIBITOR, WaterChanges.DOUBLE_CHECK_VALVE), fittings(0));
        assertTrue(WaterRemedies.hasScaleInhibitor(water));
        assertEquals(WaterChanges.DOUBLE_CHECK_VALVE, water.getBackflowProtection());
    }

    @Test
    void aHeldHoseNeedsNoOtherProtection() {
        WaterChanges.retainHose(house);
        assertEquals("retaining-ring", water.getBackflowProtection());
        assertEquals(false, water.getHandsetReachesWc());
        water.setBackflowProtection(WaterChanges.DOUBLE_CHECK_VALVE);
        WaterChanges.retainHose(house);
        assertEquals(WaterChanges.DOUBLE_CHECK_VALVE, water.getBackflowProtection());
    }

    @Test
    void aReducingValveLowersOnlyWhatIsHigher() {
        WaterChanges.reduce(house, 3.5e5);
        assertEquals(3e5, test.getStaticPressure().si(), 1e-6);
        test.setRunningPressure(Pressure.valueOf("2.8 bar"));
        WaterChanges.reduce(house, 3e5);
        assertEquals(
                2.8e5, test.getRunningPressure().si(), 1e-6, "a valve set to the pressure that is there does nothing");
        WaterChanges.reduce(house, 2e5);
        assertEquals(2e5, test.getStaticPressure().si(), 1e-6);
        assertEquals(1.6e5, test.getRunningPressure().si(), 1e-6);
        test.setStaticPressure(Pressure.valueOf("4 bar"));
        test.setRunningPressure(Pressure.valueOf("1 bar"));
        WaterChanges.reduce(house, 3e5);
        assertEquals(1e5, test.getRunningPressure().si(), 1e-6);
    }

    @Test
    void fittingsAreCountedAndReplacedAfterTheGauge() {
        pipe("service", PipeMaterial.PE, "5 m").getFittings().add(WaterChanges.fitting(WaterChanges.REDUCED_VALVE, 1));
        PipeSegment riser = pipe("riser", PipeMaterial.COPPER, "4 m");
        riser.getFittings().add(WaterChanges.fitting(WaterChanges.REDUCED_VALVE, 2));
        riser.getFittings().add(WaterChanges.fitting(WaterChanges.REDUCED_VALVE, 1));
        riser.getFittings().get(1).setCount(null);
        riser.getFittings().add(WaterChanges.fitting("bend", 4));
        assertEquals(4, WaterChanges.count(water, WaterChanges.REDUCED_VALVE));
        test.setGaugeAfter("service");
        assertEquals(3, WaterChanges.count(water, WaterChanges.REDUCED_VALVE));
        WaterChanges.replaceFittings(house, WaterChanges.REDUCED_VALVE, WaterChanges.FULL_BORE_VALVE);
        assertEquals(List.of(WaterChanges.REDUCED_VALVE), fittings(0));
        assertEquals(List.of(WaterChanges.FULL_BORE_VALVE, WaterChanges.FULL_BORE_VALVE, "bend"), fittings(1));
        test.setGaugeAfter("no such pipe");
        assertEquals(0, WaterChanges.gauge(water));
    }

    @Test
    void aBranchIsNarrowByItsBoreOrItsSizeAndAHoseNever() {
        pipe("by bore", PipeMaterial.COPPER, "1 m").setBore(Length.valueOf("20.2 mm"));
        pipe("by size", PipeMaterial.COPPER, "2 m").setSize("15 mm");
        pipe("unknown", PipeMaterial.PLASTIC, "3 m");
        pipe("hose", PipeMaterial.HOSE, "1 m");
        pipe("odd size", PipeMaterial.COPPER, "4 m").setSize("no such size");
        // EN 1057: 28 mm tube has a bore of 26.2 mm.
        pipe("wide by size", PipeMaterial.COPPER, "5 m").setSize("28 mm");
        assertEquals(
                List.of("by size", "unknown", "odd size"),
                WaterChanges.narrowBranch(water).stream()
                        .map(PipeSegment::getName)
                        .toList());
        assertEquals(9, WaterChanges.lengthM(WaterChanges.narrowBranch(water)), 1e-9);
        WaterChanges.widenBranch(house);
        assertEquals(List.of(), WaterChanges.narrowBranch(water));
    }

    /** What was typed of the old wall or of the old valve does not hold for the new one. */
    @Test
    void newPipesAndValvesHaveNoOldReadings() {
        PipeSegment rusty = pipe("rusty", PipeMaterial.GALVANISED, "2 m");
        rusty.setBore(Length.valueOf("14.9 mm"));
        rusty.setRoughness(Length.valueOf("0.5 mm"));
        rusty.getFittings().add(WaterChanges.fitting(WaterChanges.REDUCED_VALVE, 1));
        rusty.getFittings().get(0).setK(Ratio.valueOf("40"));
        WaterChanges.replaceFittings(house, WaterChanges.REDUCED_VALVE, WaterChanges.FULL_BORE_VALVE);
        assertNull(rusty.getFittings().get(0).getK());
        WaterChanges.widenBranch(house);
        assertNull(rusty.getRoughness());
    }

    /** Where only the gauge's own pipe carries a tap, the unit has its pipe to itself already. */
    @Test
    void whoHasAPipeOfTheirOwnIsOfferedNone() {
        pipe("service", PipeMaterial.PE, "5 m");
        pipe("branch", PipeMaterial.COPPER, "3 m").setSize("28 mm");
        test.setGaugeAfter("service");
        DrawOff kitchen = MAKE.createDrawOff();
        kitchen.setTeeAfter("service");
        water.getDrawOffs().add(kitchen);
        assertEquals(List.of(), WaterRemedies.widerPipes(water));
        kitchen.setTeeAfter("branch");
        assertEquals(
                List.of("own-branch"),
                WaterRemedies.widerPipes(water).stream().map(Remedy::id).toList());
        water.setTest(null);
        assertEquals(List.of(), WaterRemedies.widerPipes(water));
        assertEquals(List.of(), WaterRemedies.widerPipes(null));
    }

    @Test
    void tapsKeepTheOldPipeWhenTheUnitGetsItsOwn() {
        pipe("service", PipeMaterial.PE, "5 m");
        PipeSegment shared = pipe("shared", PipeMaterial.COPPER, "4 m");
        shared.setRise(Length.valueOf("2 m"));
        pipe("branch", PipeMaterial.COPPER, "3 m");
        test.setGaugeAfter("service");
        DrawOff basin = MAKE.createDrawOff();
        basin.setTeeAfter("shared");
        basin.setHeight(Length.valueOf("1 m"));
        DrawOff early = MAKE.createDrawOff();
        early.setTeeAfter("service");
        DrawOff plain = MAKE.createDrawOff();
        plain.setTeeAfter("shared");
        water.getDrawOffs().addAll(List.of(basin, early, plain));
        assertEquals(List.of(shared), WaterChanges.shared(water));
        WaterChanges.giveOwnBranch(house);
        assertEquals(
                List.of("service", "own branch", "branch"),
                water.getSegments().stream().map(PipeSegment::getName).toList());
        assertEquals(3, basin.getHeight().si(), 1e-9);
        assertEquals("service", basin.getTeeAfter());
        assertEquals(1, plain.getSegments().size());
        assertNull(plain.getHeight());
        assertEquals(0, early.getSegments().size());
    }

    @Test
    void aNewServicePipeGivesBackWhatTheOldOneLost() {
        PipeSegment service = pipe("service", PipeMaterial.LEAD, "20 m");
        service.setBore(Length.valueOf("10 mm"));
        assertTrue(WaterChanges.renewableService(water));
        double before = test.getRunningPressure().si();
        WaterChanges.renewService(house);
        assertEquals(before, test.getRunningPressure().si(), 1e-9, "it lies behind the gauge");
        assertFalse(WaterChanges.renewableService(water));
        service.setMaterial(PipeMaterial.GALVANISED);
        service.setBore(Length.valueOf("12 mm"));
        service.setRoughness(Length.valueOf("0.5 mm"));
        test.setGaugeAfter("service");
        WaterChanges.renewService(house);
        double most = 0.98 * test.getStaticPressure().si();
        assertTrue(test.getRunningPressure().si() > before
                && test.getRunningPressure().si() <= most);
        double raised = test.getRunningPressure().si();
        service.setMaterial(PipeMaterial.GALVANISED);
        service.setBore(null);
        service.setSize(null);
        WaterChanges.renewService(house);
        assertEquals(raised, test.getRunningPressure().si(), 1e-6, "of a pipe of unknown bore nothing is known");
    }

    /** A wall of 1 mm is more than the 5 % of a 12 mm bore up to which Colebrook-White holds: it counts as the 0.6 mm that are. */
    @Test
    void aWallRougherThanTheFrictionLawHoldsCountsAsItsRoughest() {
        PipeSegment service = pipe("service", PipeMaterial.GALVANISED, "6 m");
        test.setGaugeAfter("service");
        service.setBore(Length.valueOf("12 mm"));
        service.setRoughness(Length.valueOf("1 mm"));
        WaterChanges.renewService(house);
        double rough = test.getRunningPressure().si();
        test.setRunningPressure(Pressure.valueOf("2 bar"));
        service.setMaterial(PipeMaterial.GALVANISED);
        service.setBore(Length.valueOf("12 mm"));
        service.setRoughness(Length.valueOf("0.6 mm"));
        WaterChanges.renewService(house);
        assertEquals(test.getRunningPressure().si(), rough, 1e-6);
        assertTrue(rough > 2.1e5 && rough < 0.98 * 3e5, "between the reading and the most that is believed: " + rough);
    }

    @Test
    void aSharedServicePipeIsRenewedWhateverItIs() {
        assertFalse(WaterChanges.renewableService(water));
        water.setSharedServicePipe(true);
        assertTrue(WaterChanges.renewableService(water));
        pipe("copper", PipeMaterial.COPPER, "5 m").setSize("15 mm");
        WaterChanges.renewService(house);
        assertEquals(false, water.getSharedServicePipe());
        assertEquals("15 mm", water.getSegments().get(0).getSize());
    }

    @Test
    void aPipeFromTheMainNeedsATestOrAHotFeed() {
        assertTrue(MainRemedy.of(null).isEmpty());
        assertTrue(MainRemedy.of(water).isEmpty(), "it is fed from the main");
        water.setSource(WaterSource.TANK);
        WaterTest main = MAKE.createWaterTest();
        assertTrue(MainRemedy.of(water).isEmpty(), "nobody knows how far the main is");
        PipeSegment planned = MAKE.createPipeSegment();
        planned.setLength(Length.valueOf("6 m"));
        water.setMainPipe(planned);
        main.setGaugeAfter("loft");
        assertTrue(MainRemedy.of(water).isEmpty(), "the main was not tested");
        water.setMainTest(main);
        assertFalse(MainRemedy.measured(water));
        main.setStaticPressure(Pressure.valueOf("3 bar"));
        assertFalse(MainRemedy.measured(water));
        main.setRunningPressure(Pressure.valueOf("2 bar"));
        assertFalse(MainRemedy.measured(water));
        main.setFlow(Flow.valueOf("12 L/min"));
        water.setBackflowProtection(WaterChanges.DOUBLE_CHECK_VALVE);
        planned.setLength(Length.valueOf("0 m"));
        assertTrue(MainRemedy.of(water).isEmpty(), "no pipe is that short");
        planned.setLength(Length.valueOf("6 m"));
        MainRemedy.of(water).orElseThrow().edit().accept(house);
        assertNull(water.getTest().getGaugeAfter(), "the new pipe begins where the main was tested");
        assertEquals(WaterSource.MAINS, water.getSource());
        assertEquals(3, water.getSegments().get(0).getFittings().size());
        water.setTest(null);
        water.setSource(WaterSource.TANK);
        assertTrue(MainRemedy.of(water).isEmpty());
    }
}
