// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import twinfeed.pdf.FontSelector.Run;

class FontSelectorTest {
    private static final FontSelector FACES = new FontSelector();

    @Test
    void eachLetterIsInAFamilyThatHasIt() {
        assertEquals(
                List.of(
                        new Run(FontSelector.SIGNS, "✓"),
                        new Run(FontSelector.TEXT, " suits "),
                        new Run(FontSelector.SIGNS, "☐\uFFFD"),
                        new Run(FontSelector.TEXT, " 5 °C, £1")),
                FACES.runs("✓ suits ☐\uD83D\uDE00 5 °C, £1"));
    }

    /** Nothing is lost: each letter stands there, or the sign for what cannot be shown. */
    @Property
    void noLetterIsLost(@ForAll String text) {
        // Soft hyphens are put in where a long word may be divided.
        String whole = text.replace("\u00AD", "");
        StringBuilder all = new StringBuilder();
        FACES.runs(whole).forEach(run -> all.append(run.text()));
        long letters = all.codePoints()
                .filter(letter -> letter != 0x200B && letter != 0xAD)
                .count();
        assertEquals(whole.codePoints().count(), letters);
    }
}
