// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An expression of a working: numbers, symbols, {@code + - * / ^}, {@code sqrt ln exp min max} and
 * {@code if(a < b, then, else)} with {@code < <= > >=}. {@code ^} binds tightest and to the right, then the sign, then
 * {@code * /}, then {@code + -}. Spreadsheets bind a sign more tightly than {@code ^}; whoever translates an expression has to
 * bracket accordingly, which is why the tree is public.
 */
public sealed interface Expression {
    /** A number. */
    record Number(double value, String text) implements Expression {}

    /** A symbol of the working. */
    record Symbol(String name) implements Expression {}

    /** A changed sign. */
    record Negative(Expression operand) implements Expression {}

    /** Two operands; the operator is one of {@code + - * / ^}. */
    record Binary(char operator, Expression left, Expression right) implements Expression {}

    /** A comparison, only as the first argument of {@code if}; one of {@code < <= > >=}. */
    record Comparison(String operator, Expression left, Expression right) implements Expression {}

    /** A function with its arguments. */
    record Call(Function function, List<Expression> arguments) implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    /** The functions of the grammar. */
    enum Function {
        /** Square root. */
        SQRT(1),
        /** Natural logarithm. */
        LN(1),
        /** Exponential. */
        EXP(1),
        /** The smaller of two. */
        MIN(2),
        /** The larger of two. */
        MAX(2),
        /** Choice by a comparison. */
        IF(3);

        private final int arity;

        Function(int arity) {
            this.arity = arity;
        }

        int arity() {
            return arity;
        }

        /** Its name in an expression. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Reads an expression.
     *
     * @throws IllegalArgumentException if it is not of the grammar; the message says where
     */
    static Expression parse(String text) {
        return ParsedExpressions.of(text);
    }

    /**
     * Its value.
     *
     * @param symbols values of the symbols
     * @throws IllegalArgumentException if a symbol has no value
     */
    default double evaluate(Map<String, Double> symbols) {
        return ExpressionValue.of(this, symbols);
    }
}
