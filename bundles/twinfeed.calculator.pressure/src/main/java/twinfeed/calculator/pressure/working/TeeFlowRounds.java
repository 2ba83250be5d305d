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
            FrictionLines.addPipe(lines, common.get(i).pipe(), "_c" + (i + 1));
        }
        double rounded = new BigDecimal(totalM3PerS * FeedUnits.L_PER_MIN)
                .round(new MathContext(TRIAL_DIGITS))
                .doubleValue();
        lines.input("Qt_d0", "totalTrial", rounded, "L/min", "");
        return "Qt_d0";
    }

    /** One round more; returns the mended flow. */
    String add(String total, int round) {
        String at = "_d" + round;
        FeedWorking.addSupply(lines, total, at);
        String square = addSquare(total, round);
        String supplySlope = "n" + at + " * (p_0 - p_1) / Q_1 * (" + total + " / Q_1)^(n" + at + " - 1)";
        String left = "p_s" + at + " - " + square + " * " + total + "^2" + heights() + " - p_T";
        lines.step("E" + at, "teeLeftOver", left, "bar", "")
                .step("d" + at, "teeSlope", supplySlope + " + 2 * " + square + " * " + total, "bar/(L/min)", "")
                .step("Qt" + at, "totalFlow", total + " + E" + at + " / d" + at, "L/min", "Newton's step");
        return "Qt" + at;
    }

    private String addSquare(String total, int round) {
        List<String> squares = new ArrayList<>();
        for (int i = 0; i < common.size(); i++) {
            squares.add(FrictionLines.addSquare(lines, common.get(i).pipe(), "_c" + (i + 1), total, round));
        }
        return squares.isEmpty() ? "0" : "(" + String.join(" + ", squares) + ")";
    }

    private String heights() {
        StringBuilder heights = new StringBuilder();
        for (int i = 0; i < common.size(); i++) {
            heights.append(" - h_c").append(i + 1);
        }
        return heights.toString();
    }
}
