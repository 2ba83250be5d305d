// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.Locale;
import twinfeed.document.DocumentTexts;
import twinfeed.units.text.Texts;

/** The texts of drawings. */
public final class DrawingTexts {
    private static final Texts TEXTS = new Texts(DrawingTexts.class, "Drawing");

    private DrawingTexts() {}

    /** In a language. */
    public static DocumentTexts in(Locale locale) {
        return new DocumentTexts(locale, TEXTS);
    }
}
