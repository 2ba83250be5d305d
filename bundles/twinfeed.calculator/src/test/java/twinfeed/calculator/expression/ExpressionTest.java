// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.expression.Expression.Binary;
import twinfeed.calculator.expression.Expression.Call;
import twinfeed.calculator.expression.Expression.Comparison;
import twinfeed.calculator.expression.Expression.Negative;
import twinfeed.calculator.expression.Expression.Number;
import twinfeed.calculator.expression.Expression.Symbol;

class ExpressionTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 + 2 * 3|7",
                "-2^2|-4",
                "(-2)^2|4",
                "2^3^2|512",
                "2^-1|0.5",
                "8 / 4 / 2|1",
                "7 - 3 - 2|2",
                "sqrt(x) + ln(exp(2))|5",
                "min(x, 4) * max(1, 2)|8",
                "if(x >= 9, 1, 2)|1",
                "if(x < 9, 1, 2)|2",
                "1.5e-3 * 2E3|3",
                "--3|3",
                "if(x > 9, 1, 2)|2",
                "if(x > 8.9, 1, 2)|1",
                "if(x <= 9, 1, 2)|1",
                "if(x <= 8.9, 1, 2)|2",
                "if(x >= 9.1, 1, 2)|2",
                "if(8.9 < x, 1, 2)|1",
                "if(x<9.1,x+1,2)|10",
                "2e+2|200",
                ".5 * x|4.5",
                "12.25|12.25",
                " ( x - 1 ) / 2 |4",
                "7 - 3 + 2|6",
                "12 / 4 * 3|9",
                "max(if(x > 1, 3, 4), min(5, 2))|3"
            })
    void evaluates(String text, double expected) {
        assertEquals(expected, Expression.parse(text).evaluate(Map.of("x", 9.0)), 1e-12);
        assertEquals(expected, new ExpressionParser(text).parse().evaluate(Map.of("x", 9.0)), 1e-12, "read anew");
    }

    @Test
    void theTreeShowsWhatBindsToWhat() {
        assertEquals(
                new Binary('+', new Symbol("a_1"), new Binary('*', new Number(2, "2"), new Negative(new Symbol("b")))),
                new ExpressionParser("a_1 + 2*-b").parse());
        assertEquals(
                new Negative(new Binary('^', new Symbol("x"), new Negative(new Number(1.50, "1.50")))),
                new ExpressionParser("-x^-1.50").parse());
        assertEquals(
                new Call(
                        Expression.Function.IF,
                        List.of(
                                new Comparison(">=", new Symbol("x"), new Number(1e-3, "1e-3")),
                                new Call(Expression.Function.LN, List.of(new Symbol("x"))),
                                new Number(0, "0"))),
                new ExpressionParser("if(x >= 1e-3, ln(x), 0)").parse());
        assertEquals(
                new Comparison("<", new Symbol("x"), new Number(2, "2")),
                ((Call) new ExpressionParser("if(x<2,1,0)").parse()).arguments().get(0));
    }

    @Test
    void functionsAreWrittenInLowerCase() {
        assertEquals(
                List.of("sqrt", "ln", "exp", "min", "max", "if"),
                Stream.of(Expression.Function.values())
                        .map(Expression.Function::word)
                        .toList());
    }

    /** The position is counted from 1, as a person counts. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 2|expected the end at position 3 of 1 2",
                "(1 + x|expected \")\" at position 7 of (1 + x",
                "min(1)|expected \",\" at position 6 of min(1)",
                "exp(1, 2)|expected \")\" at position 6 of exp(1, 2)",
                "if(1, 2, 3)|expected a comparison at position 5 of if(1, 2, 3)",
                "1 + * 2|expected a number, a symbol or a bracket at position 5 of 1 + * 2",
                "foo(1)|no function foo in foo(1)"
            })
    void whatCannotBeReadIsSaidWithItsPlace(String text, String reason) {
        assertEquals(
                reason,
                assertThrows(IllegalArgumentException.class, () -> new ExpressionParser(text).parse())
                        .getMessage());
    }

    @Test
    void aComparisonAloneHasNoValue() {
        Expression comparison = new Comparison("<", new Number(1, "1"), new Number(2, "2"));
        assertThrows(IllegalArgumentException.class, () -> comparison.evaluate(Map.of()));
    }

    /** The texts of workings with figures of a house in them must not fill the memory. */
    @Test
    void anExpressionIsReadOnceAndForgottenAfterThousandsOfOthers() {
        Expression first = Expression.parse("kept + 1");
        assertSame(first, Expression.parse("kept + 1"));
        for (int other = 0; other < 10_000; other++) {
            Expression.parse("kept + 1." + other);
        }
        assertNotSame(first, Expression.parse("kept + 1"));
        assertEquals(first, Expression.parse("kept + 1"));
        // All are forgotten at once when there are too many; that can fall between two, but not every time.
        assertTrue(IntStream.range(0, 3).anyMatch(ExpressionTest::isKeptBesideAnother));
    }

    private static boolean isKeptBesideAnother(int number) {
        Expression one = Expression.parse("one + " + number);
        Expression.parse("another + " + number);
        return one == Expression.parse("one + " + number);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "1 +", "foo(1)", "1 2", "if(1, 2, 3)", "min(1)", "(1", "_x", "1 < 2", "a b", "if(x <", "1e"})
    void refuses(String text) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Expression.parse(text));
        assertTrue(refused.getMessage().length() > 10);
    }

    @Test
    void aSymbolWithoutValueIsNamed() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> Expression.parse("y").evaluate(Map.of()));
        assertEquals("no value for y", refused.getMessage());
    }
}
