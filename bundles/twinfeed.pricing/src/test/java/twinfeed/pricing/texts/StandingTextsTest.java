// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class StandingTextsTest {
    /** What was read of a language is kept: each run asks for another of the languages for private use, qaa to qta. */
    private static final AtomicInteger ASKED = new AtomicInteger();

    /** Who words them anew sees them as they are shipped, so that their placeholders can be kept. */
    @Test
    void theTextsShippedStandByKeyWithTheirPlaceholders() {
        Map<String, String> english = StandingTexts.shipped(Locale.ENGLISH);
        assertEquals("This quote can be accepted until {validUntil}.", english.get("term.valid"));
        assertEquals(
                "Was nicht aufgeführt ist.",
                StandingTexts.shipped(Locale.GERMAN).get("exclusion.notListed"));
        assertEquals(english.keySet(), StandingTexts.shipped(Locale.GERMAN).keySet());
        assertThrows(UnsupportedOperationException.class, () -> english.put("term.valid", "For ever."));
    }

    @Test
    void aLanguageWithoutTextsHasTheEnglishOnes() {
        Locale none = Locale.forLanguageTag("q" + (char) ('a' + ASKED.getAndIncrement() % 20) + "a");
        assertEquals(StandingTexts.shipped(Locale.ENGLISH), StandingTexts.shipped(none));
        assertEquals(StandingTexts.shipped(Locale.ENGLISH), StandingTexts.shipped(Locale.ROOT));
    }

    /** A firm that has not given its name yet reads its text without it and is not held up. */
    @Test
    void whatMayBeNamedEverywhereIsEmptyUntilItHasAValue() {
        StandingTexts texts = new StandingTexts(
                Map.of("term.own.1", "[{firm}{customer}{site}{date}{validUntil}{validDays}]"), Map.of());
        assertEquals(Optional.of("[]"), texts.get("term.own.1", Map.of()));
        assertEquals(Optional.of("[30]"), texts.with("validDays", "30").get("term.own.1", Map.of()));
    }
}
