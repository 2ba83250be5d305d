// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.formula;

import java.util.function.UnaryOperator;
import twinfeed.calculator.expression.Expression;

/**
 * Turns an expression of a working into a spreadsheet formula. Signs and powers are always bracketed: spreadsheets bind a sign more
 * tightly than {@code ^} and read {@code a^b^c} from the left (ECMA-376 part 1, 18.17), the grammar of workings does neither. Sums and
 * products are bracketed where a reader would, and where another order would round otherwise.
 */
public final class LiveFormula {
    /** Longest formula that every spreadsheet program takes. */
    public static final int LONGEST = 8000;

    /** The rank of a power. */
    private static final int POWER = 3;

    private LiveFormula() {}

    /**
     * The formula, without the leading equals sign.
     *
     * @param expression text of the expression
     * @param cells gives the name or address of the cell of a symbol
     * @throws IllegalArgumentException if the text is no expression
     */
    public static String of(String expression, UnaryOperator<String> cells) {
        StringBuilder out = new StringBuilder(expression.length() * 2);
        write(Expression.parse(expression), cells, out);
        return out.toString();
    }

    /** A text as formulas write it. */
    public static String text(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private static void write(Expression expression, UnaryOperator<String> cells, StringBuilder out) {
        if (expression instanceof Expression.Number number) {
            out.append(number(number.value()));
        } else if (expression instanceof Expression.Symbol symbol) {
            out.append(cells.apply(symbol.name()));
        } else if (expression instanceof Expression.Negative negative) {
            out.append("(-");
            operand(negative.operand(), true, cells, out);
            out.append(')');
        } else if (expression instanceof Expression.Binary binary) {
            int rank = rank(binary.operator());
            operand(binary.left(), rank(binary.left()) < rank || rank == POWER, cells, out);
            out.append(binary.operator());
            operand(binary.right(), rank(binary.right()) <= rank, cells, out);
        } else if (expression instanceof Expression.Comparison comparison) {
            pair(comparison.left(), comparison.operator(), comparison.right(), cells, out);
        } else if (expression instanceof Expression.Call call) {
            call(call, cells, out);
        }
    }

    private static void operand(
            Expression expression, boolean bracketed, UnaryOperator<String> cells, StringBuilder out) {
        boolean brackets = bracketed && expression instanceof Expression.Binary;
        if (brackets) {
            out.append('(');
        }
        write(expression, cells, out);
        if (brackets) {
            out.append(')');
        }
    }

    /** How tightly an operation binds; what is none binds most tightly. */
    private static int rank(Expression expression) {
        return expression instanceof Expression.Binary binary ? rank(binary.operator()) : POWER + 1;
    }

    private static int rank(char operator) {
        return switch (operator) {
            case '+', '-' -> 1;
            case '*', '/' -> 2;
            default -> POWER;
        };
    }

    private static void pair(
            Expression left, String operator, Expression right, UnaryOperator<String> cells, StringBuilder out) {
        write(left, cells, out);
        out.append(operator);
        write(right, cells, out);
    }

    private static void call(Expression.Call call, UnaryOperator<String> cells, StringBuilder out) {
        out.append(call.function().name()).append('(');
        for (int at = 0; at < call.arguments().size(); at++) {
            if (at > 0) {
                out.append(',');
            }
            write(call.arguments().get(at), cells, out);
        }
        out.append(')');
    }

    /** A number as formulas write it, whatever the language of the program that shows them. */
    private static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
