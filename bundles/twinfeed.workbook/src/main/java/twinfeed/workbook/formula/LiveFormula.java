// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.formula;

import java.util.function.UnaryOperator;
import twinfeed.calculator.expression.Expression;

/**
 * Turns an expression of a working into a spreadsheet formula. Every operation is bracketed: spreadsheets bind a sign more tightly
 * than {@code ^} and read {@code a^b^c} from the left (ECMA-376 part 1, 18.17), the grammar of workings does neither.
 */
public final class LiveFormula {
    /** Longest formula that every spreadsheet program takes. */
    public static final int LONGEST = 8000;

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
            write(negative.operand(), cells, out);
            out.append(')');
        } else if (expression instanceof Expression.Binary binary) {
            pair(binary.left(), String.valueOf(binary.operator()), binary.right(), cells, out.append('('));
            out.append(')');
        } else if (expression instanceof Expression.Comparison comparison) {
            pair(comparison.left(), comparison.operator(), comparison.right(), cells, out);
        } else if (expression instanceof Expression.Call call) {
            call(call, cells, out);
        }
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
