// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Ratio;
import twinfeed.units.Temperature;

/** Slips of the pen in readings and in a heater's data are named, each by its own name, and what is only just possible is worked with. */
class ReadingsThatCannotBeTest {
    private static final String TEST = "survey.water.test.";
    private static final String BRANCH = "survey.water.segments[shower branch].";
    private static final String BASIN = "survey.water.drawOffs[basin].";

    private record Slip(String path, String value, Consumer<Survey> change) {}

    private static WaterTest test(Survey survey) {
        return survey.getWater().getTest();
    }

    private static PipeSegment branch(Survey survey) {
        return survey.getWater().getSegments().get(2);
    }

    private static Fitting fitting(Survey survey) {
        return branch(survey).getFittings().get(0);
    }

    private static DrawOff basin(Survey survey) {
        return survey.getWater().getDrawOffs().get(1);
    }

    private static final List<Slip> SLIPS = List.of(
            new Slip(TEST + "staticPressure", "0 bar", survey -> {
                test(survey).setStaticPressure(Pressure.valueOf("0 bar"));
                test(survey).setRunningPressure(Pressure.valueOf("0 bar"));
            }),
            new Slip(TEST + "staticPressure", "101 bar", survey -> test(survey)
                    .setStaticPressure(Pressure.valueOf("101 bar"))),
            new Slip(TEST + "runningPressure", "-0.1 bar", survey -> test(survey)
                    .setRunningPressure(Pressure.valueOf("-0.1 bar"))),
            new Slip(TEST + "runningPressure", "3.3 bar of 3.0", survey -> test(survey)
                    .setRunningPressure(Pressure.valueOf("3.3 bar"))),
            new Slip(TEST + "flow", "0 L/min", survey -> test(survey).setFlow(Flow.valueOf("0 L/min"))),
            new Slip(TEST + "flow", "1.1 m³/s", survey -> test(survey).setFlow(Flow.ofSi(1.1))),
            new Slip(TEST + "gaugeHeight", "10.1 km", survey -> test(survey).setGaugeHeight(Length.ofSi(10_100))),
            new Slip(TEST + "gaugeAfter", "nowhere", survey -> test(survey).setGaugeAfter("nowhere")),
            new Slip("survey.water.stopValveOpen", "throttled", survey -> survey.getWater()
                    .setStopValveOpen(false)),
            new Slip("survey.winterIntake", "-1 °C", survey -> survey.setWinterIntake(Temperature.valueOf("-1 °C"))),
            new Slip("survey.winterIntake", "101 °C", survey -> survey.setWinterIntake(Temperature.valueOf("101 °C"))),
            new Slip(BRANCH + "length", "none", survey -> branch(survey).setLength(null)),
            new Slip(BRANCH + "length", "-1 m", survey -> branch(survey).setLength(Length.valueOf("-1 m"))),
            new Slip(BRANCH + "length", "10.1 km", survey -> branch(survey).setLength(Length.ofSi(10_100))),
            new Slip(BRANCH + "bore", "none", survey -> branch(survey).setBore(null)),
            new Slip(BRANCH + "bore", "0.9 mm", survey -> branch(survey).setBore(Length.valueOf("0.9 mm"))),
            new Slip(BRANCH + "bore", "1.1 m", survey -> branch(survey).setBore(Length.valueOf("1.1 m"))),
            new Slip(BRANCH + "roughness", "-1 mm", survey -> branch(survey).setRoughness(Length.valueOf("-1 mm"))),
            new Slip(BRANCH + "roughness", "as wide as the pipe", survey -> branch(survey)
                    .setRoughness(Length.valueOf("13 mm"))),
            new Slip(BRANCH + "rise", "10.1 km", survey -> branch(survey).setRise(Length.ofSi(-10_100))),
            new Slip(BRANCH + "fittings", "a kind of no table", survey -> fitting(survey)
                    .setKind("widget")),
            new Slip(BRANCH + "fittings", "no kind", survey -> fitting(survey).setKind(null)),
            new Slip(BRANCH + "fittings", "K of -1", survey -> fitting(survey).setK(Ratio.ofSi(-1))),
            new Slip(BRANCH + "fittings", "K of 1.1 million", survey -> fitting(survey)
                    .setK(Ratio.ofSi(1.1e6))),
            new Slip(
                    BRANCH + "fittings", "-1 of them", survey -> fitting(survey).setCount(-1)),
            new Slip(BRANCH + "fittings", "1001 of them", survey -> fitting(survey)
                    .setCount(1001)),
            new Slip(BASIN + "flow", "0 L/min", survey -> basin(survey).setFlow(Flow.valueOf("0 L/min"))),
            new Slip(BASIN + "flow", "1.1 m³/s", survey -> basin(survey).setFlow(Flow.ofSi(1.1))),
            new Slip(BASIN + "height", "10.1 km", survey -> basin(survey).setHeight(Length.ofSi(10_100))),
            new Slip(BASIN + "teeAfter", "nowhere", survey -> basin(survey).setTeeAfter("nowhere")),
            new Slip(
                    BASIN + "segments[basin branch].length",
                    "none",
                    survey -> basin(survey).getSegments().get(0).setLength(null)));

