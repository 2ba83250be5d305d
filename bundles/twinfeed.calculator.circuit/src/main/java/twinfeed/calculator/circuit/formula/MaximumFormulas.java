// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.numeric.Solution;
import twinfeed.units.Kind;

/** The inverse questions: how long a cable may be, and how strong a heater a circuit carries. */
public final class MaximumFormulas {
    public static final Formula RUN = new Formula(
            "max-run",
            List.of(
                    FormulaParameters.MAYBE_SIZE,
                    FormulaParameters.CPC,
                    FormulaParameters.GRADIENT,
                    FormulaParameters.LINE,
                    FormulaParameters.CURRENT,
                    FormulaParameters.POWER,
                    FormulaParameters.RATED,
                    FormulaParameters.LIMIT,
                    FormulaParameters.NOMINAL,
                    FormulaParameters.DEVICE,
                    FormulaParameters.MAYBE_RATING,
                    FormulaParameters.ZE,
                    FormulaParameters.OWN_LIMIT,
                    FormulaParameters.CMIN,
                    FormulaParameters.MULTIPLE,
                    FormulaParameters.HOT,
                    FormulaParameters.CABLE,
                    FormulaParameters.RULES),
            MaximumFormulas::run);

    public static final Formula POWER = new Formula("highest-power", powerParameters(), MaximumFormulas::power);

    private MaximumFormulas() {}

    private static List<Parameter> powerParameters() {
        List<Parameter> all = new ArrayList<>(List.of(
                FormulaParameters.RATING,
                FormulaParameters.SIZE,
                FormulaParameters.METHOD,
                FormulaParameters.LENGTH,
                FormulaParameters.RATED));
        all.addAll(FormulaParameters.FACTORS);
        all.addAll(List.of(
                FormulaParameters.LIMIT, FormulaParameters.NOMINAL, FormulaParameters.CABLE, FormulaParameters.RULES));
        return all;
    }

    /** By voltage drop, by loop impedance, or by both: whichever was asked. */
    private static Answer run(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        boolean ownLimit = given.has("zmax");
        if (!ownLimit) {
            given.need("rating", given.has("power") ? "power" : "current");
        }
        Working.Builder working = Working.start();
        boolean drop = given.has("current") || given.has("power");
        boolean loop = ownLimit || given.has("rating");
        Solution byDrop = drop ? byDrop(given, working) : Solution.of(Double.MAX_VALUE);
        if (loop && !LoopFormulas.limit(given, working, given.has("rating") ? given.si("rating") : 0)) {
            return Answer.none("noLoopLimit", working.build());
        }
        Solution byLoop = loop ? byLoop(given, working) : Solution.of(Double.MAX_VALUE);
        if (!byDrop.isPresent() || !byLoop.isPresent()) {
            return Answer.none("noLengthLeft", working.build());
        }
        return runs(working, drop, byDrop.value(), loop, byLoop.value());
    }

    private static Answer runs(Working.Builder working, boolean drop, double byDropM, boolean loop, double byLoopM) {
        if (drop && loop) {
            working.step("Lmax", "longestRun", "min(Ld, Lz)", "m", "");
        }
        List<Answer.Result> results = new ArrayList<>();
        results.add(new Answer.Result("longestRun", Kind.LENGTH, Math.min(byDropM, byLoopM)));
        if (drop) {
            results.add(new Answer.Result("runByDrop", Kind.LENGTH, byDropM));
        }
        if (loop) {
            results.add(new Answer.Result("runByLoop", Kind.LENGTH, byLoopM));
        }
        Answer answer = Answer.of(working.build(), results.toArray(new Answer.Result[0]));
        return answer.warned(byDropM <= byLoopM ? "boundByDrop" : "boundByLoop");
    }

    private static Solution byDrop(FormulaArguments given, Working.Builder working) {
        double currentA = given.current(working);
        double gradient = given.gradientVPerAm();
        given.addDrop(working, gradient)
                .step(
                        "Ld",
                        "runByDrop",
                        "dUmax / (g / 1000 * Ib)",
                        "m",
                        given.rules().text("cite.drop"));
        return Cable.longestRunByDropM(given.dropLimitV(), 0, gradient, currentA);
    }

    private static Solution byLoop(FormulaArguments given, Working.Builder working) {
        double line = given.lineOhmPerM() * given.ruled("hot", "hot.factor");
        double zeOhm = given.si("ze");
        Solution run = Cable.longestRunByLoopM(working.value("Zmax"), zeOhm, line);
        working.input("Ze", "externalLoop", zeOhm, "Ω", "")
                .input(
                        "z",
                        "loopGradientHot",
                        Kind.GRADIENT_RESISTANCE.amount(line),
                        given.rules().tableSource("conductors"))
                .step(
                        "Lz",
                        "runByLoop",
                        "(Zmax - Ze) / (z / 1000)",
                        "m",
                        given.rules().text("cite.loop"));
        return run;
    }

    private static Answer power(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        CableSize size = given.size();
        Method method = given.method();
        double ratingA = given.si("rating");
        Working.Builder working = Working.start()
                .input("In", "deviceRating", ratingA, "A", "")
                .input(
                        "It",
                        "tabulatedCapacity",
                        given.tabulatedA(size, method),
                        "A",
                        given.rules().tableSource("capacity"));
        FormulaArguments.Factors factors = given.factors(working, method);
        working.step(
                "Iz", "capacity", "It * Ca * Cg * Ci * Cf", "A", given.rules().text("cite.capacity"));
        CableSegment segment = given.segment(size, method, factors);
        Solution power = Cable.highestPowerW(ratingA, given.si("rated"), List.of(segment), given.dropLimitV());
        if (!power.isPresent()) {
            return Answer.none("deviceAboveCapacity", working.build());
        }
        return power(given, working, segment, power.value());
    }

    private static Answer power(FormulaArguments given, Working.Builder working, CableSegment segment, double powerW) {
        double ratedV = given.si("rated");
        double ratingA = given.si("rating");
        given.addDrop(working.input("Ur", "ratedVoltage", ratedV, "V", ""), segment.dropVPerAm())
                .input("L", "length", segment.lengthM(), "m", "")
                .step("r", "loopResistance", "g * L / 1000", "Ω", "")
                .step("P", "highestPower", "Ur * if(r * In <= dUmax, In, dUmax / r) / 1000", "kW", "");
        Answer answer = Answer.of(
                working.build(),
                new Answer.Result("highestPower", Kind.POWER, powerW),
                new Answer.Result("current", Kind.CURRENT, powerW / ratedV),
                new Answer.Result("capacity", Kind.CURRENT, segment.capacityA()),
                new Answer.Result("drop", Kind.VOLTAGE, segment.dropV(powerW / ratedV)));
        return answer.warned(powerW < ratedV * ratingA * (1 - 1e-9) ? "boundByDrop" : "boundByDevice");
    }
}
