// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Survey;
import twinfeed.units.Pressure;
import twinfeed.units.Ratio;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;

/** The lines of a working tell which reading they are: a workbook follows a change of that reading by them. */
class WorkingOriginsTest {
    private final Survey survey = Samples.survey();

    private Finding running() {
        return Houses.finding(survey, Samples.heater(), "pressure.running");
    }

    private String origin(String symbol) {
        return Houses.step(running(), symbol).origin();
    }

    /** The water in the gauge's hose has the temperature that was read at the test, or else that of the design intake. */
    @Test
    void theTemperatureOfTheTestIsTheReadingWhereThereIsOne() {
        assertEquals("survey.water.intakeReading", origin("T_m"));
        assertEquals(12, Houses.step(running(), "T_m").value(), 1e-12);
        survey.getWater().setIntakeReading(null);
        assertEquals(origin("T"), origin("T_m"));
        assertEquals(
                Houses.step(running(), "T").value(),
                Houses.step(running(), "T_m").value(),
                1e-12);
    }

    /** The rising main is the first pipe after the gauge; its second fitting is a check valve. */
    @Test
    void aLossCoefficientIsAReadingOrAFigureOfTheTable() {
        assertEquals("table.fitting[stop-valve]", origin("K_1_1"));
        assertEquals("table.fitting[check-valve]", origin("K_1_2"));
        Fitting valve = survey.getWater().getSegments().get(1).getFittings().get(1);
        valve.setK(Ratio.valueOf("7"));
        valve.setCount(2);
        assertEquals("survey.water.segments[rising main].fittings[2].k", origin("K_1_2"));
        assertEquals("survey.water.segments[rising main].fittings[2].count", origin("n_1_2"));
        assertEquals(10 + 2 * 7, Houses.step(running(), "K_1").value(), 1e-12);
    }

    /** The kitchen tap is 0.5 m below its tee: all of that stands at the first pipe of its branch. */
    @Test
    void theHeightOfATapIsTheRiseOfTheFirstPipeOfItsBranch() {
        survey.getWater()
                .getDrawOffs()
                .get(0)
                .getSegments()
                .add(SampleHouse.pipe("hose", PipeMaterial.HOSE, "8 mm", "0.4 m", "0.2 m"));
        List<NamedPipe> branch = Mapped.feed(survey).taps().get(0).branch();
        assertEquals(
                "survey.water.drawOffs[kitchen tap].height",
                branch.get(0).origin().rise());
        assertEquals(-0.5, branch.get(0).pipe().riseM(), 1e-12);
        assertEquals("", branch.get(1).origin().rise());
        assertEquals(0, branch.get(1).pipe().riseM(), 0);
    }

    /** Where the pipes are not known the static pressure is that of the gauge, and the working says so. */
    @Test
    void withoutThePipesTheStaticPressureIsTheGauges() {
        survey.getWater().getSegments().get(2).setLength(null);
        Finding atGauge = Houses.finding(survey, Samples.heater(), "pressure.static");
        assertEquals(
                List.of("lim", "p_0"),
                atGauge.working().steps().stream().map(step -> step.symbol()).toList());
        assertEquals(
                "survey.water.test.staticPressure", Houses.step(atGauge, "p_0").origin());
        assertEquals(3.0, Houses.step(atGauge, "p_0").value(), 1e-12);
        assertEquals(10, Houses.step(atGauge, "lim").value(), 1e-12);
    }

    /** In the house as surveyed a tap's flow is what was read; 0.01 bar more and it is what its outlet gives, a hair more. */
    @Test
    void theFlowOfATapIsAReadingUntilWorkChangesIt() {
        Finding read = Houses.finding(survey, Samples.heater(), "pressure.dropOut");
        assertEquals(
                "survey.water.drawOffs[kitchen tap].flow",
                Houses.step(read, "lim").origin());
        Survey changed = EcoreUtil.copy(survey);
        Houses.supply(changed, "3.01 bar", "1.81 bar", "12 L/min");
        Finding after = Houses.finding(survey, changed, Samples.heater(), "pressure.dropOut");
        Step flow = Houses.step(after, "lim");
        assertNotNull(flow.expression());
        assertEquals("", flow.origin());
        assertEquals(12.02, flow.value(), 0.01);
        assertEquals(Fixtures.limit(after), flow.value(), 1e-9);
    }

    /** Without a break pressure of its own the switch is taken to open at its make pressure, and the working says whose figure it is. */
    @Test
    void theBreakPressureIsThatOfTheInstructionsOrTheMakePressure() {
        Heater heater = Samples.heater();
        assertEquals(
                "heater[sample].breakPressure",
                Houses.step(Houses.finding(survey, heater, "pressure.dropOut"), "p_b")
                        .origin());
        heater.setBreakPressure(null);
        Step make = Houses.step(Houses.finding(survey, heater, "pressure.dropOut"), "p_b");
        assertEquals("heater[sample].makePressure", make.origin());
        assertEquals(0.3, make.value(), 1e-12);
    }

    /** What closes the switch is compared with the make pressure, what keeps it closed with the break pressure, or else with that of making. */
    @Test
    void theLimitOfTheSwitchIsTheFigureThatCounts() {
        Heater heater = Samples.heater();
        assertEquals(List.of("makePressure", "heater[sample].makePressure", "0.3"), limitOfTheSwitch(heater));
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        assertEquals(List.of("makePressure", "heater[sample].makePressure", "0.3"), limitOfTheSwitch(heater));
        // The hose that hangs down takes 0.029 bar from what keeps it closed: 0.29 bar are then the harder limit.
        heater.setBreakPressure(Pressure.valueOf("0.29 bar"));
        assertEquals(List.of("breakPressure", "heater[sample].breakPressure", "0.29"), limitOfTheSwitch(heater));
        heater.setBreakPressure(null);
        assertEquals(List.of("breakPressure", "heater[sample].makePressure", "0.3"), limitOfTheSwitch(heater));
    }

    private List<String> limitOfTheSwitch(Heater heater) {
        Step limit = Houses.step(Houses.finding(survey, heater, "pressure.switch"), "lim");
        return List.of(limit.meaning(), limit.origin(), String.valueOf(limit.value()));
    }

    /** The rounds of the search for a draw-off stand in the working, and what each leaves over: nothing after the last. */
    @Test
    void theRoundsOfTheDropOutStandInItsWorking() {
        Finding dropOut = Houses.finding(survey, Samples.heater(), "pressure.dropOut");
        for (int round = 1; round <= 5; round++) {
            assertEquals(
                    Origin.ROUND + round, Houses.step(dropOut, "E_d" + round).origin());
        }
        assertEquals(0, Houses.step(dropOut, "E_d5").value(), 1e-12);
    }

    /** A month that is colder than the winter that was typed governs, for the coldest water is the thickest. */
    @Test
    void theColdestWaterGovernsWhateverTheWinterWasTypedAs() {
        survey.setWinterIntake(Temperature.valueOf("15 °C"));
        survey.setClimate("model");
        survey.setAnnualMeanAir(Temperature.valueOf("6 °C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("0 K"));
        Step water = Houses.step(running(), "T");
        assertEquals(6, water.value(), 1e-12);
        assertNotEquals("survey.winterIntake", water.origin());
        survey.setWinterIntake(Temperature.valueOf("5 °C"));
        assertEquals(5, Houses.step(running(), "T").value(), 1e-12);
        assertEquals("survey.winterIntake", origin("T"));
    }
}
