// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Step;

/** The cells of one working, by symbol. */
final class WorkingCells {
    private record Written(Step step, String address) {}

    private final Map<String, String> references = new HashMap<>();
    private final List<Written> steps = new ArrayList<>();

    void put(Step step, String reference, String address) {
        references.put(step.getSymbol(), reference);
        steps.add(new Written(step, address));
    }

    /** How formulas refer to a symbol. */
    String reference(String symbol) {
        String reference = references.get(symbol);
        if (reference == null) {
            throw new IllegalArgumentException("the working has no symbol " + symbol + " above its use");
        }
        return reference;
    }

    /** The cell of the last step, if it has this value. */
    @Nullable
    String last(@Nullable Double value) {
        Written last = steps.get(steps.size() - 1);
        return value != null && same(last, value) ? last.address() : null;
    }

    /** The cell of the only step above the last one that has this value and unit. */
    @Nullable
    String only(@Nullable Double value, @Nullable String unit) {
        String found = null;
        for (Written written : steps.subList(0, steps.size() - 1)) {
            if (value != null
                    && same(written, value)
                    && Objects.equals(unit, written.step().getUnit())) {
                if (found != null) {
                    return null;
                }
                found = written.address();
            }
        }
        return found;
    }

    private static boolean same(Written written, double value) {
        Double stepValue = written.step().getValue();
        return stepValue != null
                && Math.abs(stepValue - value) <= 1e-9 * Math.max(Math.abs(value), Math.abs(stepValue));
    }
}
