// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** A shower 40 m over a gauge that shows 3 bar, the pressure of 31 m of water: nothing runs, and that is what is said. */
class NoWaterReachesTheHeaterTest {
    private final Survey survey = Samples.survey();
    private final Heater heater = Samples.heater();

    @BeforeEach
    void theShowerIsHigherThanTheSupplyReaches() {
        survey.getWater().getSegments().get(2).setRise(Length.valueOf("40 m"));
    }

    private Finding finding(String check) {
        return Houses.finding(survey, heater, check);
    }

    @Test
    void noRunningPressureIsLeft() {
        assertEquals("none", finding("pressure.running").variant());
        assertEquals("none", finding("pressure.throttle").variant());
    }

    @Test
    void noFlowIsAvailableAndNothingIsWorkedOut() {
        Finding available = finding("pressure.available");
        assertEquals(0, Fixtures.value(available), 0);
        assertEquals(List.of(), available.working().steps());
    }

    /** Without any flow there is no outlet temperature to work out; the value stands at the boiling point. */
    @Test
    void heatWithoutFlowBoilsAndNothingIsWorkedOut() {
        for (String check : List.of("pressure.summer", "pressure.summerLow")) {
            Finding summer = finding(check);
            assertEquals(Outcome.FAILS, summer.outcome());
            assertEquals(100, Fixtures.value(summer), 0);
            assertEquals(List.of(), summer.working().steps());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pressure.dropOut", "pressure.tapOpens", "pressure.scald"})
    void whatTapsDoToItDoesNotMatter(String check) {
        Finding finding = finding(check);
        assertEquals(Outcome.NOT_APPLICABLE, finding.outcome());
        assertEquals(
                "The water does not reach the heater, even with all taps shut: see the running pressure.",
                Houses.words(finding));
    }

    /** Also where a heater holds its flow by itself and only what it needs for that is known. */
    @Test
    void aHeaterThatHoldsItsFlowHasNoneToHold() {
        heater.setStabilised(true);
        heater.setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
        heater.setRunningPressureFlow(null);
        assertEquals("noWater", finding("pressure.tapOpens").variant());
        assertTrue(finding("pressure.tapOpens").missing().isEmpty());
    }
}
