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
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every call that names its message in words gives a value for each placeholder of it, in every language. Calls whose key is put together
 * are caught where they run: the tests of all bundles run with {@code twinfeed.texts.strict}, under which a gap is an error.
 */
class MessageCallsTest {
    /** A call that fills a message, up to its key: the key first, or after the language. */
    private static final Pattern CALL = Pattern.compile(
            "\\b(?:get|format|text|words|sentence|titled)\\(\\s*(?:(?:[\\w.]*[lL]ocale(?:\\(\\))?|Locale\\.\\w+),\\s*)?\"([\\w.-]+)\"");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]\\w*)(?::~?\\d+)?}");
    private static final Pattern NAME = Pattern.compile("\"([A-Za-z]\\w*)\"\\s*,");

    /** Where the message comes with one value: its name, then the value. */
    private static final Pattern PAIR = Pattern.compile("^\\s*,\\s*\"([A-Za-z]\\w*)\"\\s*,", Pattern.DOTALL);

    private record Call(String place, String key, Set<String> names) {}

    @Test
    void everyLiteralCallFillsItsMessage() throws IOException {
        List<String> gaps = new ArrayList<>();
        int filled = 0;
        for (String bundle : Project.bundles()) {
            Map<String, Map<String, Set<String>>> files = messages(Project.bundle(bundle));
            for (Call call : calls(Project.bundle(bundle))) {
                List<Set<String>> wanted = files.values().stream()
                        .flatMap(file -> Optional.ofNullable(file.get(call.key())).stream())
                        .toList();
                filled += wanted.stream().anyMatch(names -> !names.isEmpty()) ? 1 : 0;
                if (!wanted.isEmpty() && wanted.stream().noneMatch(call.names()::containsAll)) {
                    gaps.add(call.place() + ": " + call.key() + " wants " + wanted + ", has " + call.names());
                }
            }
        }
        assertEquals(List.of(), gaps);
        assertTrue(filled >= 60, "calls with values found: " + filled);
    }

    /** Placeholders by key and file, over all languages of a file; a key may stand in several files of a bundle. */
    private static Map<String, Map<String, Set<String>>> messages(Path bundle) throws IOException {
        Map<String, Map<String, Set<String>>> all = new TreeMap<>();
        for (Path file : Project.files(bundle.resolve("src/main/resources"), ".properties")) {
            Properties properties = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                properties.load(reader);
            }
            Map<String, Set<String>> messages = all.computeIfAbsent(
                    file.toString().replaceFirst("(_[a-z]{2})?\\.properties$", ""), each -> new TreeMap<>());
            properties.stringPropertyNames().forEach(key -> messages.computeIfAbsent(key, each -> new TreeSet<>())
                    .addAll(PLACEHOLDER
                            .matcher(properties.getProperty(key))
                            .results()
                            .map(match -> match.group(1))
                            .collect(Collectors.toSet())));
        }
        return all;
    }

    private static List<Call> calls(Path bundle) throws IOException {
        List<Call> all = new ArrayList<>();
        for (Path file : Project.files(bundle.resolve("src/main/java"), ".java")) {
            String text = Files.readString(file);
            for (MatchResult match : CALL.matcher(text).results().toList()) {
                String rest = CallText.inside(text, match.end());
                String place = Project.ROOT.relativize(file) + ":"
                        + (text.substring(0, match.start()).lines().count());
                names(rest).ifPresent(names -> all.add(new Call(place, match.group(1), names)));
            }
        }
        return all;
    }

    /** Names of the values that a call gives; empty where they come in a map that is made elsewhere. */
    private static Optional<Set<String>> names(String rest) {
        if (rest.isBlank()) {
            return Optional.of(Set.of());
        }
        if (rest.contains("Map.of(")) {
            String map = rest.substring(rest.indexOf("Map.of("));
            return Optional.of(
                    NAME.matcher(map).results().map(match -> match.group(1)).collect(Collectors.toSet()));
        }
        Matcher pair = PAIR.matcher(rest);
        return pair.find() ? Optional.of(Set.of(pair.group(1))) : Optional.empty();
    }
}
