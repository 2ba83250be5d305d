// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import twinfeed.units.Kind;

/** What a cable carries where it lies, and what a device asks of the table. */
public final class CapacityFormulas {
    static final Formula CAPACITY = new Formula(
            "capacity",
            parameters(List.of(FormulaParameters.SIZE, FormulaParameters.METHOD, FormulaParameters.MAYBE_RATING)),
            CapacityFormulas::capacity);

    static final Formula NEEDED = new Formula(
            "needed-rating",
            parameters(List.of(FormulaParameters.RATING, FormulaParameters.MAYBE_METHOD)),
            CapacityFormulas::needed);

    private CapacityFormulas() {}

    private static List<Parameter> parameters(List<Parameter> own) {
        List<Parameter> all = new ArrayList<>(own);
        all.addAll(FormulaParameters.FACTORS);
        all.add(FormulaParameters.CABLE);
        all.add(FormulaParameters.RULES);
        return all;
    }

    private static Answer capacity(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        CableSize size = given.size();
        Method method = given.method();
        double tabulatedA = given.tabulatedA(size, method);
        String source = given.rules().tableSource("capacity");
        Working.Builder working = Working.start().input("It", "tabulatedCapacity", tabulatedA, "A", source);
        FormulaArguments.Factors factors = given.factors(working, method);
        working.step(
                "Iz", "capacity", "It * Ca * Cg * Ci * Cf", "A", given.rules().text("cite.capacity"));
        double capacityA = new CableSegment(
                        0, size.dropVPerAm(), tabulatedA, factors.ca(), factors.cg(), factors.ci(), factors.cf())
                .capacityA();
        List<Answer.Result> results = new ArrayList<>();
        results.add(new Answer.Result("capacity", Kind.CURRENT, capacityA));
        results.add(new Answer.Result("tabulated", Kind.CURRENT, tabulatedA));
        if (!given.has("rating")) {
            return Answer.of(working.build(), results.toArray(new Answer.Result[0]));
        }
        double ratingA = given.si("rating");
        results.add(new Answer.Result("needed", Kind.CURRENT, neededA(ratingA, factors)));
        results.add(new Answer.Result("spare", Kind.CURRENT, capacityA - ratingA));
        Answer answer = Answer.of(working.build(), results.toArray(new Answer.Result[0]));
        return LimitType.fallsShort(capacityA, ratingA) ? answer.warned("deviceAboveCapacity") : answer;
    }

    private static double neededA(double ratingA, FormulaArguments.Factors factors) {
        return Cable.neededTabulatedA(ratingA, factors.ca(), factors.cg(), factors.ci(), factors.cf());
    }

    private static Answer needed(Arguments arguments) {
        FormulaArguments given = new FormulaArguments(arguments);
        Method method = given.has("method") ? given.method() : null;
        double ratingA = given.si("rating");
        Working.Builder working = Working.start().input("In", "deviceRating", ratingA, "A", "");
        FormulaArguments.Factors factors = given.factors(working, method);
        working.step(
                "It",
                "neededTabulated",
                "In / (Ca * Cg * Ci * Cf)",
                "A",
                given.rules().text("cite.capacity"));
        double neededA = neededA(ratingA, factors);
        Answer.Result result = new Answer.Result("needed", Kind.CURRENT, neededA);
        if (method == null) {
            return Answer.of(working.build(), result);
        }
        Optional<CableSize> size = given.sizes().stream()
                .filter(each ->
                        !LimitType.fallsShort(each.currentA(method.key()).orElse(0), neededA))
                .findFirst();
        if (size.isEmpty()) {
            return Answer.of(working.build(), result).warned("noSize");
        }
        return Answer.of(
                working.build(),
                result,
                new Answer.Result("smallestSize", Kind.AREA, size.get().sizeMm2() / 1e6));
    }
}
