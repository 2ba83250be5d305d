// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Survey;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** How much others may draw before the heat goes off, by where the switch is and what is known of it. */
class SwitchDropOutTest {
    private static Finding dropOut(Consumer<Survey> survey, Consumer<Heater> heater) {
        return Houses.finding("pressure.dropOut", survey, heater);
    }

    /** A switch that opens at 0.05 bar, behind the throttle at 0.4 bar (Q / 8 L/min)²: at 2.8 L/min. */
    private static Heater sensitive(Heater heater) {
        heater.setMakePressure(Pressure.valueOf("0.06 bar"));
        heater.setBreakPressure(Pressure.valueOf("0.05 bar"));
        return heater;
    }

    private static double drawOff(Consumer<Heater> place) {
        return Fixtures.value(dropOut(survey -> survey.getWater().setLowestHandset(Length.valueOf("0 m")), heater -> {
            place.accept(sensitive(heater));
        }));
    }

    @Test
    void whereThePlaceIsNotKnownTheSmallerDrawOffCounts() {
        double ahead = drawOff(heater -> heater.setSwitchPlace(SwitchPlace.INLET_CHAMBER));
        double behind = drawOff(heater -> heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER));
        assertTrue(ahead > 0 && behind > 0);
        assertNotEquals(ahead, behind, 0.5);
        assertEquals(Math.min(ahead, behind), drawOff(Heater::unsetSwitchPlace), 1e-9);
    }

    /** A handset 1 m over the heater leaves 0.098 bar of water in the hose, more than the 0.05 bar at which the switch opens. */
    @Test
    void aSwitchThatTheHoseKeepsClosedNeverOpens() {
        Finding never =
                dropOut(survey -> survey.getWater().setLowestHandset(Length.valueOf("1 m")), heater -> sensitive(heater)
                        .setSwitchPlace(SwitchPlace.HEATING_CHAMBER));
        assertEquals(Outcome.PASSES, never.outcome());
        assertNull(never.printed());
        assertEquals("No tap in the house draws enough to make the shower go cold.", Houses.words(never));
    }

    @Test
    void whatIsNotKnownOfTheSwitchIsNamed() {
        Consumer<Survey> asItIs = survey -> {};
        Finding nothing = dropOut(asItIs, heater -> {
            heater.setMakePressure(null);
            heater.setActivationFlow(null);
        });
        assertEquals(List.of("heater.makePressure"), nothing.missing());
        Finding behind = dropOut(asItIs, heater -> {
            heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
            heater.setDownstreamPressure(null);
        });
        assertEquals(List.of("heater.downstreamPressure"), behind.missing());
        Finding handset = dropOut(
                survey -> survey.getWater().setLowestHandset(null),
                heater -> heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER));
        assertEquals(List.of("survey.water.lowestHandset"), handset.missing());
    }

    /** A unit that builds up no pressure behind its throttle never closes a switch there. */
    @Test
    void aSwitchThatFeelsNothingIsOpenAlready() {
        Finding already = dropOut(survey -> {}, heater -> {
            heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
            heater.setDownstreamPressure(Pressure.valueOf("0 bar"));
        });
        assertEquals(Outcome.FAILS, already.outcome());
        assertEquals(0, Fixtures.value(already), 0);
        assertEquals("The shower is cold before any other tap is opened.", Houses.words(already));
    }
}
