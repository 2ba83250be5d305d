// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import java.util.List;
import java.util.Map;

/** Evaluates expressions. */
final class ExpressionValue {
    private ExpressionValue() {}

    static double of(Expression expression, Map<String, Double> symbols) {
        if (expression instanceof Expression.Number number) {
            return number.value();
        }
        if (expression instanceof Expression.Symbol symbol) {
            return symbol(symbol.name(), symbols);
        }
        if (expression instanceof Expression.Negative negative) {
            return -of(negative.operand(), symbols);
        }
        if (expression instanceof Expression.Binary binary) {
            return binary(binary.operator(), of(binary.left(), symbols), of(binary.right(), symbols));
        }
        if (expression instanceof Expression.Call call) {
            return call(call.function(), call.arguments(), symbols);
        }
        throw new IllegalArgumentException("a comparison stands only in if(...)");
    }

    private static double symbol(String name, Map<String, Double> symbols) {
        Double value = symbols.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no value for " + name);
        }
        return value;
    }

    private static double binary(char operator, double left, double right) {
        return switch (operator) {
            case '+' -> left + right;
            case '-' -> left - right;
            case '*' -> left * right;
            case '/' -> left / right;
            default -> Math.pow(left, right);
        };
    }

    private static double call(Expression.Function function, List<Expression> arguments, Map<String, Double> symbols) {
        if (function == Expression.Function.IF) {
            return of(
                    holds((Expression.Comparison) arguments.get(0), symbols) ? arguments.get(1) : arguments.get(2),
                    symbols);
        }
        double first = of(arguments.get(0), symbols);
        return switch (function) {
            case SQRT -> Math.sqrt(first);
            case LN -> Math.log(first);
            case EXP -> Math.exp(first);
            case MIN -> Math.min(first, of(arguments.get(1), symbols));
            default -> Math.max(first, of(arguments.get(1), symbols));
        };
    }

    private static boolean holds(Expression.Comparison comparison, Map<String, Double> symbols) {
        double left = of(comparison.left(), symbols);
        double right = of(comparison.right(), symbols);
        return switch (comparison.operator()) {
            case "<" -> left < right;
            case "<=" -> left <= right;
            case ">" -> left > right;
            default -> left >= right;
        };
    }
}
