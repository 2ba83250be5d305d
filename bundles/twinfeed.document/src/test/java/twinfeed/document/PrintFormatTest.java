// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintFormatTest {
    private static final DocumentTexts WORDS = new DocumentTexts(Locale.UK);

    /** Decimals of a currency by ISO 4217: two for GBP, none for JPY, three for BHD. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "GBP;0;£0.00",
                "GBP;999.995;£1,000.00",
                "GBP;1234567.8;£1,234,567.80",
                "GBP;-12.5;−£12.50",
                "EUR;12;€12.00",
                "JPY;1234;JPY 1,234",
                "BHD;1.5;BHD 1.500",
                "XYZ;1;XYZ 1.00"
            })
    void amountsAreWrittenByTheirCurrency(String currency, BigDecimal amount, String written) {
        assertEquals(written, new PrintFormat(WORDS, currency).amount(amount));
    }

    @Test
    void withoutACurrencyAnAmountHasNoSign() {
        assertEquals("12.00", new PrintFormat(WORDS, null).amount(new BigDecimal("12")));
    }

    @Test
    void absentIsEmptyNotZero() {
        assertEquals("", new PrintFormat(WORDS, "GBP").amount(null));
        assertEquals("", new PrintFormat(WORDS, "GBP").day(null));
    }

    @Test
    void daysNameTheirMonth() {
        assertEquals("25 Nov 2026", new PrintFormat(WORDS, null).day(LocalDate.of(2026, 11, 25)));
        assertEquals("5 Jan 2026", new PrintFormat(new DocumentTexts(Locale.ROOT), null).day(LocalDate.of(2026, 1, 5)));
    }
}
