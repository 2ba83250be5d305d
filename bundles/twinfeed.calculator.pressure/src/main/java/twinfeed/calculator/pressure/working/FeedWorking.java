// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.PipeOrigin;
import twinfeed.calculator.pressure.survey.TestOrigin;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Water;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/**
 * Writes down losses of pressure as on paper: pressures in bar, flows in L/min, bores in mm. The equation of Colebrook and White
 * is solved by Newton steps that stand one below the other, with what is left of the equation beside the last.
 */
public final class FeedWorking {
    static final String PI = "3.14159265358979";
    private static final String TEST = "survey.water.test.";
    private static final String WATER = "IAPWS R7-97(2012), fitted";
    private static final String COLEBROOK = "Colebrook-White; 64/Re below Re = 2000, the larger of both up to 4000";
    private static final String DARCY = "Darcy-Weisbach";
    private static final String CURVE = "form of NFPA 291, the pessimistic exponent on each side of the test";

    /** Where the Newton steps begin: 1/sqrt(f) of house pipes is between 4 and 8. */
    private static final double START = 6;

    /** Steps ahead of the last one: from 6 they leave an error below 1e-7 for every pipe, and the last one its square. */
    private static final int NEWTON_STEPS = 3;

    private FeedWorking() {}

    /** The water's density alone, {@code rho}. */
    public static void addDensity(WorkingLines lines, double intakeC) {
        addDensity(lines, intakeC, "");
    }

    /** The same with the origin of the temperature. */
    public static void addDensity(WorkingLines lines, double intakeC, String origin) {
        lines.input("T", "intake", intakeC, "°C", "", origin)
                .step("rho", "density", Water.densityExpression("T"), "kg/m³", WATER);
    }

    /** The water: density {@code rho} and viscosity {@code nu}. */
    public static void addWater(WorkingLines lines, double intakeC) {
        addWater(lines, intakeC, "");
    }

    /** The same with the origin of the temperature. */
    public static void addWater(WorkingLines lines, double intakeC, String origin) {
        addDensity(lines, intakeC, origin);
        lines.step("nu", "viscosity", Water.dynamicViscosityExpression("T") + " / rho", "m²/s", WATER);
    }

    /** The two-point test: {@code p_0}, {@code p_1} and {@code Q_1}. */
    public static void addTest(WorkingLines lines, SupplyCurve curve) {
        lines.input("p_0", "staticPressure", Kind.PRESSURE.amount(curve.staticPa()), "")
                .input("p_1", "runningPressure", Kind.PRESSURE.amount(curve.runningPa()), "")
                .input("Q_1", "testFlow", Kind.FLOW.amount(curve.testFlowM3PerS()), "");
    }

    /** The same from the readings of the test, where they are known. */
    public static void addTest(WorkingLines lines, Feed feed) {
        TestOrigin test = feed.test();
        if (test == null) {
            addTest(lines, feed.curve());
            return;
        }
        String head = "";
        if (test.heightM() != 0) {
            lines.input("T_m", "testTemperature", test.temperatureC(), "°C", "", test.temperatureOrigin())
                    .step("rho_m", "density", Water.densityExpression("T_m"), "kg/m³", WATER)
                    .input("z_m", "gaugeHeight", test.heightM(), "m", "", TEST + "gaugeHeight");
            head = Kind.PRESSURE.inDisplayUnit(" + rho_m * 9.80665 * z_m");
        }
        lines.input("p_r0", "staticReading", Kind.PRESSURE.amount(test.staticPa()), "", TEST + "staticPressure")
                .input("p_r1", "runningReading", Kind.PRESSURE.amount(test.runningPa()), "", TEST + "runningPressure")
                .step("p_0", "staticPressure", "p_r0" + head, "bar", "")
                // A fall smaller than the gauge can tell is a fall of nothing: a stiff supply.
                .step("p_1", "runningPressure", "min(p_r1" + head + ", p_0 * (1 - 0.000001))", "bar", "")
                .input("Q_1", "testFlow", Kind.FLOW.amount(feed.curve().testFlowM3PerS()), "", TEST + "flow");
    }

