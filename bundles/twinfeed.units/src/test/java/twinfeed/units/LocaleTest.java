// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers by the locales of the JDK (Unicode CLDR): German 1.234,5; French 1 234,5 with a narrow no-break space; Swiss
 * German 1'234.5 with a typographic apostrophe; Indian English 12,34,567.8.
 */
class LocaleTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "de-DE; 3,05 bar ± 0,5 %; 305000; 1525",
                "fr-FR; 3,05 bar ± 0,5 %; 305000; 1525",
                "fr-FR; 3.05 bar ± 0.5 %; 305000; 1525",
                "de-CH; 3.05 bar ± 0.5 %; 305000; 1525",
                "en-IN; 3.05 bar ± 0.5 %; 305000; 1525",
                "en-GB; 3.05 bar u 0.01; 305000; 1000",
                "de-DE; 1,5e2 kPa; 150000; 0",
                "de-DE; 3 bar; 300000; 0",
            })
    void readsTheDecimalsOfTheLocale(String tag, String typed, double si, double halfWidthSi) {
        Quantity quantity = Quantities.parse(Kind.PRESSURE, typed, Locale.forLanguageTag(tag));
        assertEquals(si, quantity.si());
        assertEquals(halfWidthSi, quantity.halfWidthSi());
        assertEquals(quantity, Pressure.valueOf(quantity.toString()), "its text is read everywhere");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "de-DE; 1.500 kPa",
                "de-DE; 1.5 kPa",
                "de-DE; 1.234,5 kPa",
                "fr-FR; 1 500 kPa",
                "fr-FR; 1\u202f500 kPa",
                "fr-FR; 1\u00a0500,5 kPa",
                "de-CH; 1’500 kPa",
                "de-CH; 1'500 kPa",
                "de-CH; 1500,5 kPa",
                "en-IN; 12,34,567.8 Pa",
                "en-IN; 1,500 kPa",
                "en-GB; 1,500 kPa",
                "en-GB; 3,0 bar",
                "en-GB; 3.0.0 bar",
                "en-GB; 1_500 kPa",
            })
    void refusesGroupsEverywhere(String tag, String typed) {
        Locale locale = Locale.forLanguageTag(tag);
        UnitException refused = assertThrows(UnitException.class, () -> Quantities.parse(Kind.PRESSURE, typed, locale));
        assertEquals("grouped", refused.key());
    }

    @Test
    void theAdviceIsWrittenWithTheSeparatorThatIsRead() {
        UnitException refused =
                assertThrows(UnitException.class, () -> Quantities.parse(Kind.PRESSURE, "1.500 kPa", Locale.GERMANY));
        assertEquals("write decimals behind \",\" and thousands without a separator, like 1500,5", refused.right());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "PRESSURE; 300000; 2; 3.0 bar",
                "PRESSURE; 300000; 1; 3 bar",
                "PRESSURE; 304999; 3; 3.05 bar",
                "PRESSURE; 0; 3; 0 bar",
                "PRESSURE; 123456789; 2; 1200 bar",
                "FLOW; 1.41666e-4; 3; 8.50 L/min",
                "FLOW; 1.6658e-4; 3; 9.99 L/min",
                "FLOW; 1.66661e-4; 3; 10.0 L/min",
                "TEMPERATURE; -4.96; 2; -5.0 °C",
                "AREA; 1e-5; 2; 10 mm²",
                "POWER; 9500; 2; 9.5 kW",
                "RATIO; 0.815; 2; 0.82",
                "GRADIENT_VOLTAGE; 0.0044; 2; 4.4 mV/A/m",
            })
    void formatsToSignificantDigits(Kind kind, double si, int significant, String text) {
        assertEquals(text, Quantities.format(kind, si, significant));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.0136; mm; 1; en-GB; 13.6 mm",
                "0.0136; mm; 1; de-DE; 13,6 mm",
                "1234567.8; Pa; 1; en-GB; 1234567.8 Pa",
                "1234567.8; Pa; 1; de-DE; 1234567,8 Pa",
                "1234567.8; Pa; 1; en-IN; 1234567.8 Pa",
                "2.5e-4; L/min; 2; fr-FR; 15,00 L/min",
                "-0.04; °C; 1; en-GB; 0.0 °C",
                "0.805; %; 0; en-GB; 81 %",
                "1.005; m; 2; en-GB; 1.01 m",
            })
    void formatsToDecimals(double si, String unit, int decimals, String tag, String text) {
        assertEquals(text, Quantities.format(si, unit, decimals, Locale.forLanguageTag(tag)));
    }

    @Test
    void aUnitOfTwoKindsNeedsTheKind() {
        assertThrows(IllegalArgumentException.class, () -> Quantities.format(5, "K", 1, Locale.ROOT));
        assertThrows(IllegalArgumentException.class, () -> Quantities.format(5, "°F", 1, Locale.ROOT));
        assertEquals("278.15 K", Quantities.format(Kind.TEMPERATURE, 5, "K", 2, Locale.ROOT));
        assertEquals("5.0 K", Quantities.format(Kind.TEMPERATURE_DIFFERENCE, 5, "K", 1, Locale.ROOT));
        assertThrows(IllegalArgumentException.class, () -> Quantities.format(5, "baar", 1, Locale.ROOT));
    }

    @Test
    void nothingToFormatIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Quantities.format(Kind.PRESSURE, Double.NaN, 2));
        assertThrows(IllegalArgumentException.class, () -> Quantities.format(Kind.PRESSURE, 3e5, 0));
        assertThrows(IllegalArgumentException.class, () -> Quantities.toUnit(Kind.FLOW, Double.NaN, "L/min"));
        assertThrows(UnitException.class, () -> Quantities.toUnit(Kind.FLOW, 1, "bar"));
    }
}
