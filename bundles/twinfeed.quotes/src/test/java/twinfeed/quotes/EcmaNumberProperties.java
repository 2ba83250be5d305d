// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class EcmaNumberProperties {
    private static final String SEED = "20261125";

    @Property(seed = SEED, tries = 5000)
    void readsBackAsTheSameNumberWithNoMoreDigitsThanTheJdk(@ForAll long bits) {
        double value = Double.longBitsToDouble(bits);
        Assume.that(Double.isFinite(value));
        String text = EcmaNumber.text(value);
        assertEquals(value + 0.0, Double.parseDouble(text) + 0.0);
        assertTrue(digits(text) <= digits(Double.toString(value)), text);
    }

    @Property(seed = SEED, tries = 2000)
    void printsShortDecimalsAsTyped(@ForAll int unscaled) {
        java.math.BigDecimal typed = java.math.BigDecimal.valueOf(unscaled, 3);
        String text = EcmaNumber.text(typed.doubleValue());
        assertEquals(0, typed.compareTo(new java.math.BigDecimal(text)));
    }

    private static int digits(String number) {
        String mantissa = number.replaceAll("[eE].*", "").replaceAll("[-.]", "");
        return mantissa.replaceAll("^0+", "").replaceAll("0+$", "").length();
    }
}
