// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.cable.ConductorTemperature;
import twinfeed.engineering.water.Heat;
import twinfeed.units.Kind;

/** The voltage that a cable takes away, and what arrives at the heater. */
public final class DropFormulas {
    static final Formula DROP = new Formula(
            "drop",
            List.of(
                    FormulaParameters.MAYBE_SIZE,
                    FormulaParameters.GRADIENT,
                    FormulaParameters.LENGTH,
                    FormulaParameters.CURRENT,
                    FormulaParameters.POWER,
                    FormulaParameters.RATED,
                    FormulaParameters.LIMIT,
                    FormulaParameters.NOMINAL,
                    FormulaParameters.CABLE,
                    FormulaParameters.RULES),
            DropFormulas::drop);

    static final Formula DELIVERED = new Formula("delivered", delivered(), DropFormulas::delivered);

    private DropFormulas() {}

    private static List<Parameter> delivered() {
        List<Parameter> all = new ArrayList<>(List.of(
                Parameter.required("power", Kind.POWER, 1, 100e3),
                FormulaParameters.RATED,
                FormulaParameters.SUPPLY,
                FormulaParameters.SIZE,
                FormulaParameters.METHOD,
                FormulaParameters.LENGTH));
        all.addAll(FormulaParameters.FACTORS);
        all.add(FormulaParameters.CABLE);
        all.add(FormulaParameters.RULES);
        return all;
    }

    private static Answer drop(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        double gradient = given.gradientVPerAm();
        double lengthM = given.si("length");
        Working.Builder working = Working.start();
        double currentA = given.current(working);
        String table = given.has("gradient") ? "" : given.rules().tableSource("cables");
        String cite = given.rules().text("cite.drop");
        working.input("g", "dropGradient", Kind.GRADIENT_VOLTAGE.amount(gradient), table)
                .input("L", "length", lengthM, "m", "")
                .step("dU", "drop", "g * L * Ib / 1000", "V", cite);
        double dropV = Cable.voltageDropV(List.of(new CableSegment(lengthM, gradient, 1, 1, 1, 1, 1)), currentA);
        double limitV = given.dropLimitV();
        Answer answer = Answer.of(
                working.build(),
                new Answer.Result("drop", Kind.VOLTAGE, dropV),
                new Answer.Result("dropShare", Kind.RATIO, dropV / given.nominalV()),
                new Answer.Result("dropLimit", Kind.VOLTAGE, limitV),
                new Answer.Result("dropSpare", Kind.VOLTAGE, limitV - dropV));
        return LimitType.exceeds(dropV, limitV) ? answer.warned("dropAboveLimit") : answer;
    }

    private static Answer delivered(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        CableSize size = given.size();
        Method method = given.method();
        Working.Builder working = Working.start()
                .input("Pr", "ratedPower", given.si("power"), "W", "")
                .input("Ur", "ratedVoltage", given.si("rated"), "V", "")
                .step("R", "elementResistance", "Ur^2 / Pr", "Ω", "");
        FormulaArguments.Factors factors = given.factors(working, method);
        CableSegment segment = given.segment(size, method, factors);
        double elementOhm = Heat.elementResistance(given.si("power"), given.si("rated"));
        double terminalV = Cable.terminalVoltageV(
                given.si("supply"), elementOhm, List.of(segment), ConductorTemperature.BY_CURRENT);
        terminal(working, given, segment, terminalV / elementOhm);
        return Answer.of(
                working.build(),
                new Answer.Result("power", Kind.POWER, Heat.powerOfResistance(elementOhm, terminalV)),
                new Answer.Result("terminalVoltage", Kind.VOLTAGE, terminalV),
                new Answer.Result("current", Kind.CURRENT, terminalV / elementOhm));
    }

    private static void terminal(
            Working.Builder working, FormulaArguments given, CableSegment segment, double currentA) {
        String cite = given.rules().text("cite.drop");
        double factor = Cable.temperatureFactor(segment, currentA, ConductorTemperature.BY_CURRENT);
        String table = given.rules().tableSource("cables");
        working.input("U0", "originVoltage", given.si("supply"), "V", "")
                .input("g", "dropGradient", Kind.GRADIENT_VOLTAGE.amount(segment.dropVPerAm()), table)
                .input("L", "length", segment.lengthM(), "m", "")
                .input("Ct", "temperatureFactor", factor, "", cite)
                .step("r", "loopResistance", "g * L * Ct / 1000", "Ω", cite)
                .step("U", "terminalVoltage", "U0 * R / (R + r)", "V", "")
                .step("P", "deliveredPower", "U^2 / R / 1000", "kW", "");
    }
}