    @TestFactory
    Stream<DynamicTest> slipsAreNamed() {
        return SLIPS.stream()
                .map(slip -> DynamicTest.dynamicTest(slip.path + ", " + slip.value, () -> {
                    Finding available = Houses.finding("pressure.available", slip.change, heater -> {});
                    assertEquals(List.of(slip.path), available.missing());
                }));
    }

    /** The ends of what is believed: 100 bar, running at nothing, 1 m³/s, 1 mm, 1 m, 10 km, 1000 fittings, a twentieth of the bore. */
    @Test
    void whatIsOnlyJustPossibleIsWorkedWith() {
        for (Consumer<Survey> change : List.<Consumer<Survey>>of(
                survey -> {
                    test(survey).setRunningPressure(Pressure.valueOf("0 bar"));
                    test(survey).setGaugeHeight(null);
                },
                survey -> test(survey).setGaugeHeight(Length.ofSi(10_000)),
                survey -> branch(survey).setLength(Length.ofSi(10_000)),
                survey -> branch(survey).setRise(Length.ofSi(-10_000)),
                survey -> branch(survey).setRoughness(Length.valueOf("0 mm")),
                survey -> {
                    branch(survey).setBore(Length.valueOf("20 mm"));
                    branch(survey).setRoughness(Length.valueOf("1 mm"));
                },
                survey -> basin(survey).setHeight(Length.ofSi(10_000)),
                survey -> survey.setWinterIntake(Temperature.ofSi(100)),
                survey -> test(survey).setStaticPressure(Pressure.valueOf("100 bar")),
                survey -> test(survey).setRunningPressure(Pressure.valueOf("0 bar")),
                survey -> test(survey).setFlow(Flow.ofSi(1)),
                survey -> branch(survey).setLength(Length.valueOf("0 m")),
                survey -> branch(survey).setBore(Length.valueOf("1 mm")),
                survey -> branch(survey).setBore(Length.valueOf("1 m")),
                survey -> fitting(survey).setCount(0),
                survey -> fitting(survey).setCount(1000),
                survey -> fitting(survey).setK(Ratio.ofSi(0)),
                survey -> fitting(survey).setK(Ratio.ofSi(1e6)),
                survey -> survey.setWinterIntake(Temperature.ofSi(0)),
                survey -> basin(survey).setFlow(Flow.ofSi(1)))) {
            assertEquals(
                    List.of(),
                    Houses.finding("pressure.available", change, heater -> {}).missing());
        }
    }

