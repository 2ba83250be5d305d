// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of screens and drawings: three significant digits, never more than four decimals. */
class FiguresTest {
    private static final Figures ENGLISH = new Figures(Locale.UK);

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1234.4, 1234",
        "123.4, 123",
        "99.96, 100.0",
        "12.34, 12.3",
        "1.234, 1.23",
        "0.1234, 0.123",
        "0.01234, 0.0123",
        "0.001, 0.0010",
        "-12.34, -12.3",
        "0.00000152, 1.52 × 10⁻⁶",
        "-0.00098, -9.80 × 10⁻⁴",
        "0.000000000012, 1.20 × 10⁻¹¹"
    })
    void threeDigits(double value, String text) {
        assertEquals(text, ENGLISH.number(value));
    }

    @Test
    void withAUnitOrWithoutAValue() {
        assertEquals("", ENGLISH.number(null));
        assertEquals("", ENGLISH.withUnit(null, "bar"));
        assertEquals("1.50 bar", ENGLISH.withUnit(1.5, "bar"));
        assertEquals("1.50", ENGLISH.withUnit(1.5, null));
        assertEquals("1.50", ENGLISH.withUnit(1.5, ""));
        assertEquals("1,50 bar", new Figures(Locale.GERMANY).withUnit(1.5, "bar"));
    }

    /** A margin always has its sign, the decimals of its limit, and enough of them that a small one does not read as none. */
    @Test
    void aMargin() {
        assertEquals("", ENGLISH.margin(null, 0.7, "bar"));
        assertEquals("+8.0 A", ENGLISH.margin(8.0, 40.0, "A"));
        assertEquals("−8.0 A", ENGLISH.margin(-8.0, 40.0, "A"));
        assertEquals("+0.50", ENGLISH.margin(0.5, 5.0, null));
        assertEquals("+0.500", ENGLISH.margin(0.5, null, ""));
        assertEquals("+0.0", ENGLISH.margin(0.0, 40.0, ""));
        assertEquals("−0.004 A", ENGLISH.margin(-0.004, 40.0, "A"));
        assertEquals("−5.00 × 10⁻⁵ A", ENGLISH.margin(-0.00005, 40.0, "A"));
        assertEquals("+5.00 × 10⁻⁵ A", ENGLISH.margin(0.00005, 40.0, "A"));
        assertEquals("+0.0002", ENGLISH.margin(0.0002, 40.0, ""));
    }

    @Test
    void sharesAndMoney() {
        assertEquals("", ENGLISH.percent(null));
        assertEquals("12.5%", ENGLISH.percent(new BigDecimal("0.125")).replace("\u00a0", ""));
        assertEquals("", ENGLISH.money(null, "GBP"));
        assertEquals("£12.50", ENGLISH.money(new BigDecimal("12.50"), "GBP"));
    }
}
