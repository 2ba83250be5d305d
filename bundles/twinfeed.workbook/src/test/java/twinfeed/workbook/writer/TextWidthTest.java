// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class TextWidthTest {
    private static final String PANGRAM =
            "The quick brown fox jumps over the lazy dog: 9.5 kW at 230 V, 3.2 bar (£120).";

    /** Against a font that keeps Arial's metrics, Liberation Sans, made for that: the copy that the PDF bundle embeds. */
    @Test
    void widthsAreThoseOfTheFont() throws IOException, FontFormatException {
        for (boolean bold : new boolean[] {false, true}) {
            Font font = Font.createFont(
                            Font.TRUETYPE_FONT,
                            fonts().resolve("LiberationSans-" + (bold ? "Bold" : "Regular") + ".ttf")
                                    .toFile())
                    .deriveFont(100f);
            double measured = font.getStringBounds(PANGRAM, new FontRenderContext(null, true, true))
                    .getWidth();
            double estimated = TextWidth.points(PANGRAM, 100, bold);
            assertTrue(estimated >= measured * 0.995, "never too narrow: " + estimated + " for " + measured);
            assertTrue(estimated <= measured * 1.06, "and little too wide: " + estimated + " for " + measured);
        }
    }

    private static Path fonts() {
        String below = "bundles/twinfeed.pdf/src/main/resources/twinfeed/pdf/fonts";
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(below))) {
            folder = Objects.requireNonNull(folder.getParent(), "not run inside the project");
        }
        return folder.resolve(below);
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
