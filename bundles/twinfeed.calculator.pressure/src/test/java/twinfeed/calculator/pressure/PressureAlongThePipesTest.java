// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Series;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Ratio;

/** The pressure at each point of the pipes, against the sum of the losses worked out here by other formulas. */
final class PressureAlongThePipesTest {
    private static final double GRAVITY = 9.80665;

    /** Water of 5 °C: density 999.97 kg/m3 and viscosity 1.519 mPa s (IAPWS, from memory). */
    private static final double DENSITY = 999.97;

    private static final double VISCOSITY = 1.519e-3;
    private static final double ROUGHNESS_M = 1.5e-6;
    private static final double FLOW = 8 / 60_000.0;

    private final Survey survey = Samples.survey();
    private final Heater heater = Samples.heater();

    @BeforeEach
    void pressuresAreGivenAtEveryPoint() {
        for (PipeSegment pipe : survey.getWater().getSegments()) {
            pipe.setRoughness(Length.valueOf("0.0015 mm"));
            pipe.getFittings().forEach(fitting -> fitting.setK(Ratio.valueOf("4")));
        }
        heater.setRunningPressureFlow(Flow.valueOf("8 L/min"));
    }

    private Finding running() {
        return Houses.finding(survey, heater, "pressure.running");
    }

    private static Series curve(Finding finding, String key) {
        return finding.series().stream()
                .filter(series -> series.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Swamee and Jain's formula (1976) in place of Colebrook's equation; it is good to 1 % of the friction. */
    private static double lossPa(double lengthM, double boreM, double k) {
        double velocity = FLOW / (Math.PI * boreM * boreM / 4);
        double reynolds = DENSITY * velocity * boreM / VISCOSITY;
        double log = Math.log10(ROUGHNESS_M / boreM / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return (0.25 / (log * log) * lengthM / boreM + k) * DENSITY * velocity * velocity / 2;
    }

    @Test
    void everyPointIsTheSupplyLessTheLossesSoFar() {
        Series along = curve(running(), FeedProfile.RUNNING_PRESSURE);
        assertEquals(List.of(FeedProfile.START, "rising main", "shower branch"), along.labels());
        double atGauge = 3.0e5 - 1.2e5 * Math.pow(8 / 12.0, 1.85) + 0.3 * DENSITY * GRAVITY;
        double afterMain = atGauge - lossPa(5.5, 0.0136, 8) - 2.9 * DENSITY * GRAVITY;
        double atUnit = afterMain - lossPa(3.2, 0.0136, 4) - 1.1 * DENSITY * GRAVITY;
        assertEquals(atGauge, along.y()[0], 60);
        assertEquals(afterMain, along.y()[1], 200);
        assertEquals(atUnit, along.y()[2], 300);
        assertEquals(5.5, along.x()[1], 1e-9);
        assertEquals(8.7, along.x()[2], 1e-9);
    }

    @Test
    void itEndsInThePressureThatIsJudged() {
        Finding running = running();
        double[] along = curve(running, FeedProfile.RUNNING_PRESSURE).y();
        assertEquals(running.figures().value(), along[along.length - 1], 1e-6);
    }

    /** Where nothing flows only heights count: 4.0 m of water of 5 °C are 39.2 kPa. */
    @Test
    void withoutFlowOnlyTheHeightIsLost() {
        double[] along = curve(running(), FeedProfile.STATIC_PRESSURE).y();
        assertEquals(3.0e5 + 0.3 * DENSITY * GRAVITY, along[0], 30);
        assertEquals(39_226, along[0] - along[2], 30);
        assertTrue(along[0] > along[1] && along[1] > along[2]);
    }

    @Test
    void gaugeAtTheUnitLeavesOnePoint() {
        survey.getWater().getTest().setGaugeAfter("shower branch");
        Finding running = running();
        double[] along = curve(running, FeedProfile.RUNNING_PRESSURE).y();
        assertEquals(1, along.length);
        assertEquals(Fixtures.value(running), along[0] / 1e5, 1e-9);
    }
}
