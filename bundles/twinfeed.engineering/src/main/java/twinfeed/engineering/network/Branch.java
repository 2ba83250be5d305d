// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.RunLoss;

/** Pipe from the tee to an outlet. */
record Branch(PipeRun run, Outlet outlet) {
    /** What the pressure at the tee has to pass before anything flows, Pa. */
    double backPa() {
        return run.risePa() + outlet.backPressurePa();
    }

    /** Its loss over the flow, for a search. */
    RunLoss loss() {
        return new RunLoss(run, outlet.resistancePaPerFlow2());
    }

    /** The flow that a pressure at the tee drives, and its slope. */
    void flowAt(double teePressurePa, SlopedValue out) {
        run.flowAgainst(teePressurePa - backPa(), outlet.resistancePaPerFlow2(), out);
    }
}
