// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.List;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.HeatLines;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.heater.TapOpening;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;
import twinfeed.engineering.water.Heat;
import twinfeed.engineering.water.Scald;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/** Functions for a quick question about a unit: its switch, and its outlet while a tap opens. */
final class UnitFormulas {
    private static final double MOST_FLOW = 0.01;

    private static final List<Parameter> SWITCH = List.of(
            Parameter.required("make", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
            Parameter.required("break", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
            Parameter.word("place", "inlet", "inlet", "heating"),
            Parameter.required("flow", Kind.FLOW, 0, MOST_FLOW),
            Parameter.optional("pressure", Kind.PRESSURE, 0, -FormulaTerms.MOST_PA, FormulaTerms.MOST_PA),
            Parameter.optional("loss", Kind.PRESSURE, 0, 0, FormulaTerms.MOST_PA),
            Parameter.optional("loss-flow", Kind.FLOW, DisplayUnit.of(Kind.FLOW).toSi(8), 1e-7, MOST_FLOW),
            Parameter.optional("build", Kind.PRESSURE, 0, 0, FormulaTerms.MOST_PA),
            Parameter.optional(
                    "build-flow", Kind.FLOW, DisplayUnit.of(Kind.FLOW).toSi(8), 1e-7, MOST_FLOW),
            Parameter.optional("handset", Kind.LENGTH, 0, -10, 10),
            FormulaTerms.TEMPERATURE);

    private static final List<Parameter> TAP = List.of(
            Parameter.required("power", Kind.POWER, 1, 100e3),
            Parameter.required("intake", Kind.TEMPERATURE, 0, 100),
            Parameter.optional("outlet", Kind.TEMPERATURE, 40, 0, 100),
            Parameter.required("ratio", Kind.RATIO, 0, 1),
            Parameter.absent("break-flow", Kind.FLOW, 0, MOST_FLOW));

    /** The formulas {@code switch-margin} and {@code tap-opens}. */
    static final List<Formula> ALL = List.of(
            new Formula("switch-margin", SWITCH, UnitFormulas::switchMargin),
            new Formula("tap-opens", TAP, UnitFormulas::tapOpens));

    private UnitFormulas() {}

    private static Answer switchMargin(Arguments given) {
        if (given.si("break") > given.si("make")) {
            return Answer.none("breakAboveMake", Working.none());
        }
        PressureSwitch limits = new PressureSwitch(given.si("make"), given.si("break"));
        double flow = given.si("flow");
        Fluid fluid = Fluid.waterAt(given.si("temperature"));
        boolean inlet = "inlet".equals(given.word("place"));
        double strainer = given.si("loss") / (given.si("loss-flow") * given.si("loss-flow"));
        double downstream = given.si("build") / (given.si("build-flow") * given.si("build-flow"));
        SwitchMargin margin = inlet
                ? SwitchMargin.inInletChamber(limits, given.si("pressure"), strainer, flow)
                : SwitchMargin.inHeatingChamber(limits, downstream, flow, given.si("handset"), fluid);
        return Answer.of(
                inlet ? inletWorking(given) : heatingWorking(given),
                new Answer.Result("margin", Kind.PRESSURE, margin.smallestPa()),
                new Answer.Result("toMake", Kind.PRESSURE, margin.toMakePa()),
                new Answer.Result("toBreak", Kind.PRESSURE, margin.toBreakPa()));
    }

    private static WorkingLines limits(Arguments given) {
        return new WorkingLines()
                .input("p_m", "makePressure", Kind.PRESSURE.amount(given.si("make")), "")
                .input("p_b", "breakPressure", Kind.PRESSURE.amount(given.si("break")), "")
                .input("Q", "unitFlow", Kind.FLOW.amount(given.si("flow")), "");
    }

    private static Working inletWorking(Arguments given) {
        return limits(given)
                .input("p_in", "inletPressure", Kind.PRESSURE.amount(given.si("pressure")), "")
                .input("p_l", "strainerLoss", Kind.PRESSURE.amount(given.si("loss")), "")
                .input("Q_l", "strainerFlow", Kind.FLOW.amount(given.si("loss-flow")), "")
                .step("p_sw", "switchPressure", "p_in - p_l * (Q / Q_l)^2", "bar", "")
                .step("margin", "switchMargin", "min(p_sw - p_m, p_sw - p_b)", "bar", "")
                .build();
    }

    private static Working heatingWorking(Arguments given) {
        WorkingLines lines = limits(given)
                .input("p_d", "buildPressure", Kind.PRESSURE.amount(given.si("build")), "")
                .input("Q_d", "buildFlow", Kind.FLOW.amount(given.si("build-flow")), "")
                .input("z", "handset", given.si("handset"), "m", "");
        FeedWorking.addDensity(lines, given.si("temperature"));
        return lines.step("p_e", "switchEmpty", "p_d * (Q / Q_d)^2", "bar", "")
                .step("p_f", "switchFull", "p_e + " + FeedWorking.height(""), "bar", "")
                .step("margin", "switchMargin", "min(p_e - p_m, p_f - p_b)", "bar", "")
                .build();
    }

    /** The flow for the target temperature, then the flow through the held throttle at the lower pressure. */
    private static Answer tapOpens(Arguments given) {
        double powerW = given.si("power");
        double intakeC = given.si("intake");
        Solution before = Heat.massFlowForOutlet(powerW, intakeC, given.si("outlet"))
                .map(mass -> Heat.volumeFlowAtInlet(mass, intakeC));
        if (!before.isPresent()) {
            return Answer.none(Texts.key(before.trouble()), Working.none());
        }
        double after = Throttle.flowAtRatio(before.value(), given.si("ratio"));
        Solution breakFlow = given.has("break-flow")
                ? Solution.of(given.si("break-flow"))
                : Solution.none(FailureReason.HELD_BY_HEIGHT);
        TapOpening opening = Throttle.whileTapOpens(powerW, intakeC, before.value(), after, breakFlow);
        if (!opening.hottestOutlet().isPresent()) {
            return Answer.none(Texts.key(opening.hottestOutlet().trouble()), Working.none());
        }
        Answer answer = Answer.of(
                tapWorking(given, before.value()),
                new Answer.Result(
                        "hottest", Kind.TEMPERATURE, opening.hottestOutlet().value()),
                new Answer.Result("flowBefore", Kind.FLOW, opening.flowBeforeM3PerS()),
                new Answer.Result("flowAfter", Kind.FLOW, opening.flowAfterM3PerS()));
        return warned(opening.switchOpens() ? answer.warned("switchOpens") : answer);
    }

    private static Answer warned(Answer answer) {
        double hottestC = answer.results().get(0).si();
        if (hottestC >= Scald.FROM_C) {
            return answer.warned("scaldStrong");
        }
        return hottestC > Scald.UNCOMFORTABLE_C ? answer.warned("scaldFlag") : answer;
    }

    private static Working tapWorking(Arguments given, double beforeM3PerS) {
        WorkingLines lines = new WorkingLines()
                .input("P", "power", given.si("power"), "W", "")
                .input("Q", "unitFlow", Kind.FLOW.amount(beforeM3PerS), "for the target temperature")
                .input("r", "pressureRatio", given.si("ratio"), "", "")
                .input("Q_b", "breakFlow", Kind.FLOW.amount(given.si("break-flow", 0)), "");
        FeedWorking.addDensity(lines, given.si("intake"));
        lines.step("Q_a", "heldFlow", "Q * sqrt(r)", "L/min", "throttle held")
                .step("Q_h", "hottestFlow", "min(Q, max(Q_a, Q_b))", "L/min", "");
        HeatLines.addOutlet(lines, "Q_h");
        return lines.build();
    }
}
