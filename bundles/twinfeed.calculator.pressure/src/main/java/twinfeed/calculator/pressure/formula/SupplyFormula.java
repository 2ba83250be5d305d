// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.List;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.survey.ReadingLimits;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/**
 * The curve of a supply through its two-point test: the pressure at a flow, or the flow at a pressure. Without a running test
 * only the pressure with no flow is known.
 */
final class SupplyFormula {
    /** 7 m of head, the guaranteed standard, as a pressure, Pa; a supply below is worth a word. */
    private static final double GUARANTEED_PA = 7 * 9806.65;

    private static final List<Parameter> PARAMETERS = List.of(
            Parameter.required("static", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
            Parameter.absent("running", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
            Parameter.absent("flow", Kind.FLOW, -ReadingLimits.MAX_FLOW_M3_PER_S, ReadingLimits.MAX_FLOW_M3_PER_S),
            Parameter.absent("at", Kind.FLOW, 0, ReadingLimits.MAX_FLOW_M3_PER_S),
            Parameter.absent("pressure", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
            Parameter.absent("exponent", Kind.RATIO, 1, 2),
            Parameter.optional("rise", Kind.LENGTH, 0, -100, 100),
            FormulaTerms.TEMPERATURE);

    /** The formula {@code supply-curve}. */
    static final Formula FORMULA = new Formula("supply-curve", PARAMETERS, SupplyFormula::of);

    private SupplyFormula() {}

    private static Answer of(Arguments given) {
        if (given.has("at") == given.has("pressure")) {
            return Answer.none("atOrPressure", Working.none());
        }
        if (given.has("running") != given.has("flow")) {
            return Answer.none("runningAndFlow", Working.none());
        }
        return given.has("running") ? tested(given) : untested(given);
    }

    /** Without a running test: the static pressure less the height, as long as nothing runs. */
    private static Answer untested(Arguments given) {
        if (!given.has("at") || given.si("at") > 0) {
            return Answer.none("noRunningTest", Working.none());
        }
        WorkingLines lines =
                new WorkingLines().input("p_s", "supplyPressure", Kind.PRESSURE.amount(given.si("static")), "");
        double pressurePa = given.si("static") - risePa(given);
        addHeight(lines, given);
        return warned(pressure(lines, pressurePa), given);
    }

    private static double risePa(Arguments given) {
        return Fluid.waterAt(given.si("temperature")).pressureOfHead(given.si("rise"));
    }

    private static void addHeight(WorkingLines lines, Arguments given) {
        FeedWorking.addDensity(lines, given.si("temperature"));
        lines.input("z", "rise", given.si("rise"), "m", "")
                .step("p", "pressureThere", "p_s - " + FeedWorking.height(""), "bar", "");
    }

    private static Answer pressure(WorkingLines lines, double pressurePa) {
        return Answer.of(
                lines.build(),
                new Answer.Result("pressure", Kind.PRESSURE, pressurePa),
                new Answer.Result("head", Kind.LENGTH, pressurePa / 9806.65));
    }

    private static Answer warned(Answer answer, Arguments given) {
        // A hair's breadth for 7 m given as a head.
        return given.si("static") < GUARANTEED_PA * (1 + 1e-9) ? answer.warned("belowGuaranteed") : answer;
    }

    private static Answer tested(Arguments given) {
        double staticPa = given.si("static");
        SupplyTest test = SupplyTest.of(staticPa, given.si("running"), given.si("flow"));
        if (!test.isAccepted()) {
            return FormulaTerms.refused(test);
        }
        SupplyCurve curve = new SupplyCurve(staticPa, given.si("running"), given.si("flow"));
        Answer answer = given.has("at") ? pressureAt(curve, given) : flowAt(curve, given);
        if (test == SupplyTest.SMALL_DROP && answer.trouble().isEmpty()) {
            answer = answer.warned("smallDrop");
        }
        return answer.trouble().isEmpty() ? warned(answer, given) : answer;
    }

    private static Answer pressureAt(SupplyCurve curve, Arguments given) {
        double flow = given.si("at");
        double ownExponent = flow <= curve.testFlowM3PerS() ? SupplyCurve.EXPONENT_WITHIN : SupplyCurve.EXPONENT_BEYOND;
        double exponent = given.si("exponent", ownExponent);
        double pressurePa = curve.pressureAt(flow, exponent) - risePa(given);
        if (pressurePa < 0) {
            return Answer.none(Texts.key(FailureReason.SUPPLY_TOO_WEAK), Working.none());
        }
        WorkingLines lines = new WorkingLines().input("Q", "pipeFlow", Kind.FLOW.amount(flow), "");
        FeedWorking.addTest(lines, curve);
        lines.input("n", "exponent", exponent, "", "")
                .step("p_s", "supplyPressure", "p_0 - (p_0 - p_1) * (Q / Q_1)^n", "bar", "form of NFPA 291");
        addHeight(lines, given);
        Answer answer = pressure(lines, pressurePa);
        return flow > curve.testFlowM3PerS() ? answer.warned("beyondTest") : answer;
    }

    private static Answer flowAt(SupplyCurve curve, Arguments given) {
        double atGaugePa = given.si("pressure") + risePa(given);
        if (atGaugePa < 0) {
            return Answer.none("belowAir", Working.none());
        }
        double ownExponent = atGaugePa >= curve.runningPa() ? SupplyCurve.EXPONENT_WITHIN : SupplyCurve.EXPONENT_BEYOND;
        double exponent = given.si("exponent", ownExponent);
        Solution flow = curve.flowAt(atGaugePa, exponent);
        if (!flow.isPresent()) {
            return Answer.none(Texts.key(flow.trouble()), Working.none());
        }
        WorkingLines lines = new WorkingLines();
        FeedWorking.addTest(lines, curve);
        lines.input("p", "pressureThere", Kind.PRESSURE.amount(given.si("pressure")), "")
                .input("z", "rise", given.si("rise"), "m", "")
                .input("n", "exponent", exponent, "", "");
        FeedWorking.addDensity(lines, given.si("temperature"));
        lines.step(
                "Q",
                "pipeFlow",
                "Q_1 * ((p_0 - p - " + FeedWorking.height("") + ") / (p_0 - p_1))^(1 / n)",
                "L/min",
                "");
        Answer answer = Answer.of(lines.build(), new Answer.Result("flow", Kind.FLOW, flow.value()));
        return flow.value() > curve.testFlowM3PerS() ? answer.warned("beyondTest") : answer;
    }
}
