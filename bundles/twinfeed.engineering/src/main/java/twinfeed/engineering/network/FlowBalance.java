// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import java.util.List;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.RunLoss;

/**
 * Newton's method for all flows of a network at once: what the supply leaves at the tee has to be what each branch takes. Three or four
 * steps from the start below, each with one evaluation of each pipe; a search over one flow with one for each branch inside takes four times as
 * long.
 *
 * <p>It gives up where a flow would turn round, where a flow keeps jumping across a step of friction, and where numbers leave their
 * range: the caller then brackets. What it finds is off by the order of the square of {@link #LAST_STEP}, relative: below a millionth
 * of a pascal in a house.
 *
 * <p>Mutable: made for one solve.
 */
final class FlowBalance {
    private static final int MOST_STEPS = 12;
    private static final double LAST_STEP = 1e-6;

    private final Supply supply;
    private final double fixedFlow;
    private final double risePa;
    private final RunLoss common;
    private final RunLoss[] branches;
    private final double[] backPa;
    private final SlopedValue atGauge = new SlopedValue();
    private double teePa;

    /**
     * Prepares the balance of a network.
     *
     * @param fixedFlow what is drawn at the tee besides the branches, m3/s
     */
    FlowBalance(Supply supply, PipeRun common, List<Branch> branches, double fixedFlow) {
        this.supply = supply;
        this.fixedFlow = fixedFlow;
        this.risePa = common.risePa();
        this.common = new RunLoss(common, 0);
        this.branches = new RunLoss[branches.size()];
        this.backPa = new double[branches.size()];
        for (int i = 0; i < backPa.length; i++) {
            this.branches[i] = branches.get(i).loss();
            this.backPa[i] = branches.get(i).backPa();
        }
    }

    /** Finds the flows; false where it gives up. */
    boolean found() {
        if (!started()) {
            return false;
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double change = step();
            if (change <= LAST_STEP) {
                return true;
            }
            if (!(change < Double.POSITIVE_INFINITY)) {
                return false;
            }
        }
        return false;
    }

    /** Pressure at the tee, Pa, as found. */
    double teePa() {
        return teePa;
    }

    /** Flows of the branches, m3/s, as found. */
    double[] flows() {
        double[] flows = new double[branches.length];
        for (int i = 0; i < flows.length; i++) {
            flows[i] = branches[i].flow;
        }
        return flows;
    }

    /**
     * A good start: every pipe taken as R Q^2, and all branches as one, with their mean back pressure.
     *
     * @return whether every branch has a flow there
     */
    private boolean started() {
        double conductance = 0;
        double back = 0;
        for (int i = 0; i < branches.length; i++) {
            double each = 1 / Math.sqrt(branches[i].likelyPaPerFlow2());
            conductance += each;
            back += each * backPa[i];
        }
        double k = 1 / (conductance * conductance);
        double startPa = supply.pressureAt(0) - risePa;
        double fall = common.likelyPaPerFlow2() + Gauge.likelyPaPerFlow2(supply);
        double drive = (k + fall) * (startPa - back / conductance) - k * fall * fixedFlow * fixedFlow;
        double total = (k * fixedFlow + Math.sqrt(drive)) / (k + fall);
        double likelyTeePa = startPa - fall * total * total;
        for (int i = 0; i < branches.length; i++) {
            branches[i].flow = branches[i].likelyFlow(likelyTeePa - backPa[i]);
            if (!(branches[i].flow > 0)) {
                return false;
            }
        }
        return true;
    }

    /**
     * One step for all flows.
     *
     * @return the largest change relative to its flow; infinite where a flow would turn round, or not a number
     */
    private double step() {
        double total = fixedFlow;
        for (RunLoss branch : branches) {
            total += branch.flow;
        }
        Gauge.at(supply, total, atGauge);
        common.at(total);
        double leftPa = atGauge.value - risePa - common.loss.value;
        double fall = common.loss.slope - atGauge.slope;
        double conductance = 0;
        double drawnMore = 0;
        for (int i = 0; i < branches.length; i++) {
            RunLoss branch = branches[i];
            branch.at(branch.flow);
            conductance += 1 / branch.loss.slope;
            drawnMore += (leftPa - backPa[i] - branch.loss.value) / branch.loss.slope;
        }
        teePa = leftPa - fall * drawnMore / (1 + fall * conductance);
        return change();
    }

    private double change() {
        double largest = 0;
        for (int i = 0; i < branches.length; i++) {
            RunLoss branch = branches[i];
            double change = (teePa - backPa[i] - branch.loss.value) / branch.loss.slope;
            largest = Math.max(
                    largest, -change < branch.flow ? Math.abs(change) / branch.flow : Double.POSITIVE_INFINITY);
            branch.flow += change;
        }
        return largest;
    }
}