    /** The supply's pressure at a flow: exponent and pressure get the given ending. */
    public static void addSupply(WorkingLines lines, String flow, String ending) {
        lines.step("n" + ending, "exponent", "if(" + flow + " <= Q_1, 1.85, 2)", "", CURVE)
                .step(
                        "p_s" + ending,
                        "supplyPressure",
                        "p_0 - (p_0 - p_1) * (" + flow + " / Q_1)^n" + ending,
                        "bar",
                        CURVE);
    }

    /** What a pipe is: bore, length, roughness, sum of K and rise, with the given ending. */
    public static void addPipe(WorkingLines lines, NamedPipe piece, String ending) {
        PipeSegment pipe = piece.pipe();
        PipeOrigin origin = piece.origin();
        lines.input("D" + ending, "bore", DisplayUnit.MILLIMETRE.amount(pipe.boreM()), "", origin.of("bore"))
                .input("L" + ending, "length", pipe.lengthM(), "m", "", origin.of("length"))
                .input(
                        "k" + ending,
                        "roughness",
                        DisplayUnit.MILLIMETRE.amount(pipe.roughnessM()),
                        "",
                        origin.of("roughness"));
        addFittings(lines, piece, ending);
        lines.input("z" + ending, "rise", pipe.riseM(), "m", "", origin.rise());
    }

    private static void addFittings(WorkingLines lines, NamedPipe piece, String ending) {
        PipeOrigin origin = piece.origin();
        if (origin.fittings().isEmpty()) {
            lines.input("K" + ending, "fittings", piece.pipe().k(), "", "", origin.of("k"));
            return;
        }
        StringBuilder sum = new StringBuilder();
        for (int at = 0; at < origin.fittings().size(); at++) {
            PipeOrigin.Fitting fitting = origin.fittings().get(at);
            String k = "K" + ending + "_" + (at + 1);
            lines.input(k, "fitting", fitting.k(), "", "", fitting.origin());
            sum.append(sum.isEmpty() ? "" : " + ");
            if (fitting.counted()) {
                String count = "n" + ending + "_" + (at + 1);
                lines.input(count, "fittingCount", fitting.count(), "", "", origin.count(at));
                sum.append(count).append(" * ");
            }
            sum.append(k);
        }
        lines.step("K" + ending, "fittings", sum.toString(), "", "");
    }

    /** Velocity of a flow, L/min, in a pipe. */
    public static String velocity(String flow, String ending) {
        return Kind.FLOW.inSi(flow) + " / (" + PI + " * (D" + ending + " / 1000)^2 / 4)";
    }

    /** Height of a pipe as a pressure, bar. */
    public static String height(String ending) {
        return Kind.PRESSURE.inDisplayUnit("rho * 9.80665 * z" + ending);
    }

    /**
     * The loss of a pipe at a flow symbol, L/min: adds velocity, Reynolds number, friction factor and the loss {@code dp} with
     * the ending, friction, fittings and rise together.
     *
     * @param like ending of a pipe of the same bore and roughness at the same flow, whose factor serves again, or the pipe's own
     */
    public static void addLoss(WorkingLines lines, PipeSegment pipe, String flow, String ending, String like) {
        boolean own = like.equals(ending);
        if (own) {
            lines.step("v" + ending, "velocity", velocity(flow, ending), "m/s", "");
            addFactor(lines, ending);
        }
        String friction = pipe.lengthM() > 0 ? "f" + like + " * L" + ending + " / (D" + ending + " / 1000) + " : "";
        lines.step(
                "dp" + ending,
                "pipeLoss",
                Kind.PRESSURE.inDisplayUnit("(" + friction + "K" + ending + ") * rho * v" + like + "^2 / 2") + " + "
                        + height(ending),
                "bar",
                DARCY);
    }

    private static void addFactor(WorkingLines lines, String ending) {
        lines.step("Re" + ending, "reynolds", "v" + ending + " * D" + ending + " / 1000 / nu", "", "");
        addColebrook(lines, ending);
        lines.step(
                "f" + ending,
                "frictionFactor",
                "if(Re" + ending + " < 2000, 64 / Re" + ending + ", max(64 / Re" + ending + ", 1 / x" + ending + "^2))",
                "",
                COLEBROOK);
    }

