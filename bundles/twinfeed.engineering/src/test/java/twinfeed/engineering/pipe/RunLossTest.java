// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.KPA;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.water.Fluid;

/** The quick search for the flow through a run, held against the plain sum of the losses. */
class RunLossTest {
    private static final Fluid COLD = Fluid.waterAt(10);
    private static final PipeRun RUN = PipeRun.of(
            List.of(new PipeSegment(8, 13.6e-3, 0.0015e-3, 4, 0), new PipeSegment(3, 11.7e-3, 0.007e-3, 2, 0)), COLD);

    /** 60 kPa at 8 L/min. */
    private static final double OUTLET = 60 * KPA / Math.pow(8 * L_PER_MIN, 2);

    @ParameterizedTest
    @ValueSource(doubles = {5, 20, 60, 150, 300, 900})
    void theQuickSearchFindsTheFlowOfAUsualHouse(double kPa) {
        RunLoss loss = new RunLoss(RUN, OUTLET);
        assertTrue(loss.reached(kPa * KPA));
        double taken = RUN.lossPa(loss.flow) + OUTLET * loss.flow * loss.flow;
        assertEquals(kPa * KPA, taken, kPa * KPA * 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 9, 25})
    void theLossNearAFlowIsThatOfTheSegments(double litresPerMin) {
        RunLoss loss = new RunLoss(RUN, OUTLET);
        double flow = litresPerMin * L_PER_MIN;
        for (int step = 0; step < 4; step++) {
            loss.at(flow);
        }
        double expected = RUN.lossPa(flow) + OUTLET * flow * flow;
        assertEquals(expected, loss.loss.value, expected * 1e-9);
    }

    @Test
    void theStartOfASearchIsOfTheRightSize() {
        RunLoss loss = new RunLoss(RUN, OUTLET);
        assertTrue(loss.reached(100 * KPA));
        assertEquals(loss.flow, loss.likelyFlow(100 * KPA), loss.flow * 0.2);
    }

    /** Where the law changes between laminar and turbulent the quick search may jump to and fro; the bracket then finds the step. */
    @Test
    void aPressureInsideTheStepOfFrictionIsFoundByTheBracket() {
        PipeRun smooth = PipeRun.of(List.of(new PipeSegment(8, 13.6e-3, 0, 0, 0)), COLD);
        double stepFlow = 2000 * COLD.kinematicViscosityM2PerS() * Math.PI * 13.6e-3 / 4;
        double below = smooth.lossPa(stepFlow * (1 - 1e-9));
        double above = smooth.lossPa(stepFlow * (1 + 1e-9));
        assertTrue(above > below * 1.4);
        double between = (below + above) / 2;
        assertFalse(new RunLoss(smooth, 0).reached(between));
        SlopedValue found = new SlopedValue();
        smooth.flowAgainst(between, 0, found);
        assertEquals(stepFlow, found.value, stepFlow * 1e-9);
        smooth.flowAgainst(between + 1e9 * stepFlow * stepFlow, 1e9, found);
        assertEquals(stepFlow, found.value, stepFlow * 1e-9);
    }
}
