// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.units.text.Phrase;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(Runner.class, "Common", "month.4", "month.8", "month.9", "month.11", "voltage");
        Translation.assertGerman(ArgumentException.class, "messages");
        Translation.assertGerman(SafeIsolation.class, "SafeIsolation");
    }

    @Test
    void aPhraseIsSaidInTheLanguageOfItsMessage() {
        Map<String, Object> arguments =
                Map.of("names", List.of(Phrase.of("month.1"), new Phrase("voltage", Map.of("voltage", 230))));
        assertEquals("January; 230 V open", Runner.TEXTS.format(Locale.ENGLISH, "drawOff.open", arguments));
        assertEquals("Januar; 230 V geöffnet", Runner.TEXTS.format(Locale.GERMAN, "drawOff.open", arguments));
    }
}
