// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.ExpectedText;
import twinfeed.calculator.HouseRecord;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Concentration;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/**
 * Whole houses, all invented, with all that is said of them. Each has a file in {@code whole-houses} that was read through line by line
 * when it was written. Its figures were held against a calculation by hand where one is short: the supply by p = p0 - (p0 - p1) (Q / Q1)^1.85,
 * the exponent of NFPA 291 (memory); heights by 0.0981 bar a metre; losses of strainers, units and switches by the square of the flow;
 * velocities by bores of EN 1057. The first file has every check; the others what differs from it.
 *
 * <p>Where a change of the program is meant, the new text is in {@code target/texts/whole-houses}: read what has changed before you take it over.
 */
class WholeHousesTest {
    private record House(String name, boolean present, BiConsumer<Survey, Heater> change) {
        Map<String, String> record() {
            Survey survey = Samples.survey();
            Heater heater = Samples.heater();
            change.accept(survey, heater);
            return HouseRecord.withFigures().of(survey, Houses.findings(survey, heater, present));
        }
    }

    private static final House SAMPLE = new House("sample", false, (survey, heater) -> {});

    private static void test(WaterFeed water, String staticPressure, String running, String flow) {
        water.setTest(SampleHouse.waterTest(staticPressure, running, flow));
    }

    /** A lead pipe of 12 mm, a fouled strainer, a weak main; both taps behind the rising main; the switch behind the throttle. */
    private static void weak(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        water.getTest().setStaticPressure(Pressure.valueOf("1.6 bar"));
        water.getTest().setRunningPressure(Pressure.valueOf("0.9 bar"));
        water.getSegments().get(0).setMaterial(PipeMaterial.LEAD);
        water.getSegments().get(0).setBore(Length.valueOf("12 mm"));
        water.getSegments()
                .add(SampleHouse.pipe("inlet", PipeMaterial.COPPER, "13.6 mm", "0.2 m", "0 m", "strainer-fouled"));
        water.getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        survey.getCustomer().setVulnerable(true);
        water.setBackflowProtection("none");
    }

    /** A strong main that is too much for the unit, which holds its flow by itself; a shared service pipe; no taps. */
    private static void strong(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        test(water, "8.0 bar", "7.5 bar", "15 L/min");
        water.getDrawOffs().clear();
        water.setSharedServicePipe(true);
        water.setHandsetReachesWc(true);
        heater.setMaximumStaticPressure(Pressure.valueOf("5 bar"));
        heater.setStabilised(true);
        heater.setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
        heater.setMaximumHardness(Concentration.valueOf("200 mg/L"));
        heater.unsetSwitchPlace();
    }

    /** A tank in the loft, 4 m up, with a main beside it that was tested; the instructions forbid a tank. */
    private static void tank(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        water.setSource(WaterSource.TANK);
        test(water, "0.4 bar", "0.2 bar", "8 L/min");
        water.getSegments().clear();
        water.getSegments().add(SampleHouse.pipe("down pipe", PipeMaterial.COPPER, "20.2 mm", "5 m", "0 m"));
        water.getDrawOffs().remove(1);
        water.getDrawOffs().get(0).setTeeAfter("down pipe");
        water.setMainTest(SampleHouse.waterTest("3.2 bar", "2.4 bar", "14 L/min"));
        water.setMainPipe(SurveyFactory.eINSTANCE.createPipeSegment());
        water.getMainPipe().setLength(Length.valueOf("7 m"));
        water.getMainPipe().setRise(Length.valueOf("-1 m"));
        heater.setTankFeedAllowed(false);
        heater.setMakePressure(null);
    }

    /** Hot water of 60 degC, where 55 are allowed; pipes by their nominal sizes; readings at the busiest time; nobody tested the main. */
    private static void hot(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        water.setSource(WaterSource.HOT);
        water.setHottestFeed(Temperature.valueOf("60 °C"));
        water.getTest().setAtPeak(true);
        water.getSegments().get(1).setBore(null);
        water.getSegments().get(1).setSize("22 mm");
        water.getSegments().get(2).setBore(null);
        water.getSegments().get(2).setSize("15 mm");
        water.getDrawOffs().get(0).setFlow(null);
        heater.setPreheatedAllowed(true);
        heater.setMaximumIntake(Temperature.valueOf("55 °C"));
        heater.setInletLoss(null);
    }

