// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.calculator.Translation;

/** The language that is asked for is that of the whole answer, labels too; JSON has the same members in every language. */
class LanguageTest extends DemoFolder {
    /** Labels of the English answers; names and notes of the survey stay in their own words. */
    private static final List<String> ENGLISH = List.of(
            "there now",
            ": suits",
            "limit",
            "margin",
            "source:",
            "Assumed",
            "Caution:",
            "Written:",
            "Total",
            "Tax",
            "DANGER",
            "Causes",
            "Readings:",
            "sound:",
            "should be",
            "not entered",
            "Not known",
            "Judged",
            "Unsafe,");

    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(CliContext.class, "Cli");
    }

    static Stream<List<String>> answers() {
        return Stream.of(
                List.of("assess", "alder-beck.job"),
                List.of("options", "hazel-ghyll.job"),
                List.of("faults", "birch-syke.job", "--book", "prices.csv"),
                List.of("complete", "birch-syke.job", "--by", "Demonstration engineer", "--reading", "loop=0.42 ohm"),
                List.of("notice", "alder-beck.job"),
                List.of("quote", "alder-beck.job", "--book", "prices.csv", "--out", "alder-beck.xlsx"));
    }

    /** Runs it with the files of the demonstration, in a folder of its own. */
    private Run run(List<String> answer, String... more) throws IOException {
        List<Object> words = new ArrayList<>();
        for (String word : answer) {
            boolean file = word.endsWith(".job") || word.equals("prices.csv") || word.endsWith(".xlsx");
            words.add(file ? folder.resolve(word) : word);
            if (word.endsWith(".job") && Files.notExists(folder.resolve(word))) {
                copy(word);
            }
        }
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    @ParameterizedTest
    @MethodSource("answers")
    void germanAnswersHaveNoEnglishLabels(List<String> answer) throws IOException {
        String english = run(answer).out();
        String german = run(answer, "--language", "de").out();
        assertTrue(ENGLISH.stream().anyMatch(english::contains), english);
        for (String label : ENGLISH) {
            assertFalse(german.contains(label), label + " in " + german);
        }
    }

    /** 31,25 A and not 31.25 A, in the labels' own figures as in the sentences. */
    @Test
    void germanFiguresHaveAComma() throws IOException {
        String text =
                run(List.of("assess", "rowan-brook.job"), "--language", "de").out();
        assertTrue(text.contains("31,25 A, Grenzwert 40, Reserve 8,75"), text);
        assertTrue(text.contains("Ib = Pr / Ur = 31,25 A"), text);
        String quote = run(
                        List.of("quote", "rowan-brook.job", "--book", "prices.csv", "--out", "rowan-brook.xlsx"),
                        "--language",
                        "de")
                .out();
        assertTrue(quote.lines().anyMatch(line -> line.matches(" +Gesamtsumme +\\d+,\\d\\d GBP")), quote);
    }

    /** The price book's name of the unit, as on the quote. */
    @Test
    void theUnitHasItsGermanName() throws IOException {
        String text = run(List.of("faults", "birch-syke.job", "--book", "prices.csv"), "--language", "de")
                .out();
        assertTrue(text.startsWith("Durchlauferhitzer für die Dusche 8,5 kW, zwei Heizelemente (vorhanden)"), text);
    }

    @ParameterizedTest
    @MethodSource("answers")
    void jsonHasTheSameMembersInEveryLanguage(List<String> answer) throws IOException {
        assertEquals(
                members(run(answer, "--json").out()),
                members(run(answer, "--json", "--language", "de").out()));
    }

    private static List<String> members(String json) throws IOException {
        List<String> names = new ArrayList<>();
        collect(new ObjectMapper().readTree(json), names);
        assertTrue(names.size() > 3, json);
        return names;
    }

    private static void collect(JsonNode node, List<String> names) {
        node.fieldNames().forEachRemaining(names::add);
        node.forEach(child -> collect(child, names));
    }
}
