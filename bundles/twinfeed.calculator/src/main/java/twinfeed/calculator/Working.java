// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.expression.Expression;

/**
 * How a figure was found, line by line; the last step is the figure. Every step but the inputs has an expression over the
 * symbols above it that gives its value again to 1e-9 relative, so that a person or a spreadsheet can follow.
 *
 * @param steps the lines
 */
public record Working(List<Step> steps) {
    private static final Working NONE = new Working(List.of());

    public Working {
        steps = List.copyOf(steps);
    }

    /** The empty working. */
    public static Working none() {
        return NONE;
    }

    /** Starts a working. */
    public static Builder start() {
        return new Builder();
    }

    /** Builds a working from top to bottom. */
    public static final class Builder {
        private final List<Step> steps = new ArrayList<>();
        private final Map<String, Double> values = new LinkedHashMap<>();

        private Builder() {}

        /** A value put in. */
        public Builder input(String symbol, String meaning, double value, String unit, String source) {
            return add(new Step(symbol, meaning, value, unit, null, source));
        }

        /**
         * A value that follows from the symbols above; it is computed from the expression, so the working cannot disagree
         * with itself. A test of the calculator compares the last one with the finding.
         */
        public Builder step(String symbol, String meaning, String expression, String unit, String source) {
            double value = Expression.parse(expression).evaluate(values);
            return add(new Step(symbol, meaning, value, unit, expression, source));
        }

        /** The value of a symbol above. */
        public double value(String symbol) {
            Double value = values.get(symbol);
            if (value == null) {
                throw new IllegalArgumentException("no symbol " + symbol);
            }
            return value;
        }

        private Builder add(Step step) {
            if (values.putIfAbsent(step.symbol(), step.value()) != null) {
                throw new IllegalArgumentException("symbol used twice: " + step.symbol());
            }
            steps.add(step);
            return this;
        }

        /** Ends the working. */
        public Working build() {
            return new Working(steps);
        }
    }
}
