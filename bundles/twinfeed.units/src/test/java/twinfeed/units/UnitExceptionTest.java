// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitExceptionTest {
    private static final String PRESSURE_UNITS = "bar, kPa, mbar, Pa, MPa, hPa, psi, m head, ft head";

    @Test
    void saysWhatIsWrongAndWhatWouldBeRight() {
        UnitException refused = assertThrows(UnitException.class, () -> Pressure.valueOf(" 3.0  baar"));
        assertEquals("3.0 baar", refused.reading());
        assertEquals(Kind.PRESSURE, refused.kind());
        assertEquals("\"baar\" is not a unit of pressure", refused.wrong());
        assertEquals("write it in " + PRESSURE_UNITS, refused.right());
        assertEquals(
                "\"3.0 baar\": \"baar\" is not a unit of pressure; write it in " + PRESSURE_UNITS,
                refused.getMessage());
        assertEquals(refused.getMessage(), refused.message(Locale.UK));
    }

    @Test
    void listsTheUnitsWhereNoneIsWritten() {
        UnitException refused = assertThrows(UnitException.class, () -> Pressure.valueOf("3.0"));
        assertEquals("\"3.0\": \"3.0\" has no unit; write pressure in " + PRESSURE_UNITS, refused.getMessage());
    }

    @Test
    void offersTheSpellingThatDiffersInItsCase() {
        UnitException refused = assertThrows(UnitException.class, () -> Resistance.valueOf("350 MOHM"));
        assertEquals("\"MOHM\" is not clear: m and M are different", refused.wrong());
        assertEquals("did you mean mohm, mOhm, Mohm, MOhm?", refused.right());
    }

    @Test
    void aRatioIsSaidToNeedNoUnit() {
        UnitException refused = assertThrows(UnitException.class, () -> Ratio.valueOf("0.8 bar"));
        assertEquals(
                "\"bar\" is not a unit of ratio; write it in no unit, %",
                refused.getMessage().substring(11));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''; empty",
                "'   '; empty",
                "bar; noNumber",
                "NaN bar; noNumber",
                "Infinity bar; noNumber",
                "-∞ bar; noNumber",
                "- 3 bar; noNumber",
                ". bar; noNumber",
                "--3 bar; noNumber",
                "٣ bar; noNumber",
                "abc; noNumber",
                "3; noUnit",
                "3e5; noUnit",
                "0x1F bar; unknownUnit",
                "0x1p3 bar; unknownUnit",
                "3f bar; unknownUnit",
                "3 L/min; unknownUnit",
                "3 bar bar; unknownUnit",
                "3 e5 bar; unknownUnit",
                "3 %; unknownUnit",
                "3 m; unknownUnit",
                "3 Mbar; unclearCase",
                "3 BARR; unknownUnit",
                "1e400 bar; outOfRange",
                "-1e400 bar; outOfRange",
                "1e-400 bar; outOfRange",
                "1e308 bar; outOfRange",
                "1e999999999 bar; outOfRange",
                "1e-999999999 bar; outOfRange",
                "1e99999999999999999999 bar; outOfRange",
                "1e300 Pa ± 1e300 %; outOfRange",
                "1e-320 mbar ± 1e-320 %; outOfRange",
                "3 bar ±; noTolerance",
                "3 bar u; noTolerance",
                "± 3 bar; noTolerance",
                "3 bar ± -0.1; negativeTolerance",
                "3 bar u -1 %; negativeTolerance",
                "3 bar ± bar; noNumber",
                "3 bar ± 0.1 baar; unknownUnit",
                "3 bar ± 0.1 ± 0.1; unknownUnit",
                "3 bar ± 0.1 u 0.1; unknownUnit",
                "3 ± 0.1 bar; noUnit",
                "3 bar ± 1 000 Pa; grouped",
                "3 4 bar; grouped",
            })
    void refuses(String text, String key) {
        UnitException refused = assertThrows(UnitException.class, () -> Pressure.valueOf(text));
        assertEquals(key, refused.key(), refused.getMessage());
        assertFalse(refused.getMessage().contains("{"), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "5, noUnit",
        "5 A, unknownUnit",
        "5 °C ± 2 %, percentOfTemperature",
        "5 °C ± 0.1 bar, unknownUnit",
        "-300 C, belowAbsoluteZero",
        "-1 K, belowAbsoluteZero",
        "-460 F, belowAbsoluteZero",
    })
    void refusesTemperature(String text, String key) {
        assertEquals(
                key,
                assertThrows(UnitException.class, () -> Temperature.valueOf(text))
                        .key());
    }

    @Test
    void aBookIsNoReading() {
        UnitException refused = assertThrows(UnitException.class, () -> Pressure.valueOf("9".repeat(100_000)));
        assertEquals("tooLong", refused.key());
        assertTrue(refused.getMessage().length() < 300);
    }

    @Test
    void theBundleHasATextForEverythingAndNothingElse() {
        TreeSet<String> expected = new TreeSet<>();
        expected.add("bare");
        for (UnitException.Fault fault : UnitException.Fault.values()) {
            expected.add(fault.key + ".wrong");
            expected.add(fault.key + ".right");
        }
        for (Kind kind : Kind.values()) {
            expected.add("kind." + kind.name());
        }
        ResourceBundle bundle = ResourceBundle.getBundle("twinfeed.units.messages", Locale.ROOT);
        assertEquals(expected, new TreeSet<>(bundle.keySet()));
    }
}
