// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;
import twinfeed.document.drawing.DrawingTexts;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(
                DocumentTexts.class,
                "Document",
                "accept.name",
                "currency.EUR",
                "currency.GBP",
                "currency.USD",
                "flow.figure",
                "leftOut.line");
    }

    @Test
    void drawingSaysInGermanAllThatItSaysInEnglish() {
        Translation.assertGerman(DrawingTexts.class, "Drawing", "rcd");
    }
}