    /** Newton steps for x = 1/sqrt(f) in x + 2 lg(a + b x) = 0, and what is left of it. */
    private static void addColebrook(WorkingLines lines, String ending) {
        lines.step("a" + ending, "colebrookA", "k" + ending + " / D" + ending + " / 3.7", "", COLEBROOK)
                .step(
                        "b" + ending,
                        "colebrookB",
                        FrictionLines.VISCOUS + " / max(2000, Re" + ending + ")",
                        "",
                        COLEBROOK);
        String from = Double.toString(START);
        for (int step = 1; step <= NEWTON_STEPS; step++) {
            String to = "x" + ending + "_" + step;
            lines.step(to, "colebrookStep", newton(from, "a" + ending, "b" + ending), "", COLEBROOK);
            from = to;
        }
        lines.step("x" + ending, "colebrookRoot", newton(from, "a" + ending, "b" + ending), "", COLEBROOK)
                .step(
                        "res" + ending,
                        "colebrookResidual",
                        residual("x" + ending, "a" + ending, "b" + ending),
                        "",
                        COLEBROOK);
    }

    /** What is left of the equation at a value of x, with the symbols of its two terms. */
    private static String residual(String x, String a, String b) {
        return x + " + 2 * ln(" + a + " + " + b + " * " + x + ") / ln(10)";
    }

    /** Newton's step for x = 1/sqrt(f) in x + 2 lg(a + b x) = 0. */
    static String newton(String x, String a, String b) {
        return x + " - (" + residual(x, a, b) + ") / (1 + 2 / ln(10) * " + b + " / (" + a + " + " + b + " * " + x
                + "))";
    }

    /** Pressure at the inlet, bar, as {@code p_in}, for a flow {@code Q} that is among the lines, all taps shut. */
    static void addInlet(WorkingLines lines, Feed feed) {
        addTest(lines, feed);
        addSupply(lines, "Q", "");
        addRun(lines, feed.run(), "Q", "p_s", 1, "p_in");
    }

    /** Pipes one after another at a flow symbol, and the pressure that is left at their end. */
    public static void addRun(
            WorkingLines lines, List<NamedPipe> run, String flow, String from, int firstNumber, String result) {
        String losses = addLosses(lines, run, flow, "_", firstNumber, " - ");
        lines.step(result, "inletPressure", from + losses, "bar", "");
    }

    /** The same backwards: the pressure that has to be there at the start, at a tee, to leave a pressure at the end. */
    static void addRunBack(WorkingLines lines, List<NamedPipe> run, String flow, String from, String result) {
        String losses = addLosses(lines, run, flow, "_b", 1, " + ");
        lines.step(result, "teePressure", from + losses, "bar", "");
    }

    /** What pipes have in common that share a friction factor: the same bore and roughness, by the same origins. */
    static String alike(NamedPipe piece) {
        return piece.pipe().boreM()
                + " "
                + piece.pipe().roughnessM()
                + " "
                + piece.origin().of("bore");
    }

    private static String addLosses(
            WorkingLines lines, List<NamedPipe> run, String flow, String prefix, int firstNumber, String sign) {
        StringBuilder losses = new StringBuilder();
        Map<String, String> factors = new HashMap<>();
        int number = firstNumber;
        for (NamedPipe piece : run) {
            String ending = prefix + number++;
            PipeSegment pipe = piece.pipe();
            addPipe(lines, piece, ending);
            String like = factors.computeIfAbsent(alike(piece), key -> ending);
            addLoss(lines, pipe, flow, ending, like);
            losses.append(sign).append("dp").append(ending);
        }
        return losses.toString();
    }

    /** Pressure at the inlet at a flow, m3/s, with all taps shut. */
    public static Working inlet(FeedConditions feed, int intake, double flowM3PerS, String flowOrigin) {
        WorkingLines lines = new WorkingLines().input("Q", "unitFlow", Kind.FLOW.amount(flowM3PerS), "", flowOrigin);
        addWater(lines, feed.intakeC(intake), feed.intakeOrigin(intake));
        addInlet(lines, feed.feed());
        return lines.build();
    }
}
