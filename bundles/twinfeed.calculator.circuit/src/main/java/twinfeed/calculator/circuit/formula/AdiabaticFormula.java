// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.numeric.Solution;
import twinfeed.units.Kind;

/** The protective conductor that a fault asks for, by let-through energy or by current and time. */
public final class AdiabaticFormula {
    static final Formula FORMULA = new Formula(
            "adiabatic",
            List.of(
                    Parameter.absent("energy", Kind.LET_THROUGH, 1, 1e9),
                    FormulaParameters.CURRENT,
                    Parameter.absent("loop", Kind.RESISTANCE, 0.001, 10_000),
                    Parameter.absent("time", Kind.DURATION, 0.001, 100),
                    Parameter.absent("k", Kind.RATIO, 20, 250),
                    Parameter.absent("size", Kind.AREA, 0.5e-6, 1000e-6),
                    FormulaParameters.NOMINAL,
                    FormulaParameters.RULES),
            AdiabaticFormula::answer);

    private AdiabaticFormula() {}

    private static Answer answer(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        double k = given.ruled("k", "k");
        Working.Builder working = Working.start()
                .input("k", "materialFactor", k, "", given.rules().source("k"));
        return given.has("energy") ? byEnergy(given, working, k) : byTime(given, working, k);
    }

    private static Answer byEnergy(FormulaArguments given, Working.Builder working, double k) {
        working.input("E", "letThrough", given.si("energy"), "A²s", "")
                .step(
                        "S",
                        "neededConductor",
                        "sqrt(E) / k",
                        "mm²",
                        given.rules().text("cite.adiabatic"));
        return result(given, working, Protection.areaForLetThroughMm2(given.si("energy"), k), new ArrayList<>());
    }

    private static Answer byTime(FormulaArguments given, Working.Builder working, double k) {
        if (!given.has("time")) {
            throw FormulaRefusal.ofCall("fault");
        }
        faultCurrent(given, working);
        double timeS = given.si("time");
        Solution area = Protection.adiabaticAreaMm2(working.value("I"), timeS, k);
        if (!area.isPresent()) {
            return Answer.none("letThroughNeeded", working.build());
        }
        working.input("t", "disconnectionTime", timeS, "s", "")
                .step(
                        "S",
                        "neededConductor",
                        "sqrt(I^2 * t) / k",
                        "mm²",
                        given.rules().text("cite.adiabatic"));
        List<Answer.Result> more = new ArrayList<>();
        more.add(new Answer.Result("faultCurrent", Kind.CURRENT, working.value("I")));
        if (given.has("size")) {
            double standsS = Protection.adiabaticTimeS(SiValues.mm2(given.si("size")), working.value("I"), k);
            more.add(new Answer.Result("withstandTime", Kind.DURATION, standsS));
        }
        return result(given, working, area.value(), more);
    }

    private static void faultCurrent(FormulaArguments given, Working.Builder working) {
        given.need("current", "loop");
        if (given.has("current")) {
            working.input("I", "faultCurrent", given.si("current"), "A", "");
        } else {
            working.input("U0", "nominalVoltage", given.nominalV(), "V", "")
                    .input("Zs", "loopImpedance", given.si("loop"), "Ω", "")
                    .step("I", "faultCurrent", "U0 / Zs", "A", "");
        }
    }

    private static Answer result(
            FormulaArguments given, Working.Builder working, double areaMm2, List<Answer.Result> more) {
        List<Answer.Result> results = new ArrayList<>();
        results.add(new Answer.Result("conductor", Kind.AREA, areaMm2 / 1e6));
        results.addAll(more);
        Answer answer = Answer.of(working.build(), results.toArray(new Answer.Result[0]));
        return given.has("size") && LimitType.fallsShort(SiValues.mm2(given.si("size")), areaMm2)
                ? answer.warned("conductorTooThin")
                : answer;
    }
}
