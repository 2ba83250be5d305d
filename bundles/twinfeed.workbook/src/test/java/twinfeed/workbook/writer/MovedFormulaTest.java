// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MovedFormulaTest {
    private static final int NEAR = 60;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "C490+C498 | C490+C498", // near, same column
                "C12+C498 | $C$12+C498", // far up stands what all blocks share
                "B500+A500+E500 | B500+$A500+$E500",
                "MIN(C499,J482) | MIN(C499,$J482)",
                "LOG10(C499) | LOG10(C499)", // a function, not a cell
                "1.0E-9*C499 | 1.0E-9*C499",
                "'Survey'!$B$166+C499 | 'Survey'!$B$166+C499",
                "'C499'!C499 | 'C499'!C499",
                "IF(C499>0,\"C499\",\"x\") | IF(C499>0,\"C499\",\"x\")",
                "v_C499 | v_C499",
            })
    void whatIsFarOrInAnotherColumnIsAnchored(String formula, String anchored) {
        assertEquals(anchored, new MovedFormula(formula, 500, 2, NEAR).anchored());
    }

    @Test
    void aFilledDownFormulaIsTheSame() {
        String here = new MovedFormula("C499*C12", 500, 2, NEAR).relative();
        assertEquals(here, new MovedFormula("C599*C12", 600, 2, NEAR).relative());
        assertEquals(here, new MovedFormula("D499*C12", 500, 3, NEAR).relative());
        assertNotEquals(here, new MovedFormula("C598*C12", 600, 2, NEAR).relative());
        assertNotEquals(here, new MovedFormula("C599*C13", 600, 2, NEAR).relative());
    }
}
