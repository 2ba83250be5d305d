// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.List;
import twinfeed.units.Kind;

/**
 * What a formula answers: results, the first of which is the one asked for, or a named trouble; with its working.
 *
 * @param results results in order; empty if there is a trouble
 * @param trouble key of what stands against an answer, {@code trouble.KEY}; empty if there is an answer
 * @param warnings keys of warnings, {@code warning.KEY}
 * @param working the working
 */
public record Answer(List<Result> results, String trouble, List<String> warnings, Working working) {
    /**
     * One result.
     *
     * @param key its name, text {@code result.KEY}
     * @param kind kind of quantity
     * @param si value in SI, finite
     */
    public record Result(String key, Kind kind, double si) {
        public Result {
            if (!Double.isFinite(si)) {
                throw new IllegalArgumentException(key + " is not finite");
            }
        }
    }

    public Answer {
        results = List.copyOf(results);
        warnings = List.copyOf(warnings);
    }

    /** An answer. */
    public static Answer of(Working working, Result... results) {
        return new Answer(List.of(results), "", List.of(), working);
    }

    /** No answer, for a reason that has a name. */
    public static Answer none(String trouble, Working working) {
        return new Answer(List.of(), trouble, List.of(), working);
    }

    /** The same with a warning. */
    public Answer warned(String key) {
        List<String> all = new java.util.ArrayList<>(warnings);
        all.add(key);
        return new Answer(results, trouble, all, working);
    }
}
