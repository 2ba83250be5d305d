// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;

/** Rounds that find the flow from the gauge which leaves a pressure {@code p_T} at a tee. */
final class TeeFlowRounds {
    private static final int TRIAL_DIGITS = 10;

    private final WorkingLines lines;
    private final List<NamedPipe> common;

    TeeFlowRounds(WorkingLines lines, List<NamedPipe> common) {
        this.lines = lines;
        this.common = common;
    }

    /** The first trial: what the program found, rounded. */
    String start(double totalM3PerS) {
        for (int i = 0; i < common.size(); i++) {
            FrictionLines.addPipe(lines, common.get(i), "_c" + (i + 1));
        }
        double rounded = new BigDecimal(totalM3PerS * FeedUnits.L_PER_MIN)
                .round(new MathContext(TRIAL_DIGITS))
                .doubleValue();
        lines.input("Qt_d0", "totalTrial", rounded, "L/min", "", "start.total");
        return "Qt_d0";
    }

    /** One round more; returns the corrected flow. */
    String add(String total, int round) {
        String at = "_d" + round;
        FeedWorking.addSupply(lines, total, at);
        List<String> squares = new ArrayList<>();
        List<String> slopes = new ArrayList<>();
        for (int i = 0; i < common.size(); i++) {
            String ending = FrictionLines.addSquare(lines, common.get(i).pipe(), "_c" + (i + 1), total, round);
            squares.add("S" + ending);
            slopes.add("M" + ending);
        }
        String supplySlope = "n" + at + " * (p_0 - p_s" + at + ") / " + total;
        String left = "p_s" + at + " - " + sum(squares) + " * " + total + "^2" + heights() + " - p_T";
        lines.step("E" + at, "teeLeftOver", left, "bar", "")
                .step("d" + at, "teeSlope", supplySlope + " + 2 * " + sum(slopes) + " * " + total, "bar/(L/min)", "")
                .step("Qt" + at, "totalFlow", total + " + E" + at + " / d" + at, "L/min", "Newton's step");
        return "Qt" + at;
    }

    private static String sum(List<String> terms) {
        return terms.isEmpty() ? "0" : "(" + String.join(" + ", terms) + ")";
    }

    private String heights() {
        StringBuilder heights = new StringBuilder();
        for (int i = 0; i < common.size(); i++) {
            heights.append(" - h_c").append(i + 1);
        }
        return heights.toString();
    }
}
