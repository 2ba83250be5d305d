// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class PaletteTest {
    /** Contrast of white on the accent by WCAG 2.1: at least 4.5 to 1, which level AA asks for. */
    @Property
    void whiteOnTheAccentIsReadable(@ForAll @IntRange(max = 0xFFFFFF) int accent) {
        assertTrue(1.05 / (luminance(new Palette(accent).accent()) + 0.05) >= 4.5);
    }

    @net.jqwik.api.Example
    void aDarkAccentStays() {
        assertEquals(0x2F5D7C, new Palette(0x2F5D7C).accent());
    }

    private static double luminance(int rgb) {
        double sum = 0;
        double[] weights = {0.0722, 0.7152, 0.2126};
        for (int at = 0; at < 3; at++) {
            double channel = (rgb >> 8 * at & 0xFF) / 255.0;
            sum += weights[at] * (channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
