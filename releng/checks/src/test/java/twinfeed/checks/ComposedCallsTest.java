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
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Calls whose key is put together, or chosen between two: every message that such a call can reach is filled by the values that the call
 * gives, in every language. The messages of calculators, whose values come from their findings, are said where they run by
 * {@code ComposedMessagesTest}.
 */
class ComposedCallsTest {
    /** A call up to its key, which begins with words and goes on with a value, or is chosen by a condition. */
    private static final Pattern CALL = Pattern.compile(
            "\\b(?:get|format|text|words|sentence|titled)\\(\\s*(?:(?:[\\w.]*[lL]ocale(?:\\(\\))?|Locale\\.\\w+),\\s*)?"
                    + "(?=\"[\\w.-]+\\.\"\\s*\\+|[^\",()]*\\?)");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]\\w*)(?::~?\\d+)?}");
    private static final Pattern WORDS = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern NAME = Pattern.compile("\"([A-Za-z]\\w*)\"\\s*,");

    /** Messages that the composed key of a class cannot reach, by class and beginning: what else is put behind it. */
    private static final Map<String, String> NEVER_REACHED = Map.ofEntries(
            Map.entry("SurveyPane page.", "keys of pages; counts of remarks are page.wrong, page.odd and page.wanted"),
            Map.entry("PageView page.", "likewise"),
            Map.entry("IssuedPart issued.", "keys of columns"),
            Map.entry("JobTemplates template.", "names of the templates that the program brings"),
            Map.entry(
                    "CompletionAssessment reading.",
                    "names of the readings after the work; reading.element is of another file"),
            Map.entry("FindingText check.", "titles of checks; what a check says is filled by its values"),
            Map.entry("QuoteSheets sheet.", "names of sheets; their titles are filled by the reference"),
            Map.entry("FormLanguage form.", "what is said without values; with values comes another call"),
            Map.entry("SurveyFormReader form.right.", "what is wrong with the form itself, not with a word in it"),
            Map.entry(
                    "CompletionSheet completion.",
                    "readings and their bands; the isolation is filled by its own call"));

    /** Classes whose values come in a map that is made elsewhere, and the test that has all their messages said. */
    private static final Map<String, String> SAID_ELSEWHERE = Map.of(
            "FindingText", "twinfeed.calculator.engine.FindingTextTest and ComposedMessagesTest",
            "CompletionAssessment", "twinfeed.cli.AfterWorkVerbsTest",
            "RepairPolicy", "twinfeed.diagnosis.repair",
            "FaultTexts", "twinfeed.diagnosis.repair.FaultReporterTest",
            "DocumentException", "twinfeed.document",
            "FormLanguage", "twinfeed.workbook.form");

    private record Call(String place, String owner, String key, String rest) {}

    @Test
    void everyMessageThatAComposedKeyReachesIsFilled() throws IOException {
        List<String> gaps = new ArrayList<>();
        Set<String> elsewhere = new TreeSet<>();
        int reached = 0;
        int filled = 0;
        for (String bundle : Project.bundles()) {
            Map<String, Set<String>> messages = messages(Project.bundle(bundle));
            for (Call call : calls(Project.bundle(bundle))) {
                Set<String> given = names(call.rest());
                boolean madeElsewhere = !call.rest().isBlank()
                        && given.isEmpty()
                        && !call.rest().contains("Map.of(");
                for (String key : keys(call, messages.keySet())) {
                    reached++;
                    Set<String> wanted = messages.get(key);
                    if (wanted.isEmpty()) {
                        continue;
                    }
                    filled++;
                    if (madeElsewhere) {
                        elsewhere.add(call.owner());
                    } else if (!given.containsAll(wanted) && !neverReached(call.owner(), key)) {
                        gaps.add(call.place() + ": " + key + " wants " + wanted + ", has " + given);
                    }
                }
            }
        }
        assertEquals(List.of(), gaps);
        assertEquals(new TreeSet<>(SAID_ELSEWHERE.keySet()), elsewhere);
        System.out.println("messages reached by composed keys: " + reached + ", of them with values: " + filled);
        assertTrue(reached > 500 && filled > 40, reached + ", " + filled);
    }

    private static boolean neverReached(String owner, String key) {
        return NEVER_REACHED.keySet().stream()
                .map(each -> each.split(" "))
                .anyMatch(each -> each[0].equals(owner) && key.startsWith(each[1]));
    }

    /** Messages that a call can reach: any value may stand where something is put into the key. */
    private static List<String> keys(Call call, Set<String> known) {
        if (call.key().contains("?")) {
            return WORDS.matcher(call.key())
                    .results()
                    .map(match -> match.group(1))
                    .filter(known::contains)
                    .toList();
        }
        String pattern = Stream.of(call.key().split("\\+(?![^()]*\\))"))
                .map(String::strip)
                .map(part -> part.startsWith("\"") ? Pattern.quote(part.substring(1, part.length() - 1)) : "[\\w.-]+")
                .collect(Collectors.joining());
        return known.stream().filter(key -> key.matches(pattern)).toList();
    }

    /** Placeholders by key, over all files and languages of a bundle. */
    private static Map<String, Set<String>> messages(Path bundle) throws IOException {
        Map<String, Set<String>> all = new TreeMap<>();
        for (Path file : Project.files(bundle.resolve("src/main/resources"), ".properties")) {
            Properties properties = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                properties.load(reader);
            }
            properties.stringPropertyNames().forEach(key -> all.computeIfAbsent(key, each -> new TreeSet<>())
                    .addAll(names(PLACEHOLDER, properties.getProperty(key))));
        }
        return all;
    }

    private static Set<String> names(String rest) {
        return names(NAME, rest + ",");
    }

    private static Set<String> names(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.results().map(match -> match.group(1)).collect(Collectors.toSet());
    }

    private static List<Call> calls(Path bundle) throws IOException {
        List<Call> all = new ArrayList<>();
        for (Path file : Project.files(bundle.resolve("src/main/java"), ".java")) {
            String text = Files.readString(file);
            String owner = String.valueOf(file.getFileName()).replace(".java", "");
            for (MatchResult match : CALL.matcher(text).results().toList()) {
                String place = Project.ROOT.relativize(file) + ":"
                        + (text.substring(0, match.start()).lines().count());
                String inside = CallText.inside(text, match.end());
                int comma = comma(inside);
                all.add(new Call(
                        place,
                        owner,
                        comma < 0 ? inside : inside.substring(0, comma),
                        comma < 0 ? "" : inside.substring(comma + 1)));
            }
        }
        return all;
    }

    /** Where the key ends: at the first comma that is in no brackets. */
    private static int comma(String text) {
        int depth = 0;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0 && c == ',') {
                return at;
            }
        }
        return -1;
    }
}