    /** A pipe of many slips is named with all of them, and so is another pipe. */
    @Test
    void allSlipsAreNamedAtOnce() {
        Finding running = Houses.finding(
                "pressure.running",
                survey -> {
                    survey.getWater().getSegments().get(1).setName(null);
                    survey.getWater().getSegments().get(1).setBore(null);
                    branch(survey).setRise(Length.ofSi(20_000));
                },
                heater -> {});
        assertEquals(List.of("survey.water.segments[1].bore", BRANCH + "rise"), running.missing());
    }

    /** A tap without a name is named by its place in the list, whatever is wrong with those before it. */
    @Test
    void aTapWithoutANameIsNamedByItsNumber() {
        Finding running = Houses.finding(
                "pressure.running",
                survey -> survey.getWater().getDrawOffs().forEach(tap -> {
                    tap.setName(null);
                    tap.setFlow(Flow.valueOf("0 L/min"));
                }),
                heater -> {});
        assertEquals(List.of("survey.water.drawOffs[1].flow", "survey.water.drawOffs[2].flow"), running.missing());
    }

    /** Three valves of K = 6 in place of one lose three times as much; K typed in takes the place of the table's. */
    @Test
    void fittingsAreCounted() {
        double one = fittings(survey -> {});
        double three = fittings(survey -> fitting(survey).setCount(3));
        double typed = fittings(survey -> fitting(survey).setK(Ratio.ofSi(18)));
        assertEquals(three, typed, 1e-9);
        // 12 more times the velocity head: 999.97 kg/m³ / 2 x (0.91785 m/s)² = 421.2 Pa at 8 L/min in 13.6 mm.
        assertEquals(12 * 421.2e-5, three - one, 1e-5);
    }

    private static double fittings(Consumer<Survey> change) {
        Object loss = Houses.finding("pressure.loss", change, heater -> {})
                .arguments()
                .get("fittings");
        return ((Number) loss).doubleValue();
    }

    private static Finding unit(String check, Consumer<Heater> change) {
        return Houses.finding(check, survey -> {}, change);
    }

    /** What no heater's instructions say is not believed; what they say at the edge is. */
    @Test
    void slipsInAHeatersDataAreNamed() {
        assertEquals(
                List.of("heater.activationFlow"),
                unit("pressure.activation", heater -> heater.setActivationFlow(Flow.ofSi(1e-11)))
                        .missing());
        assertEquals(
                List.of("heater.makePressure"),
                unit("pressure.switch", heater -> {
                            heater.setMakePressure(Pressure.valueOf("-0.3 bar"));
                            heater.setBreakPressure(null);
                        })
                        .missing());
        assertEquals(
                List.of("heater.breakPressure"),
                unit("pressure.switch", heater -> heater.setBreakPressure(Pressure.valueOf("-0.1 bar")))
                        .missing());
        assertNotEquals(
                List.of("heater.breakPressure"),
                unit("pressure.switch", heater -> heater.setBreakPressure(Pressure.valueOf("0.3 bar")))
                        .missing());
        assertEquals(
                List.of("heater.downstreamPressure"),
                unit("pressure.throttle", heater -> heater.setDownstreamPressure(Pressure.valueOf("0 bar")))
                        .missing());
        assertEquals(
                List.of("heater.runningPressureFlow"),
                unit("pressure.available", heater -> heater.setMinimumRunningPressure(Pressure.valueOf("0 bar")))
                        .missing());
        assertEquals(
                List.of("heater.runningPressureFlow"),
                unit("pressure.loss", heater -> heater.setRunningPressureFlow(Flow.ofSi(0)))
                        .missing());
        assertEquals(
                List.of("heater.downstreamPressure", "survey.water.lowestHandset", "heater.switchPlace"),
                Houses.finding(
                                "pressure.switch",
                                survey -> survey.getWater().setLowestHandset(Length.valueOf("10.1 m")),
                                heater -> {
                                    heater.unsetSwitchPlace();
                                    heater.setDownstreamFlow(null);
                                })
                        .missing());
    }

