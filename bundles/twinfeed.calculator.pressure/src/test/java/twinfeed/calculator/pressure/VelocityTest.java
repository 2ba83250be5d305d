// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.units.Length;

/** Velocities in pipes against 2.0 m/s where a tap shares the pipe and 4.0 m/s where it leads to the shower alone (EN 806-3). */
class VelocityTest {
    private static Survey tapsBehindTheRisingMain() {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        return survey;
    }

    private static Finding velocity(Survey survey) {
        return Houses.finding(survey, Samples.heater(), "pressure.velocity");
    }

    /**
     * About 17 L/min in 20.2 mm are 0.9 m/s, 1.1 m/s or 55 % under their limit; 5 L/min in 6.7 mm are 2.4 m/s, 1.6 m/s or 40 % under
     * theirs. The second is nearer to its limit, though fewer metres a second are left in the first.
     */
    @Test
    void thePipeNearestToItsOwnLimitIsNamed() {
        Survey survey = tapsBehindTheRisingMain();
        survey.getWater().getSegments().get(1).setBore(Length.valueOf("20.2 mm"));
        survey.getWater().getSegments().get(2).setBore(Length.valueOf("6.7 mm"));
        Finding velocity = velocity(survey);
        assertEquals("shower branch", velocity.condition().subject());
        assertEquals(4.0, Fixtures.limit(velocity), 1e-12);
        double flow = ((Number) velocity.arguments().get("flow")).doubleValue();
        assertEquals(5, flow, 0.5);
        assertEquals(flow / 60_000 / (Math.PI * 0.0067 * 0.0067 / 4), Fixtures.value(velocity), 1e-9);
    }

    @Test
    void widerPipesAreOfferedWhereTheWaterIsTooFast() {
        Finding fast = velocity(tapsBehindTheRisingMain());
        assertEquals(Outcome.FAILS, fast.outcome());
        assertEquals(List.of("branch-22", "own-branch"), Fixtures.works(fast));
    }

    @Test
    void withoutAPipeAfterTheGaugeThereIsNoVelocity() {
        Survey survey = Samples.survey();
        Houses.gaugeAtHeater(survey);
        Finding velocity = velocity(survey);
        assertEquals(Outcome.NOT_APPLICABLE, velocity.outcome());
    }
}
