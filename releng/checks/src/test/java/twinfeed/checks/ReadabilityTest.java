// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What a customer reads in English is read by somebody of about twelve: the grade of every sentence by Flesch and Kincaid is at most
 * {@link #MOST_GRADE}. Grade = 0.39 words/sentences + 11.8 syllables/words - 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975, from
 * memory). A colon or semicolon ends a sentence as a full stop does (Flesch's rule for counting, from memory).
 */
class ReadabilityTest {
    /** Age 12 is the seventh grade; the half is what the plain count of syllables may be wrong by. */
    private static final double MOST_GRADE = 7.5;

    /** Fewer words are a heading and no sentence. */
    private static final int LEAST_WORDS = 5;

    /**
     * Words that have no shorter name, counted with two syllables: the reader meets them on the job, on the bill or on the label, and most
     * stand beside a plain word.
     */
    private static final Map<String, String> TERMS = Map.ofEntries(
            Map.entry("electricity", "known to everybody"),
            Map.entry("electrical", "known to everybody"),
            Map.entry("temperature", "known to everybody"),
            Map.entry("certificate", "the paper that the customer gets and keeps"),
            Map.entry("isolator", "stands in brackets after \"the switch of the shower\""),
            Map.entry("consumer", "\"consumer unit\" stands in brackets after \"fuse box\""),
            Map.entry("residual", "\"residual-current device\" is written on it"),
            Map.entry("network", "\"network operator\": who owns the main fuse"),
            Map.entry("operator", "\"network operator\": who owns the main fuse"),
            Map.entry("insulation", "what lies in the loft"),
            Map.entry("asbestos", "has no other name"),
            Map.entry("contingency", "the name of a line of the price, explained in the terms"),
            Map.entry("undertaker", "\"water undertaker\": the name in the water rules"));

    private static final Pattern QUOTE = Pattern.compile("(quote|state|accept|option|work|flow|leftOut|next|lines)\\.");

    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z’']*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern END = Pattern.compile("[.!?:;]+(\\s|$)");

    /** Silent at the end of a word: the e of "make", "closed" and "comes", not that of "table", "wanted" or "switches". */
    private static final Pattern SILENT = Pattern.compile("([^aeiouyl]e|[^aeiouytd]ed|[^aeiouscxzgh]es)$");

    static double grade(String text) {
        List<String> words = words(text);
        long sentences = Stream.of(END.split(text))
                .filter(part -> WORD.matcher(part).find())
                .count();
        int syllables = words.stream().mapToInt(ReadabilityTest::syllables).sum();
        return 0.39 * words.size() / Math.max(1, sentences) + 11.8 * syllables / words.size() - 15.59;
    }

    /** The words; a value that is filled in counts as a short one. */
    private static List<String> words(String text) {
        return WORD.matcher(text.replaceAll("\\{[^}]*}", "ten"))
                .results()
                .map(found -> found.group().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static int syllables(String word) {
        if (TERMS.containsKey(word)) {
            return 2;
        }
        int groups = (int) VOWELS.matcher(word).results().count();
        return Math.max(1, groups > 1 && SILENT.matcher(word).find() ? groups - 1 : groups);
    }

    private static Map<String, String> customerTexts() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        Path bundles = Project.ROOT.resolve("bundles");
        for (Path file : Project.files(bundles, ".properties")) {
            Properties properties = new Properties();
            if (english(file)) {
                try (Reader reader = Files.newBufferedReader(file)) {
                    properties.load(reader);
                }
            }
            for (String key : properties.stringPropertyNames()) {
                if (forCustomers(file, key)) {
                    texts.put(key, properties.getProperty(key).strip());
                }
            }
        }
        return texts;
    }

    /** Whether a text is printed on what a customer gets; what the law words for cancelling is as the law words it. */
    private static boolean forCustomers(Path file, String key) {
        String path = file.toString().replace('\\', '/');
        if (path.endsWith("/standing-texts.properties")) {
            return !key.startsWith("day.");
        }
        if (path.endsWith("/document/Document.properties")) {
            return QUOTE.matcher(key).lookingAt();
        }
        if (path.endsWith("/pricing/messages.properties")) {
            return key.startsWith("summary.") || key.startsWith("option.") || key.startsWith("caution.");
        }
        return key.startsWith("customer.");
    }

    private static boolean english(Path file) {
        String path = file.toString().replace('\\', '/');
        return path.contains("/src/main/resources/") && !path.endsWith("_de.properties");
    }

    @Test
    void aTwelveYearOldCanReadWhatACustomerIsTold() throws IOException {
        Map<String, String> texts = customerTexts();
        assertTrue(texts.size() > 100, "texts found: " + texts.size());
        List<String> hard = new ArrayList<>();
        texts.forEach((key, text) -> {
            if (words(text).size() >= LEAST_WORDS && grade(text) > MOST_GRADE) {
                hard.add(String.format(Locale.ROOT, "%.1f %s=%s", grade(text), key, text));
            }
        });
        assertEquals(List.of(), hard);
    }

    /** The measure itself: counted by hand with the formula above. */
    @Test
    void theGradeIsThatOfTheFormula() {
        // 6 words, 1 sentence, 6 syllables
        assertEquals(0.39 * 6 + 11.8 - 15.59, grade("The cat sat on the mat."), 1e-9);
        // 5 words, 1 sentence, 1 + 2 + 3 + 1 + 2 syllables
        assertEquals(0.39 * 5 + 11.8 * 9 / 5 - 15.59, grade("The engineer carries one spanner."), 1e-9);
        assertTrue(grade("Notwithstanding antecedent considerations, remedial interventions necessitate authorisation.")
                > 20);
    }
}
