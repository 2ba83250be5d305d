// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;

/**
 * The answer to one check.
 *
 * @param calculator id of the calculator that gave it
 * @param check the question
 * @param outcome the answer
 * @param figures value and limit in SI, absent where there are none
 * @param condition the condition that governs, {@link Condition#NONE} where there is only one
 * @param variant key that picks the text where one outcome can have several reasons, empty for the usual one
 * @param arguments further values that the text names
 * @param missing paths of the readings that are missing, for "cannot tell"
 * @param source where limit and method come from
 * @param workingSupplier makes the working when somebody asks for it; pure
 * @param series curves that belong to the finding
 * @param remedies work that can fix it, as far as this calculator knows; none while it passes
 * @param chance how sure the outcome is, given the tolerances of the readings; absent where that was not asked
 */
public record Finding(
        String calculator,
        Check check,
        Outcome outcome,
        @Nullable Figures figures,
        Condition condition,
        String variant,
        Map<String, Object> arguments,
        List<String> missing,
        String source,
        Supplier<Working> workingSupplier,
        List<Series> series,
        List<Remedy> remedies,
        @Nullable PassProbability chance) {

    /**
     * Value and limit of a finding, both finite.
     *
     * @param value what was found
     * @param limit its limit; equal to the value where it has none
     * @param margin how far the value lies on the good side; 0 or more passes
     * @param limited whether there is a limit; without one the value is only reported
     */
    public record Figures(double value, double limit, double margin, boolean limited) {
        public Figures {
            if (!Double.isFinite(value) || !Double.isFinite(limit) || !Double.isFinite(margin)) {
                throw new IllegalArgumentException("a figure is not finite: " + value + ", " + limit);
            }
        }
    }

    /** The figures in the unit in which the check is printed; null where there are none. */
    public @Nullable Figures printed() {
        Figures known = figures;
        if (known == null) {
            return null;
        }
        double value = check.unit().fromSi(known.value());
        double limit = check.unit().fromSi(known.limit());
        return new Figures(value, limit, known.limited() ? check.limitType().margin(value, limit) : 0, known.limited());
    }

    /** The figures where they include a limit; null where the value, if any, is only reported. */
    public @Nullable Figures limited() {
        return figures != null && figures.limited() ? figures : null;
    }

    /** The same with how sure it is; too close to call where the chance is neither small nor large. */
    public Finding withChance(PassProbability sampled) {
        return new Finding(
                calculator,
                check,
                sampled.tooClose() ? Outcome.TOO_CLOSE : outcome,
                figures,
                condition,
                variant,
                arguments,
                missing,
                source,
                workingSupplier,
                series,
                remedies,
                sampled);
    }

    /** Work that can fix it; none while it passes or does not apply. */
    public List<Remedy> remedies() {
        return outcome == Outcome.PASSES || outcome == Outcome.NOT_APPLICABLE ? List.of() : remedies;
    }

    /** Whether the finding keeps its option from suiting: a deciding check that fails or is too close to call. */
    public boolean stands() {
        return check.deciding() && (outcome == Outcome.FAILS || outcome == Outcome.TOO_CLOSE);
    }

    /** The working, empty where there is none. */
    public Working working() {
        return workingSupplier.get();
    }

    /** Whether the finding rules its option out. */
    public boolean rulesOut() {
        return outcome == Outcome.FAILS && check.deciding();
    }
}
