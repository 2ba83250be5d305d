// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Handworked. */
class PolynomialTest {
    @Test
    void hasTheValueOfItsTerms() {
        // 3 - 2 x + 0.5 x^3 at 2: 3 - 4 + 4
        assertEquals(3, Polynomial.of("3", "-2", "0", "0.5").at(2));
        assertEquals(7, Polynomial.of("7", "1").at(0));
    }

    @Test
    void isWrittenInHornersOrderWithoutASignBeforeANumber() {
        assertEquals(
                "3 + t * (t * (0 + t * 0.5) - 2)",
                Polynomial.of("3", "-2", "0", "0.5").expression("t"));
        assertEquals("0 - 1.5 - t * 0.00001", Polynomial.of("-1.5", "-0.00001").expression("t"));
        assertEquals("4 + t * 2", Polynomial.of("4.0", "2").expression("t"));
        assertEquals("0 + t * 0", Polynomial.of("0", "0").expression("t"));
        assertEquals("0 + t * (1 + t * 2)", Polynomial.of("0", "1", "2").expression("t"));
    }

    @Test
    void aDerivativeIsExact() {
        // 0.1 three times is not 0.3 in binary; as a decimal it is.
        Polynomial derivative = Polynomial.of("3", "-2", "0", "0.1").derivative();
        assertEquals("t * (0 + t * 0.3) - 2", derivative.expression("t"));
        assertEquals(0.3 * 4 - 2, derivative.at(2), 1e-15);
    }
}
