// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SourceTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "judgement | engineering judgement | fachliche Einschätzung",
                "engineering judgement: what | engineering judgement: what | fachliche Einschätzung: what",
                "judgement, coilOutOfBand | engineering judgement | fachliche Einschätzung",
                "common practice | common practice | übliche Praxis",
                "BS 7671 415.1 (memory) | BS 7671 415.1 (unverified) | BS 7671 415.1 (ungeprüft)",
                "BS 7671:2018+A2:2022 table 52.2; memory | BS 7671:2018+A2:2022 table 52.2; unverified | BS 7671:2018+A2:2022 Tabelle 52.2; ungeprüft",
                "loft; table 4D5; memory (6 mm2 C read in a published article) | loft; table 4D5; unverified (6 mm² C verified in a published article) | loft; Tabelle 4D5; ungeprüft (6 mm² C geprüft anhand eines veröffentlichten Aufsatzes)",
                "ratings unverified (memory) | ratings unverified | Bemessungsströme ungeprüft",
                "NHS guidance, read second hand | NHS guidance, unverified | Leitfaden des NHS, ungeprüft",
                "BS 7671 table 41.3 note (read) | BS 7671 table 41.3 note (verified) | BS 7671 Tabelle 41.3 Anmerkung (geprüft)",
                "memory of the annex, values computed | unverified, values computed | ungeprüft, values computed",
                "BS 7671 434.5.1 and 536.4.201 | BS 7671 434.5.1 and 536.4.201 | BS 7671 434.5.1 und 536.4.201",
                "spread on the table and bread | spread on the table and bread | spread on the table and bread",
                "maker's instructions | maker's instructions | Anleitung des Herstellers",
            })
    void aSourceHasOneOfFourStatusesInTheReadersLanguage(String source, String english, String german) {
        assertEquals(english, SourceText.in(Locale.UK).of(source));
        assertEquals(german, SourceText.in(Locale.GERMANY).of(source));
        // Read anew, not from what was put into words before.
        assertEquals(english, new SourceText("en").of(source));
        assertEquals(german, new SourceText("de").of(source));
    }

    @Test
    void aLanguageWithoutWordsOfItsOwnHasTheEnglishOnes() {
        for (String language : List.of("", "fr")) {
            assertEquals("survey, unverified", new SourceText(language).of("survey, memory"));
        }
    }
}
