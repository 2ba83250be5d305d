// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/**
 * A heater that holds its flow by itself, in a house with two more showers on its pipe. Once the others draw so much that it cannot hold
 * its flow any more, it passes what its open valve lets through: the same losses as where the largest flow is asked for.
 */
class StabilisedHeaterTest {
    private static Survey houseWithThreeShowers() {
        Survey survey = Samples.survey();
        survey.getCustomer().setVulnerable(true);
        survey.getWater().setTest(SampleHouse.waterTest("3.0 bar", "0.983 bar", "18 L/min"));
        survey.getWater().getTest().setGaugeAfter("service pipe");
        survey.getWater().getTest().setGaugeHeight(Length.valueOf("0.3 m"));
        survey.getWater().getDrawOffs().clear();
        survey.getWater().getDrawOffs().add(SampleHouse.tap("second shower", "9 L/min", "service pipe", "2 m"));
        survey.getWater().getDrawOffs().add(SampleHouse.tap("third shower", "9 L/min", "rising main", "2 m"));
        return survey;
    }

    /** 1.5 bar at 9 L/min fully open, by which 0.65 bar are needed to hold 9 L/min: 0.35 bar over the valve and 0.30 bar behind it. */
    private static Heater stabilised() {
        Heater heater = Samples.heater();
        heater.setPower(Power.valueOf("10.5 kW"));
        heater.setMinimumRunningPressure(Pressure.valueOf("1.5 bar"));
        heater.setRunningPressureFlow(Flow.valueOf("9 L/min"));
        heater.setDownstreamPressure(Pressure.valueOf("0.30 bar"));
        heater.setDownstreamFlow(Flow.valueOf("9 L/min"));
        heater.setThrottleMinimum(Pressure.valueOf("0.10 bar"));
        heater.setStabilised(true);
        heater.setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
        heater.setCutOutTemperature(Temperature.valueOf("52 °C"));
        heater.setSwitchPlace(null);
        heater.setMakePressure(null);
        heater.setBreakPressure(null);
        return heater;
    }

    private static double hottest(Heater heater) {
        return (Double) Houses.finding(houseWithThreeShowers(), heater, "pressure.tapOpens")
                .arguments()
                .get("unprotected");
    }

    /** By the losses of the open unit; by the least that holding its flow needs the water would seem to stay at 41.7 degC. */
    @Test
    void heatsTheFlowThatItsOpenValvePasses() {
        Finding finding = Houses.finding(houseWithThreeShowers(), stabilised(), "pressure.tapOpens");
        assertEquals(46.6, hottest(stabilised()), 0.05);
        assertEquals(Outcome.FAILS, finding.outcome());
    }

    /** Nothing is known of the open unit nor of what it needs to hold its flow: whether it holds it cannot be told. */
    @Test
    void asksForWhatHoldingItsFlowNeeds() {
        Heater heater = stabilised();
        heater.setRunningPressureFlow(null);
        heater.setStabilisedMinimum(null);
        Finding finding = Houses.finding(houseWithThreeShowers(), heater, "pressure.tapOpens");
        assertEquals(List.of("heater.stabilisedMinimum"), finding.missing());
        heater.setStabilised(false);
        assertEquals(
                Outcome.FAILS,
                Houses.finding(houseWithThreeShowers(), heater, "pressure.tapOpens")
                        .outcome());
    }

    /** One of the two is enough to judge: the losses of the open unit, or what holding its flow needs. */
    @Test
    void isJudgedByEither() {
        Heater byLosses = stabilised();
        byLosses.setStabilisedMinimum(null);
        assertEquals(
                Outcome.FAILS,
                Houses.finding(houseWithThreeShowers(), byLosses, "pressure.tapOpens")
                        .outcome());
        Heater byNeed = stabilised();
        byNeed.setRunningPressureFlow(null);
        Survey strict = houseWithThreeShowers();
        Houses.parameter(strict, "hottest-frail", "41 °C");
        Finding finding = Houses.finding(strict, byNeed, "pressure.tapOpens");
        assertEquals(Outcome.FAILS, finding.outcome());
        assertEquals(41.7, Fixtures.value(finding), 0.05);
        assertEquals(Fixtures.value(finding), last(finding), 1e-8);
        byNeed.setDownstreamPressure(null);
        Finding nothingBehind = Houses.finding(strict, byNeed, "pressure.scald");
        assertEquals(Fixtures.value(nothingBehind), last(nothingBehind), 1e-8);
        assertEquals(0, Houses.step(nothingBehind, "R_d").value(), 0);
    }

    private static double last(Finding finding) {
        List<Step> steps = finding.working().steps();
        return steps.get(steps.size() - 1).value();
    }

    /** A valve that needs nothing, and nothing behind it: it is judged as one that stays where it is. */
    @Test
    void thatNeedsNothingIsTakenAsAThrottle() {
        Heater needless = stabilised();
        needless.setRunningPressureFlow(null);
        needless.setDownstreamPressure(null);
        needless.setStabilisedMinimum(Pressure.valueOf("0 bar"));
        Heater throttled = stabilised();
        throttled.setRunningPressureFlow(null);
        throttled.setDownstreamPressure(null);
        throttled.setStabilised(false);
        assertEquals(hottest(throttled), hottest(needless), 1e-9);
    }

    /** Only where the losses of the open unit are not known does the least that holding needs stand in for them. */
    @Test
    void fallsBackOnWhatHoldingItsFlowNeeds() {
        Heater heater = stabilised();
        heater.setRunningPressureFlow(null);
        assertEquals(41.7, hottest(heater), 0.05);
    }
}
