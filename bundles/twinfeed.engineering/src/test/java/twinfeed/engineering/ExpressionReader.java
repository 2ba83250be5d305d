// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import java.util.Map;
import java.util.Objects;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.water.Water;

/** A small evaluator of the expressions that {@link Water} and {@link Pipe} print, written apart from them: numbers, + - * /, exp, ln, (). */
public final class ExpressionReader {
    private final String text;
    private final Map<String, Double> symbols;
    private int at;

    private ExpressionReader(String text, Map<String, Double> symbols) {
        this.text = text.replace(" ", "");
        this.symbols = symbols;
    }

    public static double value(String text, Map<String, Double> symbols) {
        ExpressionReader reader = new ExpressionReader(text, symbols);
        double value = reader.sum();
        if (reader.at != reader.text.length()) {
            throw new IllegalArgumentException("cannot read from " + reader.at + ": " + text);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (next('+') || next('-')) {
            value = text.charAt(at++) == '+' ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        double value = atom();
        while (next('*') || next('/')) {
            value = text.charAt(at++) == '*' ? value * atom() : value / atom();
        }
        return value;
    }

    private double atom() {
        if (next('(')) {
            at++;
            double value = sum();
            at++;
            return value;
        }
        int start = at;
        while (at < text.length()
                && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_' || next('.'))) {
            at++;
        }
        String word = text.substring(start, at);
        if (word.equals("exp")) {
            return Math.exp(atom());
        }
        if (word.equals("ln")) {
            return Math.log(atom());
        }
        return Character.isDigit(word.charAt(0))
                ? Double.parseDouble(word)
                : Objects.requireNonNull(symbols.get(word), word);
    }

    private boolean next(char c) {
        return at < text.length() && text.charAt(at) == c;
    }
}
