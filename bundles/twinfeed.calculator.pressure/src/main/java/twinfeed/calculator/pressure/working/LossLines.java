// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.units.Kind;

/** Writes down where the pressure is lost on the way to the unit. */
public final class LossLines {
    private static final String DARCY = "Darcy-Weisbach";

    private LossLines() {}

    /** Adds the four causes and their sum {@code dp}, after the lines of {@link FeedWorking#inlet}. */
    public static void add(WorkingLines lines, List<NamedPipe> run) {
        StringBuilder pipes = new StringBuilder("0");
        StringBuilder fittings = new StringBuilder("0");
        StringBuilder heights = new StringBuilder("0");
        Map<String, String> alike = new HashMap<>();
        for (int number = 1; number <= run.size(); number++) {
            NamedPipe piece = run.get(number - 1);
            String at = "_" + number;
            String like = alike.computeIfAbsent(FeedWorking.alike(piece), key -> at);
            String dynamic = Kind.PRESSURE.inDisplayUnit(" * rho * v" + like + "^2 / 2");
            if (piece.pipe().lengthM() > 0) {
                pipes.append(" + f" + like + " * L" + at + " / (D" + at + " / 1000)" + dynamic);
            }
            fittings.append(" + K" + at + dynamic);
            heights.append(" + " + FeedWorking.height(at));
        }
        lines.step("dp_supply", "loss.supply", "p_0 - p_s", "bar", "")
                .step("dp_pipe", "loss.pipe", pipes.toString(), "bar", DARCY)
                .step("dp_fittings", "loss.fittings", fittings.toString(), "bar", DARCY)
                .step("dp_height", "loss.height", "max(0, " + heights + ")", "bar", "")
                .step("dp", "lossSum", "dp_supply + dp_pipe + dp_fittings + dp_height", "bar", "");
    }
}
