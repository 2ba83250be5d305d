// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.io.InputException;

class StandingTextFileTest {
    @TempDir
    Path folder;

    private Path file(String name, String... lines) throws IOException {
        return Files.writeString(folder.resolve(name), String.join("\n", lines), StandardCharsets.UTF_8);
    }

    private StandingTexts texts(Locale locale) {
        return StandingTextFile.in(folder, locale);
    }

    @Test
    void isWhatIsShippedWithoutAFile() {
        assertEquals(
                Optional.of("Anything that is not listed."),
                texts(Locale.ENGLISH).get("exclusion.notListed", Map.of()));
        assertEquals(
                Optional.of("Was nicht aufgeführt ist."), texts(Locale.GERMAN).get("exclusion.notListed", Map.of()));
    }

    @Test
    void wordsAnewLeavesOutAndAdds() throws IOException {
        file(
                "standing-texts.properties",
                "term.valid = {firm} holds this price for {validDays} days, until {validUntil} – for {customer} at {site}.",
                "exclusion.decoration =",
                "term.own.2 = Second.",
                "term.own.10 = Tenth.",
                "caution.own.1 = Mind the step.");
        StandingTexts texts = texts(Locale.ENGLISH)
                .with("firm", "Quillmere Showers")
                .with("validDays", "30")
                .with("validUntil", "1 May 2027")
                .with("customer", "A $1 {date}")
                .with("site", "B\\C");
        assertEquals(
                Optional.of(
                        "Quillmere Showers holds this price for 30 days, until 1 May 2027 – for A $1 {date} at B\\C."),
                texts.get("term.valid", Map.of()),
                "what people typed is no pattern");
        assertEquals(Optional.empty(), texts.get("exclusion.decoration", Map.of()));
        assertEquals(List.of("Second.", "Tenth."), texts.own(StandingTexts.Kind.TERM));
        assertEquals(List.of("Mind the step."), texts.own(StandingTexts.Kind.CAUTION));
        assertEquals(List.of(), texts.own(StandingTexts.Kind.EXCLUSION));
    }

    @Test
    void losesNothingOfTheFirmsInAnotherLanguage() throws IOException {
        file("standing-texts.properties", "term.own.1 = Our terms.", "term.cancel = Our right.");
        file("standing-texts_de.properties", "term.cancel = Unser Recht.");
        StandingTexts german = texts(Locale.GERMAN);
        assertEquals(List.of("Our terms."), german.own(StandingTexts.Kind.TERM));
        assertEquals(Optional.of("Unser Recht."), german.get("term.cancel", Map.of()));
        assertEquals(Optional.of("Our right."), texts(Locale.ENGLISH).get("term.cancel", Map.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "term.cancell = x | there is no such text",
                "caution.electricity = | cannot be left out",
                "assumption.missing = | cannot be left out",
                "term.valid = until {until} | nothing stands for it",
                "term.valid = until {loftAccess} | nothing stands for it",
                "term.valid = until {validUntil | a curly bracket stands by itself",
            })
    void refusesWhatWouldMislead(String line, String wrong) throws IOException {
        file("standing-texts.properties", "term.own.1 = fine", line);
        InputException refused = assertThrows(InputException.class, () -> texts(Locale.ENGLISH));
        assertEquals(1, refused.problems().size());
        String message = refused.getMessage();
        assertTrue(message.contains(wrong) && message.contains("standing-texts.properties"), message);
        assertTrue(message.contains(line.substring(0, line.indexOf(' '))), message);
    }

    @Test
    void aFileOfAnyNameIsTakenBesideWhatIsShipped() throws IOException {
        Path file = file("own.properties", "term.own.1 = Ours.");
        StandingTexts texts = StandingTextFile.load(file, Locale.ENGLISH);
        assertEquals(List.of("Ours."), texts.own(StandingTexts.Kind.TERM));
        assertEquals(Optional.of("Anything that is not listed."), texts.get("exclusion.notListed", Map.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"term.loftBy = from {street}", "term.loftBy = from {loftAccess"})
    void aRefusedTextIsToldWhatItMayName(String line) throws IOException {
        file("standing-texts.properties", line);
        InputException refused = assertThrows(InputException.class, () -> texts(Locale.ENGLISH));
        String message = String.valueOf(refused.getMessage());
        assertTrue(
                message.contains("{customer}, {date}, {firm}, {loftAccess}, {site}, {validDays}, {validUntil}"),
                message);
    }

    @Test
    void namesEveryProblemAtOnce() throws IOException {
        Path file = file("own.properties", "a = b", "caution.codes =", "term.own.1 = {x} {");
        InputException refused = assertThrows(InputException.class, () -> StandingTextFile.load(file, Locale.ENGLISH));
        assertEquals(4, refused.problems().size());
    }

    @Test
    void refusesWhatIsNoText() throws IOException {
        Files.write(folder.resolve("standing-texts.properties"), new byte[] {'a', '=', (byte) 0xff, (byte) 0xfe});
        InputException refused = assertThrows(InputException.class, () -> texts(Locale.ENGLISH));
        assertTrue(refused.getMessage().contains("UTF-8"), refused.getMessage());
    }
}
