// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Survey;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** Whether the switch ends the heating while taps open, by where it is and what is known of it; a cut-out is not known. */
class SwitchOffWhileATapOpensTest {
    private final Heater heater = Samples.heater();

    /** A weak supply: with both taps open less water runs through the heater than keeps its switch closed. */
    private Finding tapOpens() {
        Survey survey = Samples.survey();
        Houses.supply(survey, "2.0 bar", "0.9 bar", "12 L/min");
        heater.setCutOutTemperature(null);
        return Houses.finding(survey, heater, "pressure.tapOpens");
    }

    private static double argument(Finding finding, String name) {
        return ((Number) finding.arguments().get(name)).doubleValue();
    }

    /** Rises from 5 degC go with one over the flow; water of 97 degC takes 1.005 times the heat per kelvin that it takes up to 40. */
    @Test
    void aSwitchAheadOfTheThrottleOpensAtItsBreakPressure() {
        Finding finding = tapOpens();
        assertEquals("opens", finding.variant());
        double held = Houses.step(finding, "R_h").value();
        double breakFlow = Math.sqrt(0.2 / (held - 0.15 / 64));
        assertEquals(breakFlow, argument(finding, "after"), 1e-9);
        double riseK = 35 * argument(finding, "before") / breakFlow;
        assertEquals(5 + riseK, Fixtures.value(finding), 0.01 * riseK);
    }

    /** Where it may be behind the throttle too the lower of both flows counts: the heat may stay on until then. */
    @Test
    void ofTwoPlacesTheOneCountsThatOpensLater() {
        double ahead = argument(tapOpens(), "after");
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        // (0.2 bar + 0.3 m of water) of the 0.4 bar at 8 L/min: 8 sqrt(0.2294 / 0.4) = 6.06 L/min.
        assertEquals(6.06, argument(tapOpens(), "after"), 0.005);
        heater.unsetSwitchPlace();
        assertEquals(ahead, argument(tapOpens(), "after"), 1e-9);
        assertEquals("opens", tapOpens().variant());
    }

    /** What a switch behind the throttle feels is not known: it is not counted on to end the heating, even if it may be ahead. */
    @Test
    void aSwitchOfWhichTooLittleIsKnownIsNotCountedOn() {
        heater.setDownstreamPressure(null);
        heater.unsetSwitchPlace();
        Finding unknown = tapOpens();
        assertTrue(argument(unknown, "after") < 1.5, "less than the 1.58 L/min at which a switch ahead opens");
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        assertEquals(argument(unknown, "after"), argument(tapOpens(), "after"), 1e-9);
        heater.setMakePressure(null);
        heater.setActivationFlow(null);
        assertEquals(argument(unknown, "after"), argument(tapOpens(), "after"), 1e-9);
    }

    /** The hose keeps a switch behind the throttle closed, 1 m of water against 0.05 bar: it never ends the heating. */
    @Test
    void aSwitchThatTheHoseKeepsClosedDoesNotEndIt() {
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        heater.setMakePressure(Pressure.valueOf("0.06 bar"));
        heater.setBreakPressure(Pressure.valueOf("0.05 bar"));
        Survey survey = Samples.survey();
        Houses.supply(survey, "2.0 bar", "0.9 bar", "12 L/min");
        survey.getWater().setLowestHandset(Length.valueOf("1 m"));
        heater.setCutOutTemperature(null);
        assertTrue(argument(Houses.finding(survey, heater, "pressure.tapOpens"), "after") < 1.5);
    }
}
