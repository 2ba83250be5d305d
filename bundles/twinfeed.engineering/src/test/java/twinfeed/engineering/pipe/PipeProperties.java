// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import twinfeed.engineering.water.Fluid;

/** Laws of pipes that hold for any house, also across the critical regime. */
class PipeProperties {
    @Property(seed = "1", tries = 2000)
    void lossRisesWithTheFlow(
            @ForAll @DoubleRange(min = 1, max = 20_000) @Scale(12) double reynolds,
            @ForAll @DoubleRange(min = 1e-6, max = 0.5) @Scale(12) double more,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(12) double relativeRoughness) {
        assertTrue(loss(reynolds, relativeRoughness) < loss(reynolds * (1 + more), relativeRoughness));
    }

    @Property(seed = "2")
    void lossRisesAcrossBothEndsOfTheCriticalRegime(
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(12) double relativeRoughness,
            @ForAll @DoubleRange(min = 1e-9, max = 0.1) @Scale(12) double apart) {
        for (double edge : List.of(Pipe.LAMINAR_BELOW, Pipe.TURBULENT_ABOVE)) {
            assertTrue(loss(edge * (1 - apart), relativeRoughness) < loss(edge, relativeRoughness));
            assertTrue(loss(edge, relativeRoughness) < loss(edge * (1 + apart), relativeRoughness));
        }
    }

    /** Loss over everything that does not depend on the flow: f Re^2. */
    private static double loss(double reynolds, double relativeRoughness) {
        return Pipe.frictionFactor(reynolds, relativeRoughness) * reynolds * reynolds;
    }

    @Property(seed = "3", tries = 2000)
    void colebrookIsSolvedToRounding(
            @ForAll @DoubleRange(min = 2000, max = 1e8) @Scale(12) double reynolds,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(12) double relativeRoughness) {
        double root = 1 / Math.sqrt(Pipe.frictionFactor(reynolds, relativeRoughness));
        double right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 * root / reynolds);
        assertEquals(root, right, 1e-14 * root);
    }

    @Property(seed = "4")
    void aWiderBoreLosesLess(
            @ForAll @DoubleRange(min = 0.006, max = 0.04) @Scale(12) double boreM,
            @ForAll @DoubleRange(min = 1.001, max = 2) @Scale(12) double wider,
            @ForAll @DoubleRange(min = 1e-6, max = 5e-4) @Scale(12) double flow,
            @ForAll @DoubleRange(min = 0.5, max = 30) @Scale(12) double temperatureC) {
        Fluid fluid = Fluid.waterAt(temperatureC);
        PipeSegment narrow = new PipeSegment(5, boreM, 0.0015e-3, 3, 0);
        PipeSegment wide = new PipeSegment(5, boreM * wider, 0.0015e-3, 3, 0);
        assertTrue(PipeRun.of(List.of(wide), fluid).totalPa(flow)
                < PipeRun.of(List.of(narrow), fluid).totalPa(flow));
    }

    @Property(seed = "5")
    void roughnessAndLengthOnlyAdd(
            @ForAll @DoubleRange(min = 1e-6, max = 5e-4) @Scale(12) double flow,
            @ForAll @DoubleRange(min = 0, max = 0.0004) @Scale(12) double roughnessM,
            @ForAll @DoubleRange(min = 0, max = 0.0002) @Scale(12) double moreM) {
        Fluid fluid = Fluid.waterAt(10);
        double smooth = Pipe.frictionLossPa(new PipeSegment(5, 0.0136, roughnessM, 0, 0), fluid, flow);
        double rough = Pipe.frictionLossPa(new PipeSegment(5, 0.0136, roughnessM + moreM, 0, 0), fluid, flow);
        double twice = Pipe.frictionLossPa(new PipeSegment(10, 0.0136, roughnessM, 0, 0), fluid, flow);
        assertTrue(rough >= smooth);
        assertEquals(2 * smooth, twice, twice * 1e-12);
    }

    @Property(seed = "6")
    void flowComesBackFromTheLoss(
            @ForAll @DoubleRange(min = 1e-7, max = 1e-3) @Scale(12) double flow,
            @ForAll @DoubleRange(min = 0.006, max = 0.04) @Scale(12) double boreM,
            @ForAll @DoubleRange(min = 0, max = 20) @Scale(12) double k) {
        PipeRun run = PipeRun.of(List.of(new PipeSegment(5, boreM, 0.0015e-3, k, 1)), Fluid.waterAt(10));
        assertEquals(flow, run.flowAt(run.lossPa(flow)).value(), flow * 1e-10);
    }
}
