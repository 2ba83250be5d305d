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

    private static String shown(String text) {
        StringBuilder all = new StringBuilder();
        FACES.set(text).forEach(run -> all.append(run.text()));
        assertEquals(all.toString(), FACES.whole(text).text(), "in drawings too");
        return all.toString();
    }

    /** Names by the Unicode Character Database, as Java has it. */
    @Test
    void picturesAmongLettersAreReadAsSignsOrNames() {
        assertEquals("Thank you \u263A", shown("Thank you \uD83D\uDE0A"));
        assertEquals("\u260E 0123, \u2709 a@b", shown("\uD83D\uDCDE 0123, \uD83D\uDCE7 a@b"));
        assertEquals(
                "[thumbs up sign] agreed", shown("\uD83D\uDC4D\uD83C\uDFFD agreed"), "without the colour of the skin");
        assertEquals("[no smoking symbol]", shown("\uD83D\uDEAD"), "what a picture forbids is not left out");
        assertEquals("\u2764 [shower]", shown("\u2764\uFE0F \uD83D\uDEBF"));
        assertEquals("[DE] 2. [alarm clock]", shown("\uD83C\uDDE9\uD83C\uDDEA 2\uFE0F\u20E3. \u23F0"));
        assertEquals("[man][personal computer]", shown("\uD83D\uDC68\u200D\uD83D\uDCBB"));
    }

    /** A letter of a script has no telling name: the sign for what cannot be shown stands for it, as ever. */
    @Test
    void lettersAreNotNamed() {
        assertEquals("\uFFFD", shown("\u6587"));
        assertEquals("5 \u03A9, \u00BD, \u2713", shown("5 \u03A9, \u00BD, \u2713"));
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
