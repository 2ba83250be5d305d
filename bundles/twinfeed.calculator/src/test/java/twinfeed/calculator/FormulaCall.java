// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.LinkedHashMap;
import java.util.Map;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;

/** Calls a formula as a person types it, for the tests of all calculator bundles. */
public final class FormulaCall {
    private FormulaCall() {}

    /** The formula of a name. */
    public static Formula formula(Calculator calculator, String name) {
        return calculator.descriptor().formulas().stream()
                .filter(formula -> formula.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no formula " + name));
    }

    /** What it answers to {@code key=value} pairs between separators; empty pairs are passed over. */
    public static Answer answer(Formula formula, String typed, String separator) {
        Map<String, String> arguments = new LinkedHashMap<>();
        for (String part : typed.split(separator, -1)) {
            if (!part.isEmpty()) {
                int equals = part.indexOf('=');
                arguments.put(part.substring(0, equals), part.substring(equals + 1));
            }
        }
        return formula.apply(Arguments.parse(formula.parameters(), arguments));
    }

    /** The result of a key. */
    public static Answer.Result result(Answer answer, String key) {
        return answer.results().stream()
                .filter(result -> result.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no result " + key + ": " + answer.trouble()));
    }
}
