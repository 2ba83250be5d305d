// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.units.Kind;

/**
 * Writes down a pipe in a round of a search: its loss over the square of the flow, with one Newton step for the friction factor
 * at the last flow.
 */
final class FrictionLines {
    /** Numerator over the Reynolds number in Colebrook-White. */
    static final double VISCOUS = 2.51;

    private static final int FIRST_ROOT = 6;

    private static final int FIRST_STEPS = 4;

    private static final String SQUARE = "bar/(L/min)²";
    private static final String DARCY = "Darcy-Weisbach";
    private static final String COLEBROOK = "Colebrook-White; 64/Re below Re = 2000, the larger of both up to 4000";

    private FrictionLines() {}

    /** What of a pipe does not depend on the flow. */
    static void addPipe(WorkingLines lines, NamedPipe piece, String at) {
        FeedWorking.addPipe(lines, piece, at);
        lines.step("w" + at, "velocityByFlow", FeedWorking.velocity("1", at), "m/s/(L/min)", "")
                .step("h" + at, "height", FeedWorking.height(at), "bar", "");
        if (piece.pipe().lengthM() > 0) {
            lines.step("a" + at, "colebrookA", "k" + at + " / D" + at + " / 3.7", "", COLEBROOK)
                    .step("c" + at, "reynoldsByFlow", "w" + at + " * D" + at + " / 1000 / nu", "1/(L/min)", "");
        }
    }

    /**
     * The loss over the square of the flow in a round, S, and half its rise with the flow over the flow, M, which is less because the
     * friction factor falls.
     *
     * @param round number of the round, which begins with 1, as it ends symbols
     * @return what ends the symbols of both
     */
    static String addSquare(WorkingLines lines, PipeSegment pipe, String of, String flow, int round) {
        String at = of + "_" + round;
        if (pipe.lengthM() <= 0) {
            lines.step(
                            "S" + at,
                            "square",
                            Kind.PRESSURE.inDisplayUnit("K" + of + " * rho * w" + of + "^2 / 2"),
                            SQUARE,
                            DARCY)
                    .step("M" + at, "squareSlope", "S" + at, SQUARE, DARCY);
            return at;
        }
        String reynolds = "max(1, c" + of + " * " + flow + ")";
        String b = "(" + VISCOUS + " / max(2000, c" + of + " * " + flow + "))";
        String before = round == 1 ? start(lines, of, flow) : "y" + of + "_" + (round - 1);
        lines.step("y" + at, "colebrookStep", FeedWorking.newton(before, "a" + of, b), "", COLEBROOK);
        // Still water has no friction factor; a Reynolds number of 1 stands for it, for the flow's square is 0 then.
        String turbulent = "1 / y" + at + "^2";
        String factor =
                "if(" + reynolds + " < 2000, 64 / " + reynolds + ", max(64 / " + reynolds + ", " + turbulent + "))";
        String dynamic = Kind.PRESSURE.inDisplayUnit(" * rho * w" + of + "^2 / 2");
        lines.step(
                "S" + at,
                "square",
                "(" + factor + " * L" + of + " / (D" + of + " / 1000) + K" + of + ")" + dynamic,
                SQUARE,
                DARCY);
        String rise = "(2 / ln(10) * " + b + " / (a" + of + " + " + b + " * y" + at + "))";
        String falls = "if(64 / " + reynolds + " >= " + turbulent + ", 0.5, " + rise + " / (1 + " + rise + "))";
        lines.step(
                "M" + at,
                "squareSlope",
                "S" + at + " - (S" + at + " - K" + of + dynamic + ") * " + falls,
                SQUARE,
                DARCY);
        return at;
    }

    /** Where the steps begin: 1/sqrt(f) at the trial flow, to three digits; any near value does. */
    private static String start(WorkingLines lines, String of, String flow) {
        double a = lines.value("a" + of);
        double b = VISCOUS / Math.max(2000, lines.value("c" + of) * lines.value(flow));
        double y = FIRST_ROOT;
        for (int step = 0; step < FIRST_STEPS; step++) {
            double left = y + 2 * Math.log10(a + b * y);
            y -= left / (1 + 2 / Math.log(10) * b / (a + b * y));
        }
        return String.valueOf(Math.rint(y * 100) / 100);
    }
}
