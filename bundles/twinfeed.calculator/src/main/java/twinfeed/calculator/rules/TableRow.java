// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

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
            throw wrong(column, "column.missing");
        }
        return text;
    }

    String word(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw wrong(column, "word.empty");
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
            throw wrong(column, "number.positive", text(column));
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
            default -> throw wrong(column, "yes.neither", text(column));
        };
    }

    private double parse(String column, String text) {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw wrong(notANumber, column, "number.none", text);
        }
        throw wrong(column, "number.infinite", text);
    }

    /** What is wrong with a field, and what would be right. */
    IllegalArgumentException wrong(String column, String key, Object... arguments) {
        return wrong(null, column, key, arguments);
    }

    private IllegalArgumentException wrong(@Nullable Throwable cause, String column, String key, Object... arguments) {
        return RuleRefusal.of(cause, "row", table, number, column, RuleRefusal.text(key, arguments));
    }
}
