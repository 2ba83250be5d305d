// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;

class PipeTest {
    private static final Fluid COLD = Fluid.waterAt(10);
    private static final PipeSegment COPPER = new PipeSegment(8, 13.6e-3, 0.0015e-3, 4, 2.5);
    private static final PipeSegment PLASTIC = new PipeSegment(3, 11.7e-3, 0.007e-3, 2, -0.5);
    private static final PipeSegment VALVE = new PipeSegment(0, 10e-3, 0, 5, 0);

    @ParameterizedTest
    @CsvSource({"0, STILL", "1, LAMINAR", "1999.9, LAMINAR", "2000, CRITICAL", "4000, CRITICAL", "4000.1, TURBULENT"})
    void regimeFollowsTheReynoldsNumber(double reynolds, FlowRegime expected) {
        assertEquals(expected, Pipe.regime(reynolds));
    }

    @Test
    void velocityAndReynoldsNumber() {
        // 12 L/min in 13.6 mm: 0.2e-3 / (pi 0.0136^2 / 4) = 1.3768 m/s
        assertEquals(1.3768, Pipe.velocity(12 * L_PER_MIN, 13.6e-3), 1e-4);
        assertEquals(1.3768 * 13.6e-3 / 1.306e-6, Pipe.reynolds(12 * L_PER_MIN, 13.6e-3, COLD), 20);
    }

    @Test
    void partsAddUp() {
        double flow = 8 * L_PER_MIN;
        double loss = Pipe.frictionLossPa(COPPER, COLD, flow) + Pipe.fittingLossPa(COPPER, COLD, flow);
        assertEquals(
                loss + 2.5 * 999.7 * 9.80665, PipeRun.of(List.of(COPPER), COLD).totalPa(flow), 3);
        assertEquals(loss, COLD.pressureOfHead(Pipe.headLossM(COPPER, COLD, flow)), 1e-9);
    }

    @Test
    void noFlowHasNoLossButKeepsItsHeight() {
        assertEquals(0, Pipe.frictionLossPa(COPPER, COLD, 0));
        assertEquals(0, Pipe.fittingLossPa(COPPER, COLD, 0));
        assertEquals(
                Pipe.heightPa(COPPER, COLD), PipeRun.of(List.of(COPPER), COLD).totalPa(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1, 2, 3, 5, 8, 12, 20, 60})
    void aRunIsTheSumOfItsSegments(double litresPerMin) {
        double flow = litresPerMin * L_PER_MIN;
        List<PipeSegment> segments = List.of(COPPER, PLASTIC, COPPER, VALVE);
        PipeRun run = PipeRun.of(segments, COLD);
        double sum = segments.stream()
                .mapToDouble(segment -> Pipe.frictionLossPa(segment, COLD, flow)
                        + Pipe.fittingLossPa(segment, COLD, flow)
                        + Pipe.heightPa(segment, COLD))
                .sum();
        assertEquals(sum, run.totalPa(flow), Math.abs(sum) * 1e-13);
        assertEquals(sum - run.risePa(), run.frictionPa(flow) + run.fittingPa(flow), sum * 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 1.5, 3, 9, 40})
    void flowComesBackFromTheLoss(double litresPerMin) {
        double flow = litresPerMin * L_PER_MIN;
        PipeRun run = PipeRun.of(List.of(COPPER, PLASTIC), COLD);
        assertEquals(flow, run.flowAt(run.lossPa(flow)).value(), flow * 1e-12);
    }

    /** Pieces that share a bore but not a roughness, or a smooth wall but not a bore, keep their own friction factors. */
    @Test
    void onlyPipeOfOneBoreAndRoughnessIsTakenTogether() {
        double flow = 8 * L_PER_MIN;
        for (List<PipeSegment> run : List.of(
                List.of(new PipeSegment(5, 13.6e-3, 0, 0, 0), new PipeSegment(5, 20.2e-3, 0, 0, 0)),
                List.of(new PipeSegment(5, 13.6e-3, 0, 0, 0), new PipeSegment(5, 13.6e-3, 1e-4, 0, 0)),
                List.of(new PipeSegment(5, 13.6e-3, 0, 0, 0), new PipeSegment(5, 13.6e-3, 0, 0, 0)))) {
            double sum = run.stream()
                    .mapToDouble(segment -> Pipe.frictionLossPa(segment, COLD, flow))
                    .sum();
            assertEquals(sum, PipeRun.of(run, COLD).frictionPa(flow), 1e-9 * sum);
        }
    }

    @Test
    void flowAtTheStepOfTheCriticalRegimeIsItsPlace() {
        // Between the laminar and the turbulent loss at Re = 2000 no flow has exactly this loss: the step is the
        // answer.
        PipeRun run = PipeRun.of(List.of(COPPER), COLD);
        double stepFlow = 2000 * Math.PI / 4 * 13.6e-3 * COLD.kinematicViscosityM2PerS();
        double below = run.lossPa(stepFlow * (1 - 1e-9));
        double above = run.lossPa(stepFlow * (1 + 1e-9));
        assertEquals(stepFlow, run.flowAt((below + above) / 2).value(), stepFlow * 1e-12);
    }

    @Test
    void anEmptyRunHasNoLossAndNoFlowOfItsOwn() {
        PipeRun empty = PipeRun.of(List.of(), COLD);
        assertEquals(0, empty.totalPa(1e-3));
        assertEquals(Solution.none(FailureReason.NO_RESISTANCE), empty.flowAt(1));
        assertEquals(Solution.of(0), empty.flowAt(0));
        assertEquals(Solution.of(0), PipeRun.of(List.of(COPPER), COLD).flowAt(-1));
        double valveFlow = PipeRun.of(List.of(VALVE), COLD).flowAt(1e4).value();
        assertEquals(1e4, Pipe.fittingLossPa(VALVE, COLD, valveFlow), 1e-6);
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertRefused("lengthM", () -> new PipeSegment(-1, 0.01, 0, 0, 0));
        assertRefused("boreM", () -> new PipeSegment(1, 0, 0, 0, 0));
        assertRefused("roughnessM", () -> new PipeSegment(1, 0.01, 0.0006, 0, 0));
        assertRefused("k", () -> new PipeSegment(1, 0.01, 0, -1, 0));
        assertRefused("riseM", () -> new PipeSegment(1, 0.01, 0, 0, Double.NaN));
        assertRefused("reynolds", () -> Pipe.frictionFactor(0, 0));
        // The chart of Moody (1944) and Colebrook's formula end at 0.05.
        assertRefused("relativeRoughness", () -> Pipe.frictionFactor(5000, 0.0501));
        assertEquals(0.0719, Pipe.frictionFactor(1e7, 0.05), 0.001);
        assertRefused("flowM3PerS", () -> PipeRun.of(List.of(COPPER), COLD).totalPa(-1e-9));
        assertRefused("densityKgPerM3", () -> new Fluid(0, 1e-6));
        assertRefused("kinematicViscosityM2PerS", () -> new Fluid(1000, 0));
    }

    private static void assertRefused(String argument, Runnable call) {
        assertEquals(argument, assertThrows(DomainException.class, call::run).argument());
    }
}
