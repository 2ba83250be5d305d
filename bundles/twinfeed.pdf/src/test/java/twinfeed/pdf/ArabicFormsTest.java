// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.Normalizer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import org.junit.jupiter.api.Test;

class ArabicFormsTest {
    private static final ArabicForms FORMS = new ArabicForms(letter -> true);

    /** Forms by the Unicode Standard, section 9.2 and the chart of the block Arabic Presentation Forms-B. */
    @Test
    void aLetterHasTheFormThatItsNeighboursAskFor() {
        // Meem initial, heh medial, alef final.
        assertEquals("\uFEE3\uFEEC\uFE8E", FORMS.of("\u0645\u0647\u0627"));
        // Dal and alef and reh do not join what follows.
        assertEquals("\uFEA9\uFE8D\uFEAD", FORMS.of("\u062F\u0627\u0631"));
        // Lam and alef are one, here behind a letter that joins and one that does not.
        assertEquals("\uFEB3\uFEFC\uFEE1", FORMS.of("\u0633\u0644\u0627\u0645"));
        assertEquals("\uFE8D\uFEFB", FORMS.of("\u0627\u0644\u0627"));
        // A mark between two letters parts nothing.
        assertEquals("\uFEE3\u064F\uFEA4\uFEE4\uFEAA", FORMS.of("\u0645\u064F\u062D\u0645\u062F"));
        // Persian peh, from the block of forms A.
        assertEquals("\uFB58\uFEAA\uFEAD", FORMS.of("\u067E\u062F\u0631"));
        assertEquals("No. 5, M\u00FCller", FORMS.of("No. 5, M\u00FCller"));
    }

    @Test
    void aFormThatTheTypefaceLacksIsNotTaken() {
        assertEquals("\u0645\u0647\u0627", new ArabicForms(letter -> false).of("\u0645\u0647\u0627"));
    }

    /** What is read out or searched for is the same text (compatibility equivalence, UAX 15). */
    @Property
    void theTextStaysTheSame(@ForAll @CharRange(from = '\u0620', to = '\u06D3') String text) {
        assertEquals(
                Normalizer.normalize(text, Normalizer.Form.NFKC),
                Normalizer.normalize(FORMS.of(text), Normalizer.Form.NFKC));
    }
}
