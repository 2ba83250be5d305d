// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import java.util.Locale;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.usecase.refusal.Refusals;

/** The languages of quotes and sheets. A further one is a further set of message files, and its code here. */
public final class Languages {
    /** Codes by ISO 639-1; the first is the language of texts that no other has. */
    public static final List<String> CODES = List.of("en", "de");

    private Languages() {}

    /**
     * The locale of a language.
     *
     * @param code one of {@link #CODES}, perhaps with a region: {@code de} or {@code de-AT}
     * @throws InputException if there are no texts in it
     */
    public static Locale of(String code) {
        Locale locale = Locale.forLanguageTag(code.replace('_', '-'));
        if (!CODES.contains(locale.getLanguage())) {
            throw new InputException(new InputProblem(
                    "",
                    0,
                    "language",
                    code,
                    Refusals.wrong("language"),
                    Refusals.text("name.all", String.join(", ", CODES))));
        }
        return locale;
    }
}