    /** The unit that is there, with a bucket held under it, and a test that shows next to no drop. */
    private static void present(Survey survey, Heater heater) {
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("2.9 bar"));
        heater.setMaximumHardness(Concentration.valueOf("200 mg/L"));
        heater.setActivationFlow(null);
    }

    /** 3 L/min at 2.5 bar: a unit so narrow that in summer too little water runs through it. */
    private static void narrow(Survey survey, Heater heater) {
        heater.setMinimumRunningPressure(Pressure.valueOf("2.5 bar"));
        heater.setRunningPressureFlow(Flow.valueOf("3 L/min"));
        heater.setThrottleMinimum(Pressure.valueOf("2 bar"));
        heater.setCutOutTemperature(null);
    }

    /** Nobody has read anything. */
    private static void unread(Survey survey, Heater heater) {
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        survey.setUnit(null);
    }

    /** A unit that holds 9 L/min by itself while two more showers on its pipe open; a cut-out at 52 degC; frail people. */
    private static void stabilised(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        survey.getCustomer().setVulnerable(true);
        test(water, "3.0 bar", "0.983 bar", "18 L/min");
        water.getTest().setGaugeAfter("service pipe");
        water.getDrawOffs().clear();
        water.getDrawOffs().add(SampleHouse.tap("second shower", "9 L/min", "service pipe", "2 m"));
        water.getDrawOffs().add(SampleHouse.tap("third shower", "9 L/min", "rising main", "2 m"));
        heater.setMinimumRunningPressure(Pressure.valueOf("1.5 bar"));
        heater.setRunningPressureFlow(Flow.valueOf("9 L/min"));
        heater.setStabilised(true);
        heater.setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
        heater.setCutOutTemperature(Temperature.valueOf("52 °C"));
        heater.unsetSwitchPlace();
        heater.setMakePressure(null);
    }

    /** A switch behind the throttle that closes at 0.05 bar and opens at 0.03, in a stiff house; both taps at the gauge. */
    private static void behind(Survey survey, Heater heater) {
        WaterFeed water = survey.getWater();
        test(water, "4.0 bar", "3.6 bar", "15 L/min");
        water.getTest().setGaugeAfter("service pipe");
        water.getDrawOffs().get(1).setTeeAfter("service pipe");
        water.setLowestHandset(Length.valueOf("0 m"));
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        heater.setMakePressure(Pressure.valueOf("0.05 bar"));
        heater.setBreakPressure(Pressure.valueOf("0.03 bar"));
        heater.setActivationFlow(null);
        heater.setStabilised(null);
    }

    /** 60 degC is asked for, and there is no tap that could make it worse. */
    private static void tooHot(Survey survey, Heater heater) {
        survey.setTargetOutlet(Temperature.valueOf("60 °C"));
        survey.getWater().getDrawOffs().clear();
    }

    private static final List<House> OTHERS = List.of(
            new House("stabilised", false, WholeHousesTest::stabilised),
            new House("behind", false, WholeHousesTest::behind),
            new House("too-hot", false, WholeHousesTest::tooHot),
            new House("weak", false, WholeHousesTest::weak),
            new House("strong", false, WholeHousesTest::strong),
            new House("tank", false, WholeHousesTest::tank),
            new House("hot", false, WholeHousesTest::hot),
            new House("present", true, WholeHousesTest::present),
            new House("narrow", false, WholeHousesTest::narrow),
            new House("unread", false, WholeHousesTest::unread));

    @TestFactory
    Stream<DynamicTest> allThatIsSaidOfAHouse() {
        Map<String, String> sample = SAMPLE.record();
        return Stream.concat(Stream.of(SAMPLE), OTHERS.stream())
                .map(house -> DynamicTest.dynamicTest(
                        house.name,
                        () -> ExpectedText.same(
                                WholeHousesTest.class,
                                "whole-houses/" + house.name + ".txt",
                                HouseRecord.differences(house.record(), house == SAMPLE ? Map.of() : sample))));
    }
}
