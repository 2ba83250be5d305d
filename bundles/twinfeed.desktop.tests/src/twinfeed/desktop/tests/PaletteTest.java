// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/**
 * Colours can be read. Source of the formulas and of the limit 4.5 : 1: Web Content Accessibility Guidelines (WCAG) 2.1, success
 * criterion 1.4.3 and the definitions of contrast ratio and relative luminance.
 */
final class PaletteTest {
    private static final int[] LIGHT = {0xFFFFFF, 0xF6F5F4, 0xF0F0F0};
    private static final int[] DARK = {0x000000, 0x1E1E1E, 0x2D2D2D, 0x353535};

    private static RGB rgb(int colour) {
        return new RGB(colour >> 16 & 0xFF, colour >> 8 & 0xFF, colour & 0xFF);
    }

    private static double contrast(int one, int other) {
        double a = ThemeColours.luminance(rgb(one));
        double b = ThemeColours.luminance(rgb(other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    @Test
    void contrastOfBlackAndWhiteIsTheOneThatTheGuidelinesName() {
        assertEquals(21, contrast(0x000000, 0xFFFFFF), 1e-9);
    }

    @Test
    void everyToneCanBeReadOnLightAndDarkGrounds() {
        for (Tone tone : Tone.values()) {
            for (int ground : LIGHT) {
                assertTrue(contrast(tone.rgb(false), ground) >= 4.5, tone + " on " + Integer.toHexString(ground));
            }
            for (int ground : DARK) {
                assertTrue(contrast(tone.rgb(true), ground) >= 4.5, tone + " on " + Integer.toHexString(ground));
            }
        }
    }

    @Test
    void groundIsToldLightOrDark() {
        for (int ground : LIGHT) {
            assertFalse(ThemeColours.dark(rgb(ground)));
        }
        for (int ground : DARK) {
            assertTrue(ThemeColours.dark(rgb(ground)));
        }
    }
}
