// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import twinfeed.calculator.expression.Expression;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.units.Amount;

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

    /** The same working with a line ahead of all others; its symbol must not be there yet. */
    public Working after(Step first) {
        List<Step> all = new ArrayList<>();
        all.add(first);
        all.addAll(steps);
        return new Working(all);
    }

    /** Starts a working. */
    public static Builder start() {
        return new Builder();
    }

    /** Builds a working from top to bottom. */
    public static final class Builder {
        /** A symbol of an expression: a name that is no function, and no exponent of a number. */
        private static final Pattern SYMBOL = Pattern.compile("(?<![A-Za-z0-9_.])[A-Za-z][A-Za-z0-9_]*+(?!\\s*\\()");

        private final List<Step> steps = new ArrayList<>();
        private final Map<String, Double> values = new LinkedHashMap<>();
        private int round;

        private Builder() {}

        /** A value put in. */
        public Builder input(String symbol, String meaning, double value, String unit, String source) {
            return input(symbol, meaning, value, unit, source, "");
        }

        /**
         * A value put in whose origin is known: all workings that name the same origin mean the same figure, which a workbook shows once.
         *
         * @param origin as in {@link Step#origin()}
         */
        public Builder input(String symbol, String meaning, double value, String unit, String source, String origin) {
            return add(new Step(symbol, meaning, value, unit, null, source, origin));
        }

        /** A quantity put in, which stands in the working in the unit of the amount. */
        public Builder input(String symbol, String meaning, Amount value, String source) {
            return input(symbol, meaning, value, source, "");
        }

        /** The same where its origin is known. */
        public Builder input(String symbol, String meaning, Amount value, String source, String origin) {
            return input(symbol, meaning, value.doubleValue(), value.unit().symbol(), source, origin);
        }

        /** A figure of the rule set, with its source. */
        public Builder rule(String symbol, String meaning, RuleSet rules, String key, String unit) {
            return input(symbol, meaning, rules.number(key), unit, rules.source(key), Origin.rule(key));
        }

        /**
         * Takes over the lines of a working that several share, their symbols with an ending; lines that are there already stay.
         *
         * @param part the working to take over; its last line is usually what is wanted of it
         * @param ending letters, digits and underscores, or empty
         * @throws IllegalArgumentException if a symbol is there already with another value
         */
        public Builder include(Working part, String ending) {
            for (Step step : part.steps()) {
                String symbol = step.symbol() + ending;
                Double known = values.get(symbol);
                if (known == null) {
                    add(taken(step, symbol, ending));
                } else if (known != step.value()) {
                    throw new IllegalArgumentException("symbol used twice: " + symbol);
                }
            }
            return this;
        }

        private static Step taken(Step step, String symbol, String ending) {
            String expression = step.expression();
            return new Step(
                    symbol,
                    step.meaning(),
                    step.value(),
                    step.unit(),
                    expression == null || ending.isEmpty()
                            ? expression
                            : SYMBOL.matcher(expression).replaceAll("$0" + ending),
                    step.source(),
                    expression == null || step.origin().startsWith(Origin.ROUND) ? step.origin() : Origin.SHARED);
        }

        /**
         * A value that follows from the symbols above; it is computed from the expression, so the working cannot disagree
         * with itself. A test of the calculator compares the last one with the finding.
         */
        public Builder step(String symbol, String meaning, String expression, String unit, String source) {
            double value = Expression.parse(expression).evaluate(values);
            return add(
                    new Step(symbol, meaning, value, unit, expression, source, round == 0 ? "" : Origin.ROUND + round));
        }

        /**
         * Says that the steps that follow belong to a round of a search: those of all rounds are the same over symbols that end with the
         * number of the round, so that a table can show them.
         *
         * @param number number of the round, from 1 on; 0 where no search is under way
         */
        public Builder round(int number) {
            round = number;
            return this;
        }

        /** Whether a symbol is there already. */
        public boolean has(String symbol) {
            return values.containsKey(symbol);
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
