// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DaysTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 6);

    private static Optional<LocalDate> typed(String text, String language) {
        return Days.typed(text, Locale.forLanguageTag(language));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6 Sept 2026",
                "6 Sep 2026",
                "06 sep 2026",
                "6 September 2026",
                " 6 September 26 ",
                "6/9/2026",
                "06/09/2026",
                "6/9/26",
                "2026-09-06"
            })
    void aDayIsReadAsItIsWrittenInBritain(String text) {
        assertEquals(Optional.of(DAY), typed(text, "en-GB"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"06.09.2026", "6.9.26", "6.9.2026", "6. September 2026", "2026-09-06"})
    void aDayIsReadAsItIsWrittenInGermany(String text) {
        assertEquals(Optional.of(DAY), typed(text, "de-DE"));
    }

    @Test
    void theMonthStandsFirstInAmerica() {
        assertEquals(Optional.of(DAY), typed("9/6/2026", "en-US"));
    }

    @ParameterizedTest
    @CsvSource({
        "31/2/2026, en-GB",
        "30.02.2026, de-DE",
        "2026-02-30, en-GB",
        "13/13/2026, en-GB",
        "soon, en-GB",
        "6.9., de-DE",
        "'', de-DE"
    })
    void whatIsNoDayIsNoDay(String text, String language) {
        assertEquals(Optional.empty(), typed(text, language));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "en-US", "de-AT", "en-IE", "en-ZA", "en-CA", "en-AU", "de-CH"})
    void aDayThatIsShownCanBeTyped(String language) {
        Words words = new Words(Locale.forLanguageTag(language));
        for (int month = 1; month <= 12; month++) {
            LocalDate day = LocalDate.of(2026, month, 6);
            assertEquals(Optional.of(day), Days.typed(Days.of(day, words), words.locale()));
        }
    }
}
