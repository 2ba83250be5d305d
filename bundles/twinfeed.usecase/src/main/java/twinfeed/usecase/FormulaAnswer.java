// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import twinfeed.model.assessment.Step;
import twinfeed.units.Kind;

/**
 * What a formula answers, with its texts in one language.
 *
 * @param results results in order; empty where the formula has no answer
 * @param trouble what stands against an answer; {@link Note#NONE} where there is one
 * @param warnings what to mind about the answer
 * @param steps the working, line by line
 */
public record FormulaAnswer(List<Result> results, Note trouble, List<Note> warnings, List<Step> steps) {
    /**
     * One result.
     *
     * @param key its name in the formula
     * @param title its name in words
     * @param kind kind of quantity
     * @param si value in SI
     */
    public record Result(String key, String title, Kind kind, double si) {}

    /**
     * A remark.
     *
     * @param key its name in the formula
     * @param text the same in words
     */
    public record Note(String key, String text) {
        /** No remark. */
        public static final Note NONE = new Note("", "");
    }

    public FormulaAnswer {
        results = List.copyOf(results);
        warnings = List.copyOf(warnings);
        steps = List.copyOf(steps);
    }

    /** Whether the formula has no answer. */
    public boolean refused() {
        return !trouble.key().isEmpty();
    }
}
