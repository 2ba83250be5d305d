// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.Step;

/** The cells of one working, by symbol; some of them stand above, in another working. */
final class WorkingCells {
    /** The symbol by which a working names the limit of its check. */
    private static final String LIMIT = LimitType.SYMBOL;

    private record Written(Step step, String address) {}

    private final Map<String, String> references = new HashMap<>();
    private final List<Written> steps = new ArrayList<>();
    private boolean some;

    /** A line that is written here. */
    void put(Step step, String address) {
        some = true;
        references.put(step.getSymbol(), address);
        steps.add(new Written(step, address));
    }

    /** A line that stands above already. */
    void putKnown(Step step, String address) {
        references.put(step.getSymbol(), address);
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

    /** Whether every line stands in another working above. */
    boolean isAllAbove() {
        return !some && !steps.isEmpty();
    }

    /** The address of the last line. */
    String last() {
        return steps.isEmpty() ? "" : steps.get(steps.size() - 1).address();
    }

    /** The cell of the last step, if it has this value. */
    @Nullable
    String last(@Nullable Double value) {
        Written last = steps.get(steps.size() - 1);
        return value != null && same(last, value) ? last.address() : null;
    }

    /** The cell of the limit: the line that is named so or, without one, the only one above the last that has its value and unit. */
    @Nullable
    String limit(@Nullable Double value, @Nullable String unit) {
        for (Written written : steps) {
            if (value != null && LIMIT.equals(written.step().getSymbol()) && same(written, value)) {
                return written.address();
            }
        }
        return only(value, unit);
    }

    private @Nullable String only(@Nullable Double value, @Nullable String unit) {
        String found = null;
        for (Written written : steps.subList(0, steps.size() - 1)) {
            if (value != null
                    && written.step().getOrigin() == null
                    && same(written, value)
                    && Objects.equals(unit, written.step().getUnit())) {
                if (found != null && !found.equals(written.address())) {
                    return null;
                }
                found = written.address();
            }
        }
        return found;
    }

    private static boolean same(Written written, double value) {
        Double stepValue = written.step().getValue();
        return stepValue != null && Math.abs(stepValue - value) <= LimitType.slack(value, stepValue);
    }
}
