// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.params.aggregator.AggregateWith;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.aggregator.ArgumentsAggregator;
import twinfeed.calculator.formula.Answer;
import twinfeed.units.Quantities;

/**
 * A row of a file of check values for formulas: what the formula is given, and what a source outside the project says comes out. A
 * parameterized test takes it from a CSV file with {@link AggregateWith}.
 *
 * @param id the row's name
 * @param formula name of the formula
 * @param arguments {@code key=value} pairs between commas
 * @param result key of the result
 * @param expected value of the source
 * @param unit unit of that value
 * @param tolerance a number and {@code %} or the unit
 * @param source where the value is from
 */
public record PublishedCase(
        String id,
        String formula,
        String arguments,
        String result,
        double expected,
        String unit,
        String tolerance,
        String source) {
    /** Reads a row. */
    public static final class Reader implements ArgumentsAggregator {
        @Override
        public PublishedCase aggregateArguments(ArgumentsAccessor row, ParameterContext context) {
            return new PublishedCase(
                    row.getString(0),
                    row.getString(1),
                    row.getString(2),
                    row.getString(3),
                    row.getDouble(4),
                    row.getString(5),
                    row.getString(6),
                    row.getString(7));
        }
    }

    /** Checks that a calculator's formula agrees within the tolerance. */
    public void assertAgrees(Calculator calculator) {
        Answer answer = FormulaCall.answer(FormulaCall.formula(calculator, formula), arguments, ",");
        Answer.Result found = FormulaCall.result(answer, result);
        double width = Double.parseDouble(tolerance.substring(0, tolerance.indexOf(' ')));
        double allowed = tolerance.endsWith("%") ? expected * width / 100 : width;
        assertEquals(expected, Quantities.toUnit(found.kind(), found.si(), unit), allowed, id + ", " + source);
    }
}
