// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import java.util.ArrayList;
import java.util.List;

/** Reads expressions by recursive descent. */
final class ExpressionParser {
    private final String text;
    private int at;

    ExpressionParser(String text) {
        this.text = text;
    }

    Expression parse() {
        Expression result = sum();
        if (at < text.length()) {
            throw wrong("the end");
        }
        return result;
    }

    private Expression sum() {
        Expression left = product();
        while (true) {
            char operator = next("+-");
            if (operator == 0) {
                return left;
            }
            left = new Expression.Binary(operator, left, product());
        }
    }

    private Expression product() {
        Expression left = signed();
        while (true) {
            char operator = next("*/");
            if (operator == 0) {
                return left;
            }
            left = new Expression.Binary(operator, left, signed());
        }
    }

    private Expression signed() {
        return next("-") == 0 ? power() : new Expression.Negative(signed());
    }

    private Expression power() {
        Expression base = primary();
        return next("^") == 0 ? base : new Expression.Binary('^', base, signed());
    }

    private Expression primary() {
        if (next("(") != 0) {
            Expression inner = sum();
            expect(')');
            return inner;
        }
        skip();
        if (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            return number();
        }
        String name = name();
        return next("(") == 0 ? new Expression.Symbol(name) : call(name);
    }

    private Expression call(String name) {
        for (Expression.Function function : Expression.Function.values()) {
            if (function.word().equals(name)) {
                List<Expression> arguments = new ArrayList<>();
                arguments.add(function == Expression.Function.IF ? comparison() : sum());
                while (arguments.size() < function.arity()) {
                    expect(',');
                    arguments.add(sum());
                }
                expect(')');
                return new Expression.Call(function, arguments);
            }
        }
        throw new IllegalArgumentException("no function " + name + " in " + text);
    }

    private Expression comparison() {
        Expression left = sum();
        char first = next("<>");
        if (first == 0) {
            throw wrong("a comparison");
        }
        boolean orEqual = at < text.length() && text.charAt(at) == '=';
        if (orEqual) {
            at++;
        }
        return new Expression.Comparison(orEqual ? first + "=" : String.valueOf(first), left, sum());
    }

    private Expression number() {
        int start = at;
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
                at++;
            }
            digits();
        }
        String literal = text.substring(start, at);
        return new Expression.Number(Double.parseDouble(literal), literal);
    }

    private void digits() {
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
            at++;
        }
    }

    private String name() {
        int start = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        if (start == at || !Character.isLetter(text.charAt(start))) {
            throw wrong("a number, a symbol or a bracket");
        }
        return text.substring(start, at);
    }

    private char next(String wanted) {
        skip();
        if (at < text.length() && wanted.indexOf(text.charAt(at)) >= 0) {
            return text.charAt(at++);
        }
        return 0;
    }

    private void expect(char wanted) {
        if (next(String.valueOf(wanted)) == 0) {
            throw wrong("\"" + wanted + "\"");
        }
    }

    private void skip() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private IllegalArgumentException wrong(String wanted) {
        return new IllegalArgumentException("expected " + wanted + " at position " + (at + 1) + " of " + text);
    }
}
