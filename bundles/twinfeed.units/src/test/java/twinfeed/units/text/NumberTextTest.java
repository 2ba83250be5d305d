// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class NumberTextTest {
    /** As the JDK writes numbers, which rounds the exact binary value to even; but for the sign of a rounded zero. */
    @Property
    void writesAsTheJdkDoes(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @IntRange(max = 6) int decimals,
            @ForAll boolean german) {
        Locale locale = german ? Locale.GERMAN : Locale.ENGLISH;
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        String jdk = format.format(value);
        assertEquals(
                jdk.matches("-0([.,]0*)?") ? jdk.substring(1) : jdk, new NumberText(locale).fixed(value, decimals));
    }

    @Test
    void leavesOutTheZerosThatDecimalsDoNotNeed() {
        NumberText english = new NumberText(Locale.ENGLISH);
        assertEquals("1200", english.rounded(1200, 0, 3));
        assertEquals("0.5", english.rounded(0.5004, 0, 3));
        assertEquals("0.50", english.rounded(0.5004, 2, 3));
        assertEquals("0", english.rounded(-0.0004, 0, 3));
        assertEquals("0.0", english.fixed(-0.04, 1));
        assertEquals("\u221E", english.fixed(Double.POSITIVE_INFINITY, 1));
        assertEquals("-\u221E", english.fixed(Double.NEGATIVE_INFINITY, 1));
        assertEquals("?", english.fixed(Double.NaN, 1));
    }

    @Test
    void keepsOrDropsTheZerosOfDecimalNumbers() {
        NumberText german = new NumberText(Locale.GERMAN);
        assertEquals("2,50", german.pointed(new BigDecimal("2.50")));
        assertEquals("2,5", german.exact(new BigDecimal("2.50")));
        assertEquals("0", german.exact(new BigDecimal("0.00")));
        assertEquals("12,5 %", german.percent(new BigDecimal("0.125")));
        assertEquals("1230", german.significant(1234.5, 3));
        assertEquals("0", german.significant(1e-13, 3));
        assertEquals("0,0123", german.significant(0.012345, 3));
    }

    @Test
    void moneyAndSharesFollowTheLanguage() {
        assertEquals("\u00A31,234.50", new NumberText(Locale.UK).money(new BigDecimal("1234.5"), "GBP"));
        assertEquals("12.5%", new NumberText(Locale.UK).shortPercent(new BigDecimal("0.125")));
        assertEquals("1.5", new NumberText(Locale.ROOT).fixed(1.5, 1));
    }
}
