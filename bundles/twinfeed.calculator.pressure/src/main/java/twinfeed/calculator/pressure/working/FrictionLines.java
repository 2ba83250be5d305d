// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.engineering.pipe.PipeSegment;

/**
 * Writes down a pipe in a round of a search: its loss over the square of the flow, with one Newton step for the friction factor
 * at the last flow.
 */
final class FrictionLines {
    private static final double FIRST_ROOT = 6;

    /** From 6 three steps leave an error of some 1e-13. */
    private static final int FIRST_STEPS = 3;

    private static final String DARCY = "Darcy-Weisbach";
    private static final String COLEBROOK = "Colebrook-White; 64/Re below Re = 2000, the larger of both up to 4000";

    private FrictionLines() {}

    /** What of a pipe does not depend on the flow. */
    static void addPipe(WorkingLines lines, PipeSegment pipe, String at) {
        FeedWorking.addPipe(lines, pipe, at);
        lines.step("w" + at, "velocityByFlow", FeedWorking.velocity("1", at), "m/s/(L/min)", "")
                .step("h" + at, "height", FeedWorking.height(at), "bar", "");
        if (pipe.lengthM() > 0) {
            lines.step("a" + at, "colebrookA", "k" + at + " / D" + at + " / 3.7", "", COLEBROOK)
                    .step("c" + at, "reynoldsByFlow", "w" + at + " * D" + at + " / 1000 / nu", "1/(L/min)", "");
        }
    }

    /** The loss over the square of the flow in a round; returns its symbol. */
    static String addSquare(WorkingLines lines, PipeSegment pipe, String of, String flow, int round) {
        String symbol = "S" + of + "_" + round;
        String friction = "";
        if (pipe.lengthM() > 0) {
            addFriction(lines, of, flow, round);
            friction = "f" + of + "_" + round + " * L" + of + " / (D" + of + " / 1000) + ";
        }
        lines.step(
                symbol,
                "square",
                "(" + friction + "K" + of + ") * rho * w" + of + "^2 / 2 / 100000",
                "bar/(L/min)²",
                DARCY);
        return symbol;
    }

    /**
     * Still water has no friction factor; a Reynolds number of 1 stands for it, for the flow's square is 0 then. The turbulent law
     * is not asked below 2000, where it has no root to speak of.
     */
    private static void addFriction(WorkingLines lines, String of, String flow, int round) {
        String at = of + "_" + round;
        String reynolds = "max(1, c" + of + " * " + flow + ")";
        String turbulent = "max(64 / " + reynolds + ", 1 / y" + at + "^2)";
        lines.step("b" + at, "colebrookB", "2.51 / max(2000, c" + of + " * " + flow + ")", "", COLEBROOK);
        String before = round == 1 ? addFirstSteps(lines, of) : "y" + of + "_" + (round - 1);
        lines.step("y" + at, "colebrookStep", FeedWorking.newton(before, "a" + of, "b" + at), "", COLEBROOK)
                .step(
                        "f" + at,
                        "frictionFactor",
                        "if(" + reynolds + " < 2000, 64 / " + reynolds + ", " + turbulent + ")",
                        "",
                        COLEBROOK);
    }

    /** The first round takes the steps up to the last one at once; later ones start so near that one step does. */
    private static String addFirstSteps(WorkingLines lines, String of) {
        String from = Double.toString(FIRST_ROOT);
        for (int step = 1; step < FIRST_STEPS; step++) {
            String to = "y" + of + "_0" + step;
            lines.step(to, "colebrookStep", FeedWorking.newton(from, "a" + of, "b" + of + "_1"), "", COLEBROOK);
            from = to;
        }
        return from;
    }
}