    /** The ends of what is believed of a heater: 0 and 100 bar, 1 m³/s, a tenth of a millilitre a minute. */
    @Test
    void whatIsOnlyJustPossibleOfAHeaterIsWorkedWith() {
        Finding closedAtNothing = unit("pressure.switch", heater -> {
            heater.setMakePressure(Pressure.valueOf("0 bar"));
            heater.setBreakPressure(null);
        });
        assertEquals(Outcome.PASSES, closedAtNothing.outcome());
        assertEquals(0, Fixtures.limit(closedAtNothing), 0);
        assertEquals(
                Outcome.FAILS,
                unit("pressure.switch", heater -> heater.setMakePressure(Pressure.valueOf("100 bar")))
                        .outcome());
        assertEquals(
                Outcome.PASSES,
                unit("pressure.switch", heater -> {
                            heater.setMakePressure(Pressure.valueOf("0.1 bar"));
                            heater.setBreakPressure(Pressure.valueOf("0 bar"));
                        })
                        .outcome());
        assertEquals(
                Outcome.FAILS,
                unit("pressure.activation", heater -> heater.setActivationFlow(Flow.ofSi(1)))
                        .outcome());
        assertEquals(
                Outcome.PASSES,
                unit("pressure.activation", heater -> heater.setActivationFlow(Flow.ofSi(1e-9 / 6)))
                        .outcome());
    }

    /** The flow at which the least running pressure holds is typed with it; 0 L/min is a slip that both checks name. */
    @Test
    void aRunningPressureAtNoFlowIsNamed() {
        for (String check : List.of("pressure.running", "pressure.peak")) {
            assertEquals(
                    List.of("heater.runningPressureFlow"),
                    unit(check, heater -> heater.setRunningPressureFlow(Flow.ofSi(0)))
                            .missing());
        }
    }

    @Test
    void aStaticPressureOfNothingIsNamedByTheCheckOfTheTest() {
        Finding test = Houses.finding(
                "pressure.test", survey -> Houses.supply(survey, "0 bar", "0 bar", "12 L/min"), heater -> {});
        assertEquals(List.of(TEST + "staticPressure"), test.missing());
    }

    /** Each reading may be off by 0.1 bar: 3.2 bar running of 3.0 bar is just too much, for the check of the test and for the others alike. */
    @Test
    void aRunningPressureAtTheEndOfTheGaugesErrorIsRefusedEverywhere() {
        Consumer<Survey> tooHigh = survey -> {
            test(survey).setRunningPressure(Pressure.ofSi(320_000));
            test(survey).setGaugeHeight(null);
        };
        assertEquals(
                "refused",
                Houses.finding("pressure.test", tooHigh, heater -> {}).variant());
        assertEquals(
                List.of(TEST + "runningPressure"),
                Houses.finding("pressure.running", tooHigh, heater -> {}).missing());
    }

    /** The test ran at nothing with the 8 L/min that the heater needs, at its inlet: no pressure is left, and that is what is said. */
    @Test
    void aRunningPressureOfNothingIsNone() {
        Finding running = Houses.finding(
                "pressure.running",
                survey -> {
                    Houses.supply(survey, "3.0 bar", "0 bar", "8 L/min");
                    Houses.gaugeAtHeater(survey);
                    survey.getWater().getDrawOffs().clear();
                },
                heater -> {});
        assertEquals(0, Fixtures.value(running), 0);
        assertEquals("none", running.variant());
    }

    /** 3.19 bar may be 3.0 too where each reading of the gauge may be off by 0.1 bar: the supply is stiff. */
    @Test
    void aRunningPressureWithinTheGaugesErrorIsAStiffSupply() {
        Consumer<Survey> above = survey -> {
            test(survey).setRunningPressure(Pressure.valueOf("3.19 bar"));
            test(survey).setGaugeAfter("shower branch");
            test(survey).setGaugeHeight(null);
            survey.getWater().getDrawOffs().clear();
        };
        assertEquals(3.0, Fixtures.value(Houses.finding("pressure.running", above, heater -> {})), 0.001);
        assertTrue(
                Houses.finding("pressure.test", above, heater -> {}).variant().isEmpty());
    }
}
