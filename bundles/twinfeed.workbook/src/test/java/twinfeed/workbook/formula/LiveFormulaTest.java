// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiveFormulaTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-x^2 | (-(v_x^2))",
                "-(a + b) | (-(v_a+v_b))",
                "(-x)^2 | (-v_x)^2",
                "2^3^2 | 2^(3^2)",
                "(2^3)^2 | (2^3)^2",
                "a - b - c | v_a-v_b-v_c",
                "a - (b - c) | v_a-(v_b-v_c)",
                "a + (b + c) | v_a+(v_b+v_c)",
                "a / b * c | v_a/v_b*v_c",
                "a / (b * c) | v_a/(v_b*v_c)",
                "a + b * c | v_a+v_b*v_c",
                "(a + b) * c | (v_a+v_b)*v_c",
                "a * b^2 | v_a*v_b^2",
                "a * -b | v_a*(-v_b)",
                "x^-1 | v_x^(-1)",
                "ln(x) | LN(v_x)",
                "sqrt(exp(x)) | SQRT(EXP(v_x))",
                "min(a, max(b, 2.5)) | MIN(v_a,MAX(v_b,2.5))",
                "if(a <= 3, 1, 7e-6) | IF(v_a<=3,1,7.0E-6)",
            })
    void bracketsSayWhatTheGrammarMeans(String expression, String formula) {
        assertEquals(formula, LiveFormula.of(expression, symbol -> "v_" + symbol));
    }

    @Test
    void whatIsNoExpressionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> LiveFormula.of("a +", symbol -> symbol));
    }
}
