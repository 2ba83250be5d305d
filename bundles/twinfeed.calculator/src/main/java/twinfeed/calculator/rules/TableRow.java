// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A row of a data file, whose complaints say where it stands.
 *
 * @param table name of the table
 * @param number number of the row among the values, from 1
 * @param values texts by column
 */
record TableRow(String table, int number, Map<String, String> values) {
    String text(String column) {
        String text = values.get(column);
        if (text == null) {
            throw wrong(column, "the column is missing", "a column of this name");
        }
        return text;
    }

    String word(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw wrong(column, "it is empty", "a word");
        }
        return text;
    }

    /** A finite number. */
    double number(String column) {
        return parse(column, text(column));
    }

    /** A number above zero. */
    double positive(String column) {
        double value = number(column);
        if (value <= 0) {
            throw wrong(column, value + " is not above zero", "a number above zero");
        }
        return value;
    }

    /** A number above zero, or another value where the field is empty. */
    double positive(String column, double otherwise) {
        return text(column).isEmpty() ? otherwise : positive(column);
    }

    /** Numbers with spaces between them. */
    List<Double> numbers(String column) {
        return Arrays.stream(word(column).split(" +"))
                .map(each -> parse(column, each))
                .toList();
    }

    List<String> words(String column) {
        String text = text(column);
        return text.isEmpty() ? List.of() : List.of(text.split(" +"));
    }

    boolean yes(String column) {
        return switch (text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw wrong(column, "\"" + text(column) + "\" is neither", "yes or no");
        };
    }

    private double parse(String column, String text) {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw (IllegalArgumentException) wrong(column, "\"" + text + "\" is no number", "a number with a point")
                    .initCause(notANumber);
        }
        throw wrong(column, text + " is not finite", "a number with a point");
    }

    IllegalArgumentException wrong(String column, String reason, String right) {
        return new IllegalArgumentException(
                "rule data " + table + ", row " + number + ", " + column + ": " + reason + "; give " + right);
    }
}
