// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import twinfeed.units.text.TextPattern;

class DisplayUnitTest {
    /** Factors of the SI brochure, 9th edition: prefixes (table 7), litre and minute (table 8), bar (table 8 of the 8th edition). */
    @ParameterizedTest
    @CsvSource({
        "PRESSURE, bar, 70000, 0.7",
        "FLOW, L/min, 0.0002, 12",
        "CURRENT, mA, 0.03, 30",
        "CURRENT, kA, 6000, 6",
        "DURATION, ms, 0.3, 300",
        "RESISTANCE, MΩ, 2000000, 2",
        "LENGTH, mm, 0.015, 15",
        "AREA, mm², 0.000006, 6",
        "RATIO, %, 0.05, 5",
        "TEMPERATURE, °C, 41, 41"
    })
    void convertsBothWays(Kind kind, String symbol, double si, double shown) {
        DisplayUnit unit = DisplayUnit.of(kind, symbol);
        assertEquals(shown, unit.fromSi(si), 1e-12 * shown);
        assertEquals(si, unit.toSi(shown), 1e-12 * si);
        assertEquals(symbol, unit.symbol());
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theTradesUnitIsThatOfTheTable(Kind kind) {
        DisplayUnit unit = DisplayUnit.of(kind);
        assertEquals(kind == Kind.RATIO ? "" : kind.displayUnit(), unit.symbol());
        assertEquals(kind.displayUnitsPerSi(), unit.fromSi(1), 1e-15 * kind.displayUnitsPerSi());
        assertEquals(Quantities.toUnit(kind, 12.5, kind.displayUnit()), unit.fromSi(12.5), 1e-12 * unit.fromSi(12.5));
    }

    @Test
    void unitOfAnotherKindIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> DisplayUnit.of(Kind.CURRENT, "bar"));
    }

    @Test
    void unitWithAnotherZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> DisplayUnit.of(Kind.TEMPERATURE, "°F"));
    }

    @Test
    void textPrintsAnAmountInItsUnit() {
        Map<String, Object> given =
                Map.of("flow", Kind.FLOW.amount(1.25e-4), "residual", DisplayUnit.MILLIAMPERE.amount(0.03));
        assertEquals("7.5 L/min at 30 mA", TextPattern.fill("{flow:1} L/min at {residual:0} mA", given, Locale.UK));
    }

    @Test
    void amountsAreEqualWhereValueAndUnitAre() {
        assertEquals(Kind.POWER.amount(9500), DisplayUnit.of(Kind.POWER, "kW").amount(9500));
        assertEquals("9.5", Kind.POWER.amount(9500).toString());
        assertEquals(9500, Kind.POWER.amount(9500).si());
    }
}
