// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import java.util.Arrays;
import twinfeed.engineering.numeric.SlopedValue;

/**
 * The loss of a run with an outlet R Q^2 after it, asked at flows that come ever closer to one another: each friction factor
 * starts from that of the flow before, which costs one logarithm instead of three. Its error is of the order of the cube of the step
 * between the flows, so it is gone when a search for the flow ends.
 *
 * <p>Mutable: made for one search.
 */
public final class RunLoss {
    /** Flow, m3/s. */
    public double flow;

    /** Loss at that flow, Pa, and its slope, Pa s/m3. */
    public final SlopedValue loss = new SlopedValue();

    private static final int MOST_STEPS = 8;

    /** A step this small leaves an error of the order of its square. */
    private static final double LAST_STEP = 1e-7;

    private final PipeRun run;
    private final double paPerFlow2;
    private final double[] inverseRoots;

    public RunLoss(PipeRun run, double outletPaPerFlow2) {
        this.run = run;
        this.paPerFlow2 = run.fittingPaPerFlow2() + outletPaPerFlow2;
        this.inverseRoots = new double[run.boreCount()];
        Arrays.fill(inverseRoots, Colebrook.START);
    }

    /** Works out the loss at a flow, positive. */
    public void at(double newFlow) {
        flow = newFlow;
        double perFlow = paPerFlow2 * newFlow;
        loss.set(perFlow * newFlow, 2 * perFlow);
        for (int i = 0; i < inverseRoots.length; i++) {
            inverseRoots[i] = run.bore(i).addNear(newFlow, inverseRoots[i], loss);
        }
    }

    /**
     * Finds the flow that a pressure, Pa, positive, drives. The square root of the loss is nearly a straight line of the flow: Newton needs two
     * or three steps instead of four.
     *
     * @return whether it was found
     */
    boolean reached(double pressurePa) {
        double root = Math.sqrt(pressurePa);
        double next = likelyFlow(pressurePa);
        for (int step = 0; step < MOST_STEPS && next > 0 && next < Double.POSITIVE_INFINITY; step++) {
            at(next);
            double rootOfLoss = Math.sqrt(loss.value);
            double change = (root - rootOfLoss) * 2 * rootOfLoss / loss.slope;
            next += change;
            if (Math.abs(change) <= LAST_STEP * next) {
                flow = next;
                return true;
            }
        }
        return false;
    }

    /** A flow of about the size that a pressure, Pa, positive, drives, m3/s. */
    public double likelyFlow(double pressurePa) {
        return Math.sqrt(pressurePa / likelyPaPerFlow2());
    }

    /** Loss over the square of the flow with a friction factor of the usual size, Pa/(m3/s)2: for the start of a search. */
    public double likelyPaPerFlow2() {
        return paPerFlow2 + run.roughPaPerFlow2();
    }
}
