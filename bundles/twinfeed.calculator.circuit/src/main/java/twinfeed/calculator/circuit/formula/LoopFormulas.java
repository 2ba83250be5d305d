// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.List;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.survey.LoopLimit;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.engineering.cable.Protection;
import twinfeed.units.Kind;

/** Loop impedance, its limits, and the electrode. */
public final class LoopFormulas {
    static final Formula LOOP = new Formula(
            "loop",
            List.of(
                    FormulaParameters.ZE,
                    FormulaParameters.MAYBE_SIZE,
                    FormulaParameters.CPC,
                    FormulaParameters.LINE,
                    FormulaParameters.LENGTH,
                    FormulaParameters.HOT,
                    FormulaParameters.OWN_LIMIT,
                    FormulaParameters.CABLE,
                    FormulaParameters.RULES),
            LoopFormulas::loop);

    static final Formula LIMIT = new Formula(
            "device-limit",
            List.of(
                    FormulaParameters.DEVICE,
                    FormulaParameters.MAYBE_RATING,
                    FormulaParameters.OWN_LIMIT,
                    FormulaParameters.NOMINAL,
                    FormulaParameters.CMIN,
                    FormulaParameters.MULTIPLE,
                    FormulaParameters.RULES),
            LoopFormulas::limit);

    static final Formula ELECTRODE = new Formula(
            "electrode",
            List.of(
                    Parameter.required("residual", Kind.CURRENT, 0.001, 10),
                    Parameter.absent("resistance", Kind.RESISTANCE, 0, 100e3),
                    Parameter.absent("touch", Kind.VOLTAGE, 1, 200),
                    FormulaParameters.RULES),
            LoopFormulas::electrode);

    private LoopFormulas() {}

    private static Answer loop(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        double lineOhmPerM = given.lineOhmPerM();
        double lengthM = given.si("length");
        double hot = given.ruled("hot", "hot.factor");
        double coldOhm = Protection.r1r2Ohm(lengthM, lineOhmPerM, 1);
        double hotOhm = Protection.r1r2Ohm(lengthM, lineOhmPerM, hot);
        double zeOhm = given.si("ze");
        String table = given.has("line") ? "" : given.rules().tableSource("conductors");
        Working working = Working.start()
                .input("Ze", "externalLoop", zeOhm, "Ω", "")
                .input("z", "loopGradient", Kind.GRADIENT_RESISTANCE.amount(lineOhmPerM), table)
                .input("L", "length", lengthM, "m", "")
                .step("R12", "coldLoop", "z * L / 1000", "Ω", "")
                .input("h", "hotFactor", hot, "", given.rules().source("hot.factor"))
                .step("Zs", "loopImpedance", "Ze + h * R12", "Ω", given.rules().text("cite.loop"))
                .build();
        Answer answer = Answer.of(
                working,
                new Answer.Result("loop", Kind.RESISTANCE, Protection.loopImpedanceOhm(zeOhm, hotOhm)),
                new Answer.Result("coldLoop", Kind.RESISTANCE, Protection.loopImpedanceOhm(zeOhm, coldOhm)),
                new Answer.Result("line", Kind.RESISTANCE, hotOhm),
                new Answer.Result("coldLine", Kind.RESISTANCE, coldOhm));
        double loopOhm = Protection.loopImpedanceOhm(zeOhm, hotOhm);
        return given.has("zmax") && LimitType.exceeds(loopOhm, given.si("zmax"))
                ? answer.warned("loopAboveLimit")
                : answer;
    }

    /** Adds the lines that end in the limit Zmax; false where the rule set has none for the device. */
    static boolean limit(FormulaArguments given, Working.Builder working, double ratingA) {
        if (given.has("zmax")) {
            working.input("Zmax", "loopLimit", given.si("zmax"), "Ω", "");
            return true;
        }
        DeviceKind kind = given.device();
        boolean instant = given.has("multiple") || kind.multiple().isPresent();
        if (instant) {
            double multiple = given.has("multiple")
                    ? given.si("multiple")
                    : kind.multiple().getAsDouble();
            working.input("U0", "nominalVoltage", given.nominalV(), "V", "")
                    .input(
                            "Cmin",
                            "leastVoltageFactor",
                            given.ruled("cmin", "cmin"),
                            "",
                            given.rules().source("cmin"))
                    .input("m", "tripMultiple", multiple, "", given.rules().tableSource("devices"))
                    .input("In", "deviceRating", ratingA, "A", "")
                    .step(
                            "Zmax",
                            "loopLimit",
                            "Cmin * U0 / (m * In)",
                            "Ω",
                            given.rules().text("cite.loop"));
            return true;
        }
        Double tabulated = LoopLimit.ohm(given.rules(), kind, ratingA);
        if (tabulated != null) {
            working.input("Zmax", "loopLimit", tabulated, "Ω", given.rules().tableSource("loop"));
        }
        return tabulated != null;
    }

    private static Answer limit(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        given.need("rating", "zmax");
        Working.Builder working = Working.start();
        if (!limit(given, working, given.has("rating") ? given.si("rating") : 0)) {
            return Answer.none("noLoopLimit", working.build());
        }
        double limitOhm = working.value("Zmax");
        double share = given.rules().number("measured.factor");
        return Answer.of(
                working.build(),
                new Answer.Result("loopLimit", Kind.RESISTANCE, limitOhm),
                new Answer.Result("coldLimit", Kind.RESISTANCE, share * limitOhm));
    }

    private static Answer electrode(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        double residualA = given.si("residual");
        double touchV = given.ruled("touch", "touch.voltage");
        String cite = given.rules().text("cite.electrode");
        Working.Builder working = Working.start()
                .input("Umax", "touchLimit", touchV, "V", cite)
                .input("IdN", "ratedResidual", residualA, "A", "")
                .step("Rmax", "electrodeLimit", "Umax / IdN", "Ω", cite);
        Answer.Result limit =
                new Answer.Result("electrodeLimit", Kind.RESISTANCE, Protection.electrodeLimitOhm(touchV, residualA));
        if (!given.has("resistance")) {
            return Answer.of(working.build(), limit);
        }
        double electrodeOhm = given.si("resistance");
        working.input("RA", "electrode", electrodeOhm, "Ω", "").step("Ut", "touchVoltage", "RA * IdN", "V", cite);
        Answer answer = Answer.of(
                working.build(), limit, new Answer.Result("touchVoltage", Kind.VOLTAGE, electrodeOhm * residualA));
        if (LimitType.exceeds(electrodeOhm * residualA, touchV)) {
            answer = answer.warned("electrodeTooHigh");
        }
        return LimitType.exceeds(electrodeOhm, given.rules().number("electrode.stable"))
                ? answer.warned("electrodeUnsteady")
                : answer;
    }
}
