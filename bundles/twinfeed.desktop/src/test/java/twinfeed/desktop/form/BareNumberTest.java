// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import twinfeed.units.Kind;

final class BareNumberTest {
    @Test
    void numberTakesTheUnitOfItsField() {
        assertEquals("40 A", BareNumber.withUnit(Kind.CURRENT, " 40 "));
        assertEquals("2.5 mm²", BareNumber.withUnit(Kind.AREA, "2.5"));
        assertEquals("9,5 kW", BareNumber.withUnit(Kind.POWER, "9,5"));
        assertEquals("15 m ± 1 m", BareNumber.withUnit(Kind.LENGTH, "15 ± 1"));
        assertEquals("-0.3 m", BareNumber.withUnit(Kind.LENGTH, "-0.3"));
    }

    @Test
    void everythingElseStaysAsItWasTyped() {
        assertEquals("40 A", BareNumber.withUnit(Kind.CURRENT, "40 A"));
        assertEquals("forty", BareNumber.withUnit(Kind.CURRENT, "forty"));
        assertEquals("", BareNumber.withUnit(Kind.CURRENT, " "));
        assertEquals("0.05", BareNumber.withUnit(Kind.RATIO, "0.05"), "a share needs no unit");
    }
}
