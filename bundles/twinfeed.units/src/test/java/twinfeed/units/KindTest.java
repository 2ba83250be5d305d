// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class KindTest {

    @ParameterizedTest
    @EnumSource(Kind.class)
    void itsOwnSymbolIsUnderstoodAndChangesNothing(Kind kind) {
        assertTrue(kind.understands(kind.symbol()));
        assertTrue(kind.symbol().chars().allMatch(c -> c < 128), "the SI symbol is ASCII");
        assertEquals(0.1, Typed.si(kind, 0.1, kind.symbol()));
        assertEquals(0.1, Quantities.toUnit(kind, 0.1, kind.symbol()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theDisplayUnitIsOneOfItsUnits(Kind kind) {
        assertTrue(kind.unitSymbols().contains(kind.displayUnit()));
        assertTrue(kind.spellings().containsAll(kind.unitSymbols()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void noSpellingMeansTwoUnits(Kind kind) {
        Map<String, TradeUnit> seen = new HashMap<>();
        for (TradeUnit unit : kind.units().units()) {
            assertNull(seen.put(Spelling.key(unit.symbol()), unit));
            for (String alias : unit.aliases()) {
                assertNull(seen.put(Spelling.key(alias), unit), alias);
            }
        }
    }

    /** What the parser relies on: a unit is told from the number before it and from the tolerance behind it. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void noSpellingLooksLikeANumberOrATolerance(Kind kind) {
        for (String spelling : kind.spellings()) {
            assertFalse(spelling.matches(".*[.,±+].*"), spelling);
            assertFalse(spelling.matches("[eE][-0-9].*|-.*"), spelling);
            assertFalse((spelling + " ").contains(" u "), spelling);
            assertTrue(kind == Kind.RATIO || !Character.isDigit(spelling.charAt(0)), spelling);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, BAR, bar",
        "PRESSURE, Kpa, kPa",
        "PRESSURE, MPA, MPa",
        "PRESSURE, PSI, psi",
        "PRESSURE, m HEAD, m head",
        "FLOW, L/MIN, L/min",
        "FLOW, l / min, L/min",
        "FLOW, us GPM, US gpm",
        "POWER, KW, kW",
        "POWER, kw, kW",
        "VOLTAGE, v, V",
        "CURRENT, AMPS, A",
        "TEMPERATURE, c, °C",
        "TEMPERATURE, ºC, °C",
        "TEMPERATURE, ℃, °C",
        "TEMPERATURE, DEGC, °C",
        "TEMPERATURE, f, °F",
        "RESISTANCE, OHM, Ω",
        "RESISTANCE, \u2126, Ω",
        "RESISTANCE, mOhm, mΩ",
        "RESISTANCE, KOHM, kΩ",
        "GRADIENT_RESISTANCE, Ohm/km, Ω/km",
        "RESISTANCE, MOhm, MΩ",
        "DURATION, MIN, min",
        "DURATION, H, h",
        "ENERGY, KWH, kWh",
        "CONCENTRATION, mg/l, mg/L",
        "CONCENTRATION, PPM, mg/L",
        "LENGTH, μm, µm",
        "RESISTANCE, k\u2126, kΩ",
        "TEMPERATURE, \u2109, °F",
        "AREA, mm^2, mm²",
        "GRADIENT_VOLTAGE, mV/(A\u22c5m), mV/A/m",
    })
    void caseIsFreeWhereItIsClear(Kind kind, String typed, String symbol) {
        assertEquals(symbol, kind.find(typed).orElseThrow().symbol());
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, Mbar",
        "PRESSURE, MBAR",
        "PRESSURE, mpa",
        "PRESSURE, M head",
        "LENGTH, M",
        "LENGTH, MM",
        "LENGTH, mM",
        "LENGTH, KM",
        "AREA, MM2",
        "CURRENT, MA",
        "VOLTAGE, MV",
        "RESISTANCE, MOHM",
        "RESISTANCE, mOHM",
        "DURATION, MS",
        "FLOW, M3/h",
        "ENERGY, mJ",
        "GRADIENT_RESISTANCE, ohm/M",
    })
    void smallAndCapitalMAreNeverTakenForEachOther(Kind kind, String typed) {
        assertFalse(kind.understands(typed));
    }

    @ParameterizedTest
    @CsvSource({"FLOW, gpm", "LET_THROUGH, kA2s", "PRESSURE, m", "TEMPERATURE, bar", "POWER, A"})
    void whatCouldMeanTwoThingsIsNoUnit(Kind kind, String typed) {
        assertFalse(kind.understands(typed));
    }

    @Test
    void onlyARatioMayBeBare() {
        assertEquals(
                List.of(Kind.RATIO),
                List.of(Kind.values()).stream().filter(Kind::mayBeBare).toList());
    }

    @Test
    void expressionsChangeToTheUnitOfTheTradeAndBackByItsFactor() {
        assertEquals(60_000, Kind.FLOW.displayUnitsPerSi());
        assertEquals(100_000, Kind.PRESSURE.siPerDisplayUnit());
        assertEquals("m / rho * 60000", Kind.FLOW.inDisplayUnit("m / rho"));
        assertEquals("Q / 60000", Kind.FLOW.inSi("Q"));
        assertEquals("rho * g * z / 100000", Kind.PRESSURE.inDisplayUnit("rho * g * z"));
        assertEquals("dp * 100000", Kind.PRESSURE.inSi("dp"));
        assertEquals("U", Kind.VOLTAGE.inSi("U"));
    }
}
