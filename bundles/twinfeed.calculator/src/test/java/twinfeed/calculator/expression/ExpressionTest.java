// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
                "--3|3"
            })
    void evaluates(String text, double expected) {
        assertEquals(expected, Expression.parse(text).evaluate(Map.of("x", 9.0)), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1 +", "foo(1)", "1 2", "if(1, 2, 3)", "min(1)", "(1", "_x", "1 < 2", "a b"})
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
