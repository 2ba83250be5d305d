// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.FuseCurves;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.cable.FuseCurve;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.numeric.Solution;
import twinfeed.units.Kind;

/** A fuse by time: the conductor that it asks for at a time, and the longest time that a conductor allows. */
final class FuseFormula {
    static final Formula FORMULA = new Formula(
            "fuse",
            List.of(
                    Parameter.word("device", "fuse-3036"),
                    FormulaParameters.RATING,
                    Parameter.absent("time", Kind.DURATION, 0.001, 100),
                    Parameter.absent("size", Kind.AREA, 0.5e-6, 1000e-6),
                    Parameter.absent("k", Kind.RATIO, 20, 250),
                    FormulaParameters.RULES),
            FuseFormula::answer);

    private FuseFormula() {}

    private static Answer answer(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        given.need("time", "size");
        String kind = given.device().key();
        @Nullable FuseCurve curve = FuseCurves.of(given.rules(), kind, given.si("rating"));
        if (curve == null) {
            return Answer.none("noFuseCurve", Working.none());
        }
        double k = given.ruled("k", "k");
        return given.has("time") ? byTime(given, curve, k) : bySize(given, curve, k);
    }

    private static Answer byTime(FormulaArguments given, FuseCurve curve, double k) {
        double timeS = given.si("time");
        if (timeS < curve.shortestS() || timeS > curve.longestS()) {
            throw FormulaRefusal.of(
                    "time", seconds(timeS), "time", seconds(curve.shortestS()), seconds(curve.longestS()));
        }
        double currentA = curve.currentA(timeS);
        List<Answer.Result> results = new ArrayList<>();
        results.add(new Answer.Result("conductor", Kind.AREA, currentA * Math.sqrt(timeS) / k / 1e6));
        results.add(new Answer.Result("faultCurrent", Kind.CURRENT, currentA));
        Answer answer = Answer.of(working(given, currentA, timeS, k), results.toArray(new Answer.Result[0]));
        boolean thin = given.has("size") && SiValues.mm2(given.si("size")) < currentA * Math.sqrt(timeS) / k;
        return thin ? answer.warned("conductorTooThin") : answer;
    }

    private static Answer bySize(FormulaArguments given, FuseCurve curve, double k) {
        double sizeMm2 = SiValues.mm2(given.si("size"));
        Solution timeS = curve.longestWithstoodS(Protection.withstandA2s(sizeMm2, k));
        if (!timeS.isPresent()) {
            return Answer.none("conductorTooThin", Working.none());
        }
        double currentA = curve.currentA(timeS.value());
        return Answer.of(
                Working.start()
                        .input("I", "faultCurrent", currentA, "A", given.rules().tableSource("loop"))
                        .input(
                                "t",
                                "disconnectionTime",
                                timeS.value(),
                                "s",
                                given.rules().tableSource("loop"))
                        .build(),
                new Answer.Result("withstandTime", Kind.DURATION, timeS.value()),
                new Answer.Result("faultCurrent", Kind.CURRENT, currentA));
    }

    private static Working working(FormulaArguments given, double currentA, double timeS, double k) {
        return Working.start()
                .input("I", "faultCurrent", currentA, "A", given.rules().tableSource("loop"))
                .input("t", "disconnectionTime", timeS, "s", "")
                .input("k", "materialFactor", k, "", given.rules().source("k"))
                .step(
                        "S",
                        "neededConductor",
                        "sqrt(I^2 * t) / k",
                        "mm²",
                        given.rules().text("cite.adiabatic"))
                .build();
    }

    private static String seconds(double timeS) {
        return CodeNumbers.number(timeS) + " s";
    }
}
