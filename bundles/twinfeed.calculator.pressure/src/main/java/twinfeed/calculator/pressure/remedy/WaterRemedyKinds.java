// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import java.util.List;
import twinfeed.calculator.RemedyKind;
import twinfeed.calculator.RemedyKind.Stage;

/** The kinds of work on the water supply, in the order in which they are proposed, with the price-book codes that they need. */
public final class WaterRemedyKinds {
    private static final String PUMP = "break-tank-pump";
    private static final String TEST_FIRST = "task-test-supply";

    public static final List<RemedyKind> ALL = List.of(
            RemedyKind.of("strainerClean", Stage.FITTING, "strainer-clean"),
            RemedyKind.of("hoseRetainer", Stage.FITTING, "hose-retainer"),
            RemedyKind.of("checkValve", Stage.FITTING, "check-valve"),
            RemedyKind.of("fullBoreValve", Stage.FITTING, "full-bore-valve"),
            RemedyKind.of("scaleInhibitor", Stage.FITTING, "scale-inhibitor"),
            RemedyKind.of("reducingValve", Stage.FITTING, "pressure-reducing-valve"),
            RemedyKind.of("branch", Stage.PIPE, "pipe-22", "pipe-fittings", "task-pipework", "making-good"),
            RemedyKind.of("ownBranch", Stage.PIPE, "own-branch", "pipe-22", "pipe-fittings", "making-good"),
            RemedyKind.of("repipeMain", Stage.PIPE, "main-branch", "pipe-22", "pipe-fittings", "making-good"),
            RemedyKind.of("servicePipe", Stage.OUTSIDE_PARTY, "service-pipe"),
            RemedyKind.of("breakTankPumpAfterValve", Stage.PUMP, PUMP, TEST_FIRST),
            RemedyKind.of("breakTankPumpAfterMain", Stage.PUMP, PUMP, TEST_FIRST),
            RemedyKind.of("breakTankPump", Stage.PUMP, PUMP));

    private WaterRemedyKinds() {}
}
