// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @Test
    void valueWithoutTolerance() {
        Pressure pressure = Pressure.valueOf("3.0 bar");
        assertAll(
                () -> assertEquals(300000, pressure.si()),
                () -> assertEquals(Kind.PRESSURE, pressure.kind()),
                () -> assertFalse(pressure.hasTolerance()),
                () -> assertEquals(0, pressure.halfWidthSi()),
                () -> assertFalse(pressure.normal()));
    }

    /** kind, text, half-width in SI: handworked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "PRESSURE; 3.0 bar ± 0.05 bar; 5000",
                "PRESSURE; 3.0 bar +/- 0.05 bar; 5000",
                "PRESSURE; 3.0 bar +- 0.05 bar; 5000",
                "PRESSURE; 3.0 bar±0.05; 5000",
                "PRESSURE; 3.0 bar ± 5 kPa; 5000",
                "PRESSURE; 3.0 bar ± 2 %; 6000",
                "PRESSURE; 3.0 bar ± 2%; 6000",
                "PRESSURE; -0.2 bar ± 10 %; 2000",
                "PRESSURE; 3.0 bar ± 0; 0",
                "TEMPERATURE; 5 C ± 0.5 K; 0.5",
                "TEMPERATURE; 5 C ± 0.5 C; 0.5",
                "TEMPERATURE; 5 °C ± 0.5; 0.5",
                "TEMPERATURE; 278.15 K ± 0.5; 0.5",
                "TEMPERATURE; 41 F ± 9; 5",
                "TEMPERATURE; 5 C ± 9 °F; 5",
                "TEMPERATURE; 41 °F ± 0.5 K; 0.5",
                "TEMPERATURE_DIFFERENCE; 30 K ± 9 F; 5",
                "TEMPERATURE_DIFFERENCE; 30 °C ± 10 %; 3",
                "RATIO; 80 % ± 2 %; 0.02",
                "RATIO; 80 % ± 2; 0.02",
                "RATIO; 0.8 ± 0.02; 0.02",
                "RATIO; 0.8 ± 2 %; 0.02",
            })
    void rectangularTolerance(Kind kind, String text, double halfWidthSi) {
        Quantity quantity = Quantities.parse(kind, text);
        assertTrue(quantity.hasTolerance());
        assertFalse(quantity.normal());
        assertEquals(halfWidthSi, quantity.halfWidthSi());
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 3.0 bar u 0.02 bar, 2000",
        "PRESSURE, 3.0 bar u 0.02, 2000",
        "PRESSURE, 3.0 bar u 1 %, 3000",
        "FLOW, 6 US gpm u 0.1 L/s, 1e-4",
        "TEMPERATURE, 41 F u 1.8 F, 1",
        "RATIO, 0.8 u 0.01, 0.01",
    })
    void standardUncertainty(Kind kind, String text, double uncertaintySi) {
        Quantity quantity = Quantities.parse(kind, text);
        assertTrue(quantity.hasTolerance());
        assertTrue(quantity.normal());
        assertEquals(uncertaintySi, quantity.halfWidthSi());
    }

    @ParameterizedTest
    @ValueSource(strings = {"3.0 bar", "3 bar", "3.00bar", "+3.0 BAR ± 2%", "0.3e1 bar u 0.1", "−0.2 bar", ".5 bar"})
    void textIsKeptAsTyped(String typed) {
        assertEquals(typed, Pressure.valueOf(typed).toString());
        assertEquals(
                Pressure.valueOf(typed),
                Pressure.valueOf(Pressure.valueOf(typed).toString()));
    }

    @Test
    void spacesOfEveryWidthBecomeOne() {
        Pressure pressure = Pressure.valueOf("  3.0\u00a0\t bar\u202f±\n0.05 ");
        assertEquals("3.0 bar ± 0.05", pressure.toString());
        assertEquals(5000, pressure.halfWidthSi());
    }

    @Test
    void equalByValueToleranceAndText() {
        Pressure pressure = Pressure.valueOf("3.0 bar");
        assertEquals(pressure, Pressure.valueOf(" 3.0  bar"));
        assertEquals(pressure.hashCode(), Pressure.valueOf("3.0 bar").hashCode());
        assertNotEquals(pressure, Pressure.valueOf("3 bar"));
        assertNotEquals(pressure, Pressure.valueOf("3.0 bar ± 0"));
        assertNotEquals(Pressure.valueOf("3.0 bar ± 0.1"), Pressure.valueOf("3.0 bar u 0.1"));
        assertNotEquals((Object) Length.valueOf("5 m"), Velocity.ofSi(5));
        assertNotEquals(Pressure.valueOf("3.0 bar ± 0.1"), Pressure.valueOf("3.0 bar ± 0.2"));
        assertNotEquals((Object) pressure, "3.0 bar");
        assertEquals(Pressure.ofSi(300000), Pressure.valueOf("3 bar"));
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 300000, 3 bar",
        "FLOW, 2.5e-4, 15 L/min",
        "LENGTH, 0.015, 0.015 m",
        "AREA, 1e-5, 10 mm²",
        "TEMPERATURE, 5, 5 °C",
        "TEMPERATURE, -0.0, 0 °C",
        "POWER, 8500, 8.5 kW",
        "RATIO, 0.8, 0.8",
        "LET_THROUGH, 1e30, 1E+30 A²s",
        "FLOW, 1e-20, 6E-16 L/min",
    })
    void computedQuantityIsWrittenInTheTradesUnit(Kind kind, double si, String text) {
        assertEquals(text, Quantities.ofSi(kind, si).toString());
    }

    @Test
    void otherValueKeepsTheTolerance() {
        Quantity moved = Pressure.valueOf("3.0 bar ± 2 %").withSi(200000);
        assertEquals("2 bar ± 0.06 bar", moved.toString());
        assertEquals(6000, moved.halfWidthSi());
        assertEquals("6 °C u 0.5 K", Temperature.valueOf("5 °C u 0.5").withSi(6).toString());
    }

    @Test
    void otherToleranceKeepsTheValue() {
        Temperature intake = Temperature.valueOf("41 F");
        assertEquals("5 °C ± 0.5 K", intake.withHalfWidthSi(0.5).toString());
        assertEquals("5 °C u 0.25 K", intake.withStandardUncertaintySi(0.25).toString());
        assertEquals("5 °C ± 0 K", intake.withHalfWidthSi(0).toString());
        assertTrue(intake.withStandardUncertaintySi(0.25).normal());
        assertFalse(intake.withHalfWidthSi(0.5).normal());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -273.2})
    void impossibleValuesAreRefused(double si) {
        assertThrows(IllegalArgumentException.class, () -> Temperature.ofSi(si));
        assertThrows(IllegalArgumentException.class, () -> Temperature.ofSi(5).withHalfWidthSi(si));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void eachKindHasItsClass(Kind kind) throws ReflectiveOperationException {
        Quantity quantity = Quantities.ofSi(kind, 2);
        Class<?> type = quantity.getClass();
        assertEquals(kind, quantity.kind());
        // What the object store calls by reflection when it loads an attribute of this type.
        Object read = type.getMethod("valueOf", String.class).invoke(null, quantity.toString());
        assertEquals(quantity, read);
        Object made = type.getMethod("ofSi", double.class).invoke(null, 2.0);
        assertEquals(quantity, made);
        assertEquals(type, quantity.withSi(3).getClass());
        assertEquals(type, quantity.withHalfWidthSi(1).getClass());
        assertEquals(type, quantity.withStandardUncertaintySi(1).getClass());
    }

    @Test
    void textByLocaleIsWhatTheLocaleReads() {
        Pressure pressure = Pressure.valueOf("3.05 bar ± 0.5 %");
        assertEquals("3,05 bar ± 0,5 %", pressure.toString(Locale.GERMANY));
        assertEquals("3.05 bar ± 0.5 %", pressure.toString(Locale.UK));
        assertEquals("0,35 Ω ± 0,02 Ω", shown(Kind.RESISTANCE, "0.35 ohm ± 0.02 ohms"));
        assertEquals("1 MΩ", shown(Kind.RESISTANCE, "1 Mohm"));
        assertEquals("6 mm²", shown(Kind.AREA, "6 mm2"));
        assertEquals("12 L/min u 0,2 L/min", shown(Kind.FLOW, "12 litres/min u 0.2 lpm"));
        assertEquals("5 °C ± 0,5 °C", shown(Kind.TEMPERATURE, "5 degC ± 0.5 degC"));
        assertEquals("2 m head", shown(Kind.PRESSURE, "2 mH2O"));
        assertEquals("1,0E-6 m", shown(Kind.LENGTH, "1.0E-6 metres"));
        assertEquals("80 % ± 2 %", shown(Kind.RATIO, "80 percent ± 2 percent"));
        assertEquals(pressure, Quantities.parse(Kind.PRESSURE, pressure.toString(Locale.GERMANY), Locale.GERMANY));
    }

    private static String shown(Kind kind, String typed) {
        return Quantities.parse(kind, typed).toString(Locale.GERMANY);
    }
}
