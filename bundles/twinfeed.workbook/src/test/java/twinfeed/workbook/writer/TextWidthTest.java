// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.util.Arrays;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class TextWidthTest {
    private static final String PANGRAM =
            "The quick brown fox jumps over the lazy dog: 9.5 kW at 230 V, 3.2 bar (£120).";

    /** Against a font of this machine that keeps Arial's metrics: Liberation Sans, made for that. */
    @Test
    void widthsAreThoseOfTheFont() {
        boolean there = Arrays.asList(
                        GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames())
                .contains("Liberation Sans");
        if (!there) {
            System.out.println("SKIPPED: no Liberation Sans on this machine, so nothing to measure against");
        }
        Assumptions.assumeTrue(there, "no Liberation Sans");
        for (boolean bold : new boolean[] {false, true}) {
            Font font = new Font("Liberation Sans", bold ? Font.BOLD : Font.PLAIN, 100);
            double measured = font.getStringBounds(PANGRAM, new FontRenderContext(null, true, true))
                    .getWidth();
            double estimated = TextWidth.points(PANGRAM, 100, bold);
            assertTrue(estimated >= measured * 0.995, "never too narrow: " + estimated + " for " + measured);
            assertTrue(estimated <= measured * 1.06, "and little too wide: " + estimated + " for " + measured);
        }
    }

    @Test
    void linesAreCountedByWords() {
        assertEquals(1, TextWidth.lines("", 100, CellStyle.Lettering.BODY));
        assertEquals(2, TextWidth.lines("one\ntwo", 100, CellStyle.Lettering.BODY));
        double word = TextWidth.points("word", 10, false);
        assertEquals(1, TextWidth.lines("word word", word * 2.5, CellStyle.Lettering.BODY));
        assertEquals(2, TextWidth.lines("word word", word * 1.5, CellStyle.Lettering.BODY));
        assertEquals(3, TextWidth.lines("wordwordword", word * 1.2, CellStyle.Lettering.BODY));
    }
}
